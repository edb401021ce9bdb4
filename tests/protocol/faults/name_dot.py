#!/usr/bin/env -S python3 -B
"""Has a name that some disks shorten."""

from answering import answer, asked, one_file

asked("name-dot")
answer(files=one_file("good.txt") + one_file("masses.txt."))
