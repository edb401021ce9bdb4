#!/usr/bin/env -S python3 -B
"""Does not call itself by a name."""

from answering import answer

answer(name="Bad Name!", summary="does one thing wrong")
