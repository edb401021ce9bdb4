#!/usr/bin/env python3
"""Writes a rig file with N stays to standard output: the boat of generated_boat.cpp, for measuring the whole command."""

import pathlib
import re
import sys


def boat(stays):
    """The text of a rig file with so many stays."""
    source = (pathlib.Path(__file__).parent / "generated_boat.cpp").read_text(encoding="utf-8")
    head, stay = re.findall(r'R"\((.*?)\)"', source, re.DOTALL)
    out = [head]
    for i in range(1, stays + 1):
        text = stay.replace("{0}", str(i)).replace("{1:02}", f"{i % 90:02}")
        out.append(text.replace("{{", "{").replace("}}", "}"))
    return "".join(out)


if __name__ == "__main__":
    sys.stdout.reconfigure(encoding="utf-8", newline="\n")
    sys.stdout.write(boat(int(sys.argv[1])))
