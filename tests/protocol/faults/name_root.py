#!/usr/bin/env -S python3 -B
"""Wants to write anywhere."""

from answering import answer, asked, one_file

asked("name-root")
answer(files=one_file("good.txt") + one_file("/tmp/root.txt"))
