#!/usr/bin/env -S python3 -B
"""Answers and leaves a child behind in a session of its own, by way of another."""

import os
import time

from answering import answer, asked

asked("leaves-session")
read, write = os.pipe()
if os.fork() == 0:
    os.setsid()
    if os.fork() == 0:
        os.write(write, str(os.getpid()).encode())
        for stream in (0, 1, 2, write):
            os.close(stream)
        time.sleep(60)
    os._exit(0)
answer(files=[{"name": "leaves-session.txt", "text": os.read(read, 20).decode() + "\n"}])
