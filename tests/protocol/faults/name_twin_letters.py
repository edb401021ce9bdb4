#!/usr/bin/env -S python3 -B
"""Has two names of one letter, precomposed and taken apart."""

from answering import answer, asked, one_file

asked("name-twin-letters")
answer(files=one_file("\u00e9.txt") + one_file("e\u0301.txt"))
