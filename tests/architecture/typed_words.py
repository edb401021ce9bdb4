"""Kinds, types of ends, sections and methods are types: no file compares them as strings, save where they are read."""

import re

import tree

NAME = "kinds are no strings"

# A member that once was a string, held against a literal.
COMPARED = re.compile(
    r"(?:\.|->)(kind|type|section|sort|method|construction|role|side|duty|severity|condition)(?:\.name|\(\))?\s*[!=]=\s*\""
    r"|\"\s*[!=]=\s*\w+(?:\.|->)(?:kind|type|section|sort|method|construction)\b"
    r"|\b(?:term|section|sum)(?:\.|->)name\s*(?:[!=]=|\.(?:starts_with|ends_with|find)\()"
    r"|\bfact_(?:text|number|length|force)\([^;]*?,\s*\"|\bfind_(?:fact|record)\([^;]*?,\s*\""
)
# Where words of the language become types, and where texts of the language are handled as texts.
READS_WORDS = ("compiler/elaborate/", "compiler/names/", "compiler/syntax/", "compiler/kinds/", "compiler/driver/begin/",
               "compiler/service/begin/")


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp")):
        name = tree.shown(root, path)
        if name.startswith(READS_WORDS):
            continue
        for number, line in enumerate(tree.read(path).split("\n"), 1):
            if not line.lstrip().startswith("//") and COMPARED.search(line):
                findings.append(f"{name}:{number}: compares a word that is a type, or asks for a fact by a literal")
    return findings
