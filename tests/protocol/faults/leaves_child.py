#!/usr/bin/env -S python3 -B
"""Answers and leaves a child behind that holds its output open."""

import os
import time

from answering import answer, asked

asked("leaves-child")
child = os.fork()
if child == 0:
    time.sleep(60)
    os._exit(0)
answer(files=[{"name": "leaves-child.txt", "text": f"{child}\n"}])
