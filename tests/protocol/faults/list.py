#!/usr/bin/env -S python3 -B
"""Answers with a list."""

from answering import asked

asked("list")
print("[]")
