#!/usr/bin/env -S python3 -B
"""Answers after a minute."""

import time

from answering import answer, asked, one_file

asked("late")
time.sleep(60)
answer(files=one_file("late.txt"))
