#!/usr/bin/env -S python3 -B
"""Wants to write above the folder."""

from answering import answer, asked, one_file

asked("name-above")
answer(files=one_file("good.txt") + one_file("../above.txt"))
