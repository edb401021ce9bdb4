"""Eigen is named in the .cpp files of compiler/statics and nowhere else: its headers are slow to compile, and other rooms have no
matrices."""

import re

import cpp_text
import tree

NAME = "Eigen only in statics"

WORD = re.compile(r"\bEigen\s*::|\bnamespace\s+Eigen\b")


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp", ".h")):
        name = tree.shown(root, path)
        if name.startswith("compiler/statics/") and name.endswith(".cpp"):
            continue
        text = cpp_text.take_apart(tree.read(path))
        for include in text.includes:
            if include.path.startswith("Eigen/"):
                findings.append(f"{name}:{include.line}: includes {include.path}")
        for number, line in enumerate(text.code.split("\n"), 1):
            if WORD.search(line):
                findings.append(f"{name}:{number}: names Eigen")
    return findings
