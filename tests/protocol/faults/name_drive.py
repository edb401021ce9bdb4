#!/usr/bin/env -S python3 -B
"""Has a name that is a place on some systems."""

from answering import answer, asked, one_file

asked("name-drive")
answer(files=one_file("good.txt") + one_file("c:\\above.txt"))
