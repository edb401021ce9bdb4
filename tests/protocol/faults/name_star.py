#!/usr/bin/env -S python3 -B
"""Has a name that stands for several on some systems."""

from answering import answer, asked, one_file

asked("name-star")
answer(files=one_file("good.txt") + one_file("masses*.txt"))
