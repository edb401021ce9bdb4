#!/usr/bin/env -S python3 -B
"""Says more than anybody reads."""

import sys

from answering import answer, asked, one_file

asked("says-much")
for number in range(100000):
    print("line", number, file=sys.stderr)
answer(files=one_file("says-much.txt"))
