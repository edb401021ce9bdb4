"""The top folder holds what a reader expects there, and a file is named after the one thing in it."""

import re

import tree

NAME = "layout and file names"
TOP_LEVEL = {
    "CMakeLists.txt",
    "CMakePresets.json",
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "compiler",
    "docs",
    "examples",
    "grammar",
    "plugins",
    "tests",
}
SNAKE_CASE = re.compile(r"[a-z][a-z0-9]*(_[a-z0-9]+)*\.(cpp|hpp)")
SAYS_NOTHING = re.compile(r"(^|_)(utils?|utilit(y|ies)|helpers?|common|misc|managers?)(_|\.)")


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for entry in sorted(root.iterdir()):
        if entry.name.startswith(".") or entry.name in tree.NOT_OURS or entry.name in TOP_LEVEL:
            continue
        findings.append(f"{entry.name}: does not belong in the top folder")
    for path in tree.files(root, ["compiler", "plugins", "tests"], (".cpp", ".hpp", ".h", ".cc", ".cxx")):
        # What others' sources ask for there is called as they call it.
        if not SNAKE_CASE.fullmatch(path.name) and not tree.shown(root, path).startswith("compiler/driver/web/missing/"):
            findings.append(f"{tree.shown(root, path)}: the name is not snake_case.cpp or snake_case.hpp")
        if SAYS_NOTHING.search(path.name):
            findings.append(f"{tree.shown(root, path)}: the name does not say what is inside")
    return findings
