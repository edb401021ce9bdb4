"""ANTLR and the parser it generates are named in compiler/syntax/antlr and nowhere else."""

import re

import cpp_text
import tree

NAME = "ANTLR only in syntax/antlr"

WORD = re.compile(r"\b(antlr\w*|Rig(?:Lexer|Parser)\w*)", re.IGNORECASE)


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp", ".h")):
        name = tree.shown(root, path)
        if name.startswith("compiler/syntax/antlr/"):
            continue
        text = cpp_text.take_apart(tree.read(path))
        for include in text.includes:
            # The rest of the room may call its own folder through that folder's own headers.
            own = name.startswith("compiler/syntax/") and include.path.startswith("syntax/antlr/")
            if not own and WORD.search(include.path):
                findings.append(f"{name}:{include.line}: includes {include.path}")
        for number, line in enumerate(text.code.split("\n"), 1):
            for match in WORD.finditer(line):
                findings.append(f"{name}:{number}: names {match[1]}")
    return findings
