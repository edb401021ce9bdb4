#!/usr/bin/env -S python3 -B
"""Leaves its number and that of a child in another session in its folder, and does not end."""

import os
import pathlib
import time

from answering import asked

asked("stays-in-session")
child = os.fork()
if child == 0:
    os.setsid()
    time.sleep(60)
    os._exit(0)
pathlib.Path("numbers.new").write_text(f"{os.getpid()} {child}")
os.rename("numbers.new", "numbers")
time.sleep(60)
