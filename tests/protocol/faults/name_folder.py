#!/usr/bin/env -S python3 -B
"""Has a folder for a file."""

from answering import answer, asked, one_file

asked("name-folder")
answer(files=one_file("good.txt") + one_file("folder/"))
