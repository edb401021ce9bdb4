#!/usr/bin/env -S python3 -B
"""Says twice what is in its file."""

from answering import answer, asked

asked("both")
answer(files=[{"name": "both.txt", "text": "a", "base64": "YQ=="}])
