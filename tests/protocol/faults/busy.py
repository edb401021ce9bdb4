#!/usr/bin/env -S python3 -B
"""Works without an end."""

from answering import asked

asked("busy")
while True:
    pass
