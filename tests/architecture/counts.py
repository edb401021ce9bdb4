#!/usr/bin/env python3
"""A file is a concept: neither dust nor a heap. Run by itself, it prints the counts.

  python3 tests/architecture/counts.py
"""

import pathlib
import statistics
import sys

sys.dont_write_bytecode = True

import tree

NAME = "files are concepts"

# A room that is added brings its files; growth without one is dust.
MOST_FILES = 960
MOST_SHORT_HEADERS = 60
SHORT_HEADER = 25  # lines
MOST_IN_RULES = 80
MEDIAN = (80, 120)
LONGEST = 600
FEW = 100  # below so many files it is another project than ours


def counted(root):
    """The counts of the files of compiler and plugins, as (what, count, least, most)."""
    lines = {
        tree.shown(root, path): len(tree.read(path).splitlines())
        for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp"))
    }
    if not lines:
        return []
    short = [name for name, count in lines.items() if name.endswith(".hpp") and count < SHORT_HEADER]
    return [
        ("files", len(lines), 0, MOST_FILES),
        (f"headers under {SHORT_HEADER} lines", len(short), 0, MOST_SHORT_HEADERS),
        ("files in rules", sum(name.startswith("compiler/rules/") for name in lines), 0, MOST_IN_RULES),
        ("median of their lines", round(statistics.median(lines.values())), *MEDIAN),
        ("lines of the longest", max(lines.values()), 0, LONGEST - 1),
    ]


def check(root, build):
    """Findings, one line of text each; build is not used."""
    counts = counted(root)
    if not counts or (counts[0][1] < FEW and counts[1][1] <= MOST_SHORT_HEADERS):
        return []
    return [
        f"compiler: {what}: {count}, {f'at most {most}' if count > most else f'at least {least}'}"
        for what, count, least, most in counts
        if not least <= count <= most
    ]


if __name__ == "__main__":
    for what, count, least, most in counted(pathlib.Path(__file__).resolve().parent.parent.parent):
        print(f"{count:6} {what} ({f'{least} to {most}' if least else f'at most {most}'})")
