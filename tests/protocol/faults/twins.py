#!/usr/bin/env -S python3 -B
"""Has two files of one name."""

from answering import answer, asked, one_file

asked("twins")
answer(files=one_file("twin.txt") + one_file("twin.txt"))
