"""Every finding that is reported has its words in a table of findings, and every entry of a table is reported."""

import re

import cpp_text
import tree

NAME = "finding slugs"

ENTRY = re.compile(r'\.slug\s*=\s*"([^"]*)"')
REPORT = re.compile(r'\bdiagnose\(\s*"([^"]*)"')


def check(root, build):
    """Findings, one line of text each; build is not used."""
    entries = {}  # slug: place
    findings = []
    reports = []  # (slug, place)
    said = set()  # every string outside the tables: a slug may reach diagnose() through a variable
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp")):
        name = tree.shown(root, path)
        text = tree.read(path)
        if name.startswith("compiler/diagnostics/") and name.endswith("_findings.cpp"):
            for match in ENTRY.finditer(text):
                place = f"{name}:{cpp_text.line_of(text, match.start())}"
                if match[1] in entries:
                    findings.append(f"{place}: {match[1]} stands in {entries[match[1]]} as well")
                entries.setdefault(match[1], place)
            continue
        for match in REPORT.finditer(text):
            reports.append((match[1], f"{name}:{cpp_text.line_of(text, match.start())}"))
        said |= {literal for _, literal in cpp_text.take_apart(text).strings}
    findings += [f"{place}: {slug} has no entry in a table of findings" for slug, place in reports if slug not in entries]
    findings += [f"{place}: {slug} is never reported" for slug, place in entries.items() if slug not in said]
    return findings
