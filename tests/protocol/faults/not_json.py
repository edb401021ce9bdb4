#!/usr/bin/env -S python3 -B
"""Says something before it answers."""

from answering import answer, asked, one_file

asked("not-json")
print("here we go")
answer(files=one_file("not-json.txt"))
