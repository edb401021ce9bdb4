#!/usr/bin/env -S python3 -B
"""Fails in the middle."""

import sys

from answering import answer, asked, one_file

# The last line alone: the others name the folder the program is in, and the report breaks its lines by their length.
sys.tracebacklimit = 0

asked("crash")
answer(files=one_file("crash.txt"))
raise ValueError("the mast is missing")
