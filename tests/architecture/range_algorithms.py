"""Of the algorithms over ranges only those are used that compiler/driver/web/missing/algorithm gives to the library of
emscripten, which has none: otherwise the offline page no longer compiles, and only the long run of the tests would say so."""

import re

import cpp_text
import tree

NAME = "the page's library has the algorithms over ranges"

GIVEN_IN = "compiler/driver/web/missing/algorithm"
GIVEN = re.compile(r"^constexpr [\w ]+ (\w+)\(", re.MULTILINE)
USED = re.compile(r"\bstd::ranges::(\w+)\s*\(")
# Concepts and what is asked of one range alone are in that library.
OF_RANGES = {"begin", "end", "size", "empty", "data"}


def check(root, build):
    """Findings, one line of text each; build is not used."""
    given = root / GIVEN_IN
    known = OF_RANGES | (set(GIVEN.findall(tree.read(given))) if given.is_file() else set())
    findings = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp")):
        for number, line in enumerate(cpp_text.take_apart(tree.read(path)).code.split("\n"), 1):
            findings += [
                f"{tree.shown(root, path)}:{number}: std::ranges::{used} is not in {GIVEN_IN}, so the page does not compile"
                for used in USED.findall(line)
                if used not in known
            ]
    return findings
