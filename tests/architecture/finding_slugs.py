"""Every finding that is reported has its words in a file of its own, and every such file is reported of."""

import re

import cpp_text
import tree

NAME = "finding slugs"

REPORT = re.compile(r'\bdiagnose\(\s*"([^"]*)"')


def check(root, build):
    """Findings, one line of text each; build is not used."""
    entries = {}  # slug: place
    findings = []
    for path in tree.files(root, ["compiler/diagnostics/findings"], (".finding",)):
        place = f"{tree.shown(root, path)}:1"
        if path.stem in entries:
            findings.append(f"{place}: {path.stem} stands in {entries[path.stem]} as well")
        entries.setdefault(path.stem, place)
    reports = []  # (slug, place)
    said = set()  # every string: a slug may reach diagnose() through a variable
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp")):
        name = tree.shown(root, path)
        text = tree.read(path)
        for match in REPORT.finditer(text):
            reports.append((match[1], f"{name}:{cpp_text.line_of(text, match.start())}"))
        said |= {literal for _, literal in cpp_text.take_apart(text).strings}
    findings += [f"{place}: {slug} has no file of its words" for slug, place in reports if slug not in entries]
    findings += [f"{place}: {slug} is never reported" for slug, place in entries.items() if slug not in said]
    return findings
