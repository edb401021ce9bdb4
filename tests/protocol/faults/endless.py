#!/usr/bin/env -S python3 -B
"""Writes without an end."""

import sys

from answering import asked

asked("endless")
while True:
    sys.stdout.write("[" * 65536)
