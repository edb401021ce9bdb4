"""Every finding has an example that says it, and the example mended; the unit test of the same name tries them all."""

import re

import tree

NAME = "an example for each finding"

FOLDER = "compiler/diagnostics/findings"
SECTION = re.compile(r"^=== (.*)$", re.MULTILINE)
# The folders of FOLDER/contents, and findings that have a place of their own in it.
SUBJECT = re.compile(r"^([a-z]+): .+$")


def check(root, build):
    """Findings, one line of text each; build is not used."""
    named = contents(root)
    findings = []
    for path in tree.files(root, [FOLDER], (".finding",)):
        place = f"{tree.shown(root, path)}:1"
        findings += [f"{place}: {fault}" for fault in faults(tree.read(path), path.stem)]
    for name in sorted(set(named)):
        if named.count(name) > 1:
            findings.append(f"{FOLDER}/contents:1: names {name} {named.count(name)} times")
    return findings


def contents(root):
    """folder/slug of each finding that contents names."""
    path = root / FOLDER / "contents"
    folder = ""
    named = []
    for line in tree.read(path).splitlines() if path.is_file() else []:
        subject = SUBJECT.match(line)
        if subject:
            folder = subject[1]
        elif line.startswith("  "):
            named.append(f"{folder}/{line.strip()}")
    return named


def faults(text, slug):
    """What is missing in the text of one finding."""
    pieces = SECTION.split(text)
    severity = re.search(r"^severity: (\w+)$", pieces[0], re.MULTILINE)
    command = re.search(r"^command: (.*)$", pieces[0], re.MULTILINE)
    mended_command = re.search(r"^mended-command: (.*)$", pieces[0], re.MULTILINE)
    sections = {}
    for name, body in zip(pieces[1::2], pieces[2::2]):
        sections[name] = sections.get(name, "") + body.strip("\n")
    example = {name.removeprefix("example "): body for name, body in sections.items() if name.startswith("example ")}
    mended = {name.removeprefix("mended "): body for name, body in sections.items() if name.startswith("mended ")}
    result = []
    if not example:
        result.append(f"{slug} has no example")
    said = rf"^{severity[1] if severity else 'severity'} (at .+ )?\({re.escape(slug)}\)"
    if not re.search(said, sections.get("says", ""), re.MULTILINE):
        result.append(f"what is said of the example does not hold {slug} with its severity")
    if not mended and not mended_command:
        result.append(f"{slug} has no mended example")
    elif (example | mended) == example and (not mended_command or command and mended_command[1] == command[1]):
        result.append(f"the mended example of {slug} is the example itself")
    return result
