#!/usr/bin/env -S python3 -B
"""Nests its answer a million deep."""

from answering import asked

asked("deep")
print('{"version": 1, "files": [], "more": ' + "[" * 1000000 + "]" * 1000000 + "}")
