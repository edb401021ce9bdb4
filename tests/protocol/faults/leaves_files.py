#!/usr/bin/env -S python3 -B
"""Leaves files and a folder that is shut in the folder in which it runs."""

import os

from answering import answer, asked

asked("leaves-files")
found = sorted(os.listdir("."))
os.makedirs("a/b")
for name in ("a/b/c", "d"):
    with open(name, "w", encoding="utf-8") as file:
        file.write("left behind\n")
os.symlink("/", "e")
os.chmod("a/b", 0)
answer(files=[{"name": "leaves-files.txt", "text": f"{os.getcwd()}\n{found}\n"}])
