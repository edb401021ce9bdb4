#!/usr/bin/env -S python3 -B
"""Answers in a version that is to come."""

from answering import asked

asked("other-version")
print('{"version": 2, "papers": {}}')
