#!/usr/bin/env -S python3 -B
"""Tells what it can see of where it runs."""

import os
import resource
import sys

from answering import answer, asked

asked("around")
lines = [f"{name}={value}" for name, value in sorted(os.environ.items()) if name not in ("PATH", "LC_CTYPE")]
lines += [f"PATH: {'PATH' in os.environ}", f"files here: {os.listdir('.')}", f"open: {sorted(map(int, os.listdir('/proc/self/fd')))[:3]}"]
lines += [f"more open: {len(os.listdir('/proc/self/fd')) - 4}"]  # the three and the one that looks
lines += [f"arguments: {len(sys.argv) - 1}", f"own group: {os.getpgid(0) == os.getpid()}"]
for name in ("RLIMIT_CPU", "RLIMIT_CORE", "RLIMIT_FSIZE", "RLIMIT_NOFILE"):
    lines.append(f"{name} {resource.getrlimit(getattr(resource, name))[1]}")
answer(files=[{"name": "around.txt", "text": "\n".join(lines) + "\n"}])
