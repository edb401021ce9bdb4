#!/usr/bin/env -S python3 -B
"""Forgets what is in its file."""

from answering import answer, asked

asked("odd")
answer(files=[{"name": "odd.txt"}])
