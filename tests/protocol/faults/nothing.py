#!/usr/bin/env -S python3 -B
"""Answers nothing."""

from answering import asked

asked("nothing")
