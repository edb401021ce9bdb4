#!/usr/bin/env -S python3 -B
"""Wants to write above the folder by a way round."""

from answering import answer, asked, one_file

asked("name-inside-above")
answer(files=one_file("good.txt") + one_file("inside/../../above.txt"))
