"""Sheerpole reports and leaves the judgement to people: no text of its own calls a rig any of these words."""

import re

import cpp_text
import tree

NAME = "no verdicts in the texts"
WORD = re.compile(r"\b(safe|approved|certified)\b", re.IGNORECASE)


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp", ".h")):
        for line, literal in cpp_text.take_apart(tree.read(path)).strings:
            for match in WORD.finditer(literal):
                findings.append(f"{tree.shown(root, path)}:{line}: says \"{match[1]}\"")
    return findings
