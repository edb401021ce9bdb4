#!/usr/bin/env -S python3 -B
"""Fails in the middle."""

from answering import answer, asked, one_file

asked("crash")
answer(files=one_file("crash.txt"))
raise ValueError("the mast is missing")
