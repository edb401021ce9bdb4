#!/usr/bin/env -S python3 -B
"""Has a name that is a device of Windows."""

from answering import answer, asked, one_file

asked("name-device")
answer(files=one_file("good.txt") + one_file("masses/Con.txt"))
