#!/usr/bin/env -S python3 -B
"""Has a number where a text belongs."""

from answering import answer, asked

asked("number-for-text")
answer(files=[{"name": "first.txt", "text": ""}, {"name": "number.txt", "text": 12}])
