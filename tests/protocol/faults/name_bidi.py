#!/usr/bin/env -S python3 -B
"""Has a name that reads as another one."""

from answering import answer, asked, one_file

asked("name-bidi")
answer(files=one_file("good.txt") + one_file("masses\u202etxt.exe"))
