"""Generated code is made by the build and kept out of the project."""

import re

import tree

NAME = "no generated code kept"
GENERATED_NAME = re.compile(r"Rig(Lexer|Parser)\w*\.(cpp|h|hpp|java|py)|.*\.(interp|tokens|pb\.h|pb\.cc|o|a|so|pyc)")
GENERATED_HEAD = re.compile(r"generated (from|by|with) .*(antlr|\.g4|protoc)|do not edit", re.IGNORECASE)


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["."], ("",)):
        name = tree.shown(root, path)
        if GENERATED_NAME.fullmatch(path.name):
            findings.append(f"{name}: is made by a tool")
        elif path.suffix in {".cpp", ".hpp", ".h"} and GENERATED_HEAD.search(head(path)):
            findings.append(f"{name}:1: says itself that it is generated")
    return findings


def head(path):
    """The first lines, where a generator signs its work."""
    return "\n".join(tree.read(path).split("\n")[:3])
