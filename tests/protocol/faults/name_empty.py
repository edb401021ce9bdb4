#!/usr/bin/env -S python3 -B
"""Has a file without a name."""

from answering import answer, asked, one_file

asked("name-empty")
answer(files=one_file("good.txt") + one_file(""))
