#!/usr/bin/env -S python3 -B
"""Answers in another code than UTF-8."""

import sys

from answering import asked

asked("latin")
sys.stdout.buffer.write(b'{"version": 1, "files": [{"name": "latin.txt", "text": "caf\xe9"}]}')
