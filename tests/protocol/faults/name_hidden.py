#!/usr/bin/env -S python3 -B
"""Wants to write a file that is not seen."""

from answering import answer, asked, one_file

asked("name-hidden")
answer(files=one_file("good.txt") + one_file(".profile"))
