#!/usr/bin/env -S python3 -B
"""Has bytes that are not base 64."""

from answering import answer, asked

asked("bad-base64")
answer(files=[{"name": "bytes.bin", "base64": "a?b="}])
