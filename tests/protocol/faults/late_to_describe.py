#!/usr/bin/env -S python3 -B
"""Does not even say what it is."""

import time

time.sleep(60)
