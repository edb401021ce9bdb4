#!/usr/bin/env -S python3 -B
"""Knows members that version 1 does not."""

from answering import answer, asked

if asked("newcomer")["version"] == 1:
    answer(
        format="sheerpole-reply",
        colours=["black"],
        files=[{"name": "text.txt", "text": "twelve é\n", "language": "en"}, {"name": "bytes.bin", "base64": "AP+A"}],
    )
