#!/usr/bin/env -S python3 -B
"""Ends in the middle of its answer."""

from answering import asked

asked("cut-off")
print('{"version": 1,\n "files": [{"name": "cut-off.txt", "te')
