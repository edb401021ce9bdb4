"""COIN-OR is named in compiler/calculate/cutting and nowhere else, and no header there includes it."""

import re

import cpp_text
import tree

NAME = "COIN-OR only in calculate/cutting"

WORD = re.compile(r"\b((?:Cbc|Cgl|Clp|Osi|Coin)[A-Z]\w*)")


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp", ".h")):
        name = tree.shown(root, path)
        if name.startswith("compiler/calculate/cutting/") and name.endswith(".cpp"):
            continue
        text = cpp_text.take_apart(tree.read(path))
        for include in text.includes:
            if include.path.startswith("coin/") or WORD.search(include.path):
                findings.append(f"{name}:{include.line}: includes {include.path}")
        # A header of the folder may say that a class exists, for a pointer to it.
        if name.startswith("compiler/calculate/cutting/"):
            continue
        for number, line in enumerate(text.code.split("\n"), 1):
            for match in WORD.finditer(line):
                findings.append(f"{name}:{number}: names {match[1]}")
    return findings
