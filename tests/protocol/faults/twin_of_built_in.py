#!/usr/bin/env -S python3 -B
"""Has a file that findings writes as well."""

from answering import answer, asked, one_file

asked("twin-of-built-in")
answer(files=one_file("own.txt") + one_file("Findings.txt"))
