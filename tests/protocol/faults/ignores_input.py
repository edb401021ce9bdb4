#!/usr/bin/env -S python3 -B
"""Never reads what it is asked."""

import os

from answering import answer, one_file

os.close(0)
answer(name="ignores-input", summary="does not listen", files=one_file("ignores-input.txt"))
