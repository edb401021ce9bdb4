"""Every check has an example in which it finds something, and a golden in which it looks and passes.

A check that nothing provokes may be blind; one that nothing satisfies may cry at everything.
"""

import re

import cpp_text
import tree

NAME = "a provoking example and a clean golden for each check"

ROW = re.compile(r'CheckRow\{\s*"([a-z0-9-]+)"')


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["compiler/rules"], (".cpp",)):
        text = tree.read(path)
        for match in ROW.finditer(text):
            place = f"{tree.shown(root, path)}:{cpp_text.line_of(text, match.start())}"
            findings += faults(root, match[1], place)
    return findings


def faults(root, slug, place):
    """What is wrong with the goldens of the check of this name; `place` is its row in a table."""
    clean = f"tests/golden/checks/{slug}.rig"
    result = []
    if not any((root / "compiler/diagnostics/findings").glob(f"*/{slug}.finding")):
        result.append(f"{place}: {slug} has no file in compiler/diagnostics/findings, with an example that provokes it")
    if not (root / clean).is_file():
        result.append(f"{place}: {slug} has no {clean} in which it passes")
        return result
    text = tree.read(root / clean)
    if not re.search(rf"^# CHECK(-NEXT)?:{re.escape(slug)},.*,pass,.+$", text, re.MULTILINE):
        result.append(f"{clean}: does not expect that {slug} passes")
    if f'| %not grep "^{slug},.*,finding,"' not in text:
        result.append(f"{clean}: does not forbid that {slug} finds something")
    return result
