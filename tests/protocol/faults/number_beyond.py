#!/usr/bin/env -S python3 -B
"""Answers with a number that no computer counts with."""

from answering import asked

asked("number-beyond")
print('{"version": 1, "files": [], "mass": 1e400}')
