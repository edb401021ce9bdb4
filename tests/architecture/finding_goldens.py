"""Every finding of the tables comes out of a golden as an expected line, so that its words are read by someone."""

import re

import tree

NAME = "a golden for each finding"

# `error at boat.rig:3:1 (missing-unit)`, or `... [missing-unit]`, in a line that FileCheck looks for.
EXPECTED_LINE = re.compile(r"^(?:# )?[A-Z]+(?:-[A-Z]+)*:.*$", re.MULTILINE)
SLUG = re.compile(r"[(\[]([a-z0-9-]+)[)\]]")

# What no golden can provoke, with the unit test that does.
BY_UNIT_TEST = {
    # The tests may run as root, whom no file refuses; a reader made for the test does.
    "file-not-readable": "tests/unit/driver/unreadable_file_test.cpp",
}


def check(root, build):
    """Findings, one line of text each; build is not used."""
    expected = set()
    for path in tree.files(root, ["tests/golden"], (".test", ".rig")):
        for line in EXPECTED_LINE.findall(tree.read(path)):
            expected |= set(SLUG.findall(line))
    findings = []
    for path in tree.files(root, ["compiler/diagnostics/findings"], (".finding",)):
        slug = path.stem
        place = f"{tree.shown(root, path)}:1"
        unit_test = BY_UNIT_TEST.get(slug)
        if unit_test is not None:
            if not (root / unit_test).is_file() or f'"{slug}' not in tree.read(root / unit_test):
                findings.append(f"{place}: {slug} is not provoked by {unit_test}")
        elif slug not in expected:
            findings.append(f"{place}: {slug} has no golden")
    return findings
