#!/usr/bin/env -S python3 -B
"""Writes more than may be written."""

from answering import answer, asked

asked("huge")
answer(files=[{"name": "huge.txt", "text": "x" * (65 << 20)}])
