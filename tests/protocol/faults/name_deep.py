#!/usr/bin/env -S python3 -B
"""Has a file below 3,000 folders."""

from answering import answer, asked, one_file

asked("name-deep")
answer(files=one_file("good.txt") + one_file("a/" * 3000 + "masses.txt"))
