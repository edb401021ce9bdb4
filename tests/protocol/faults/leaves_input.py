#!/usr/bin/env -S python3 -B
"""Takes its time, with its input open and unread, and answers all the same."""

import time

from answering import answer, one_file

time.sleep(0.3)
answer(name="leaves-input", summary="does not listen", files=one_file("leaves-input.txt"))
