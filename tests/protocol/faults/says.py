#!/usr/bin/env -S python3 -B
"""Answers well and says something beside it."""

import sys

from answering import answer, asked, one_file

asked("says")
print("no mass is stated\n\x1b[31m  for wire-6\x1b[0m", file=sys.stderr)
answer(files=one_file("says.txt"))
