#!/usr/bin/env -S python3 -B
"""Has a name of two lines."""

from answering import answer, asked, one_file

asked("name-line")
answer(files=one_file("good.txt") + one_file("one\ntwo.txt"))
