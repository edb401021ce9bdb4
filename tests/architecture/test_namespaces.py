"""The names of each test are in a namespace called after its file.

Builds from nothing join several files to one, and each test has helpers of its own, many of one name.
"""

import re

import cpp_text
import tree

NAME = "namespaces of tests"

NAMESPACE = re.compile(r"^namespace (sheerpole(?:::\w+)*) \{$", re.MULTILINE)


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    earlier = {}
    for path in tree.files(root, ["tests/unit"], ("_test.cpp",)):
        name = tree.shown(root, path)
        wanted = f"sheerpole::{path.stem}"
        found = NAMESPACE.findall(cpp_text.take_apart(tree.read(path)).code)
        if found != [wanted]:
            findings.append(f"{name}:1: has its names not in namespace {wanted}")
        if path.stem in earlier:
            findings.append(f"{name}:1: is called like {earlier[path.stem]}")
        earlier[path.stem] = name
    return findings
