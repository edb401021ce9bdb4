#!/usr/bin/env python3
"""run.py SHEERPOLE [--page FILE]: makes variants of the example boats with one slip each and looks at what is said first.

For each variant the maker of the slip knows its line and, written down before the first run, the findings that name its cause.
Counted: no crash; the first error (or, when there is none, the first warning) is on the right line; it names the cause. A slip that
is a missing sign at the end of a line may be found on the next line that holds anything. Fails under 95 % right lines, under 90 %
named causes, on any crash, and when the page that holds the figures says something else.
"""

import concurrent.futures
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import slips

RIGHT_LINE = 0.95
NAMES_CAUSE = 0.90


def first_of(findings, known):
    """The first error, else the first warning, that is not said of the boat without the slip; None when nothing is."""
    for severity in ("error", "warning"):
        for finding in findings:
            if finding["severity"] == severity and (finding["slug"], finding["message"]) not in known:
                return finding
    return None


def known_of(sheerpole, folder, root):
    """What is said of a boat as it is."""
    ran = subprocess.run(
        [sheerpole, "check", "--form", "json", root],
        cwd=os.path.join(folder, "examples"), capture_output=True, text=True, check=True,
    )
    return {(finding["slug"], finding["message"]) for finding in json.loads(ran.stdout)["findings"]}


def judge(sheerpole, folder, variant, known):
    """(crashed, right line, names cause, words) of one variant."""
    place = tempfile.mkdtemp(dir=folder)
    shutil.copytree(os.path.join(folder, "examples"), os.path.join(place, "examples"))
    with open(os.path.join(place, "examples", variant.file), "w", encoding="utf-8") as file:
        file.write(variant.text)
    ran = subprocess.run(
        [sheerpole, "check", "--form", "json", variant.root],
        cwd=os.path.join(place, "examples"), capture_output=True, text=True, check=False,
    )
    shutil.rmtree(place)
    if ran.returncode not in (0, 1) or ran.stderr:
        return True, False, False, f"exit code {ran.returncode} {ran.stderr[:200]}"
    first = first_of(json.loads(ran.stdout)["findings"], known)
    if first is None:
        return False, False, False, "nothing is said"
    place = first["place"] or {"file": "", "line": 0}
    lines = [place] + [other["place"] for other in first["others"]]
    right = any(at["file"] == variant.file and at["line"] in variant.lines for at in lines[: variant.places])
    words = f"{place['file']}:{place['line']} {first['slug']}"
    return False, right, first["slug"] in variant.slugs, words


def main():
    sheerpole = os.path.abspath(sys.argv[1])
    page = sys.argv[sys.argv.index("--page") + 1] if "--page" in sys.argv else None
    examples = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "examples")
    variants = slips.all_variants(examples)
    with tempfile.TemporaryDirectory() as folder:
        shutil.copytree(examples, os.path.join(folder, "examples"))
        with concurrent.futures.ThreadPoolExecutor(max_workers=os.cpu_count() or 1) as pool:
            known = {root: known_of(sheerpole, folder, root) for root in sorted({v.root for v in variants})}
            results = list(pool.map(lambda v: judge(sheerpole, folder, v, known[v.root]), variants))
    rows = {}
    misses = []
    crashes = 0
    for variant, (crashed, right, named, words) in zip(variants, results):
        row = rows.setdefault(variant.sort, [0, 0, 0])
        row[0] += 1
        row[1] += right
        row[2] += named
        crashes += crashed
        if crashed or not right or not named:
            misses.append(f"{variant.sort}: {variant.file}:{sorted(variant.lines)}: {variant.what}: {words}")
    total = [sum(row[i] for row in rows.values()) for i in range(3)]
    table = ["| slip | variants | right line | names the cause |", "|---|---:|---:|---:|"]
    table += [f"| {sort} | {row[0]} | {row[1]} | {row[2]} |" for sort, row in rows.items()]
    table.append(f"| all | {total[0]} | {total[1]} | {total[2]} |")
    print("\n".join(misses + [""] + table))
    print(f"crashes: {crashes}; right line {total[1] / total[0]:.1%}, names the cause {total[2] / total[0]:.1%}")
    checks = [
        ("no crash", crashes == 0),
        ("300 variants or more", total[0] >= 300),
        ("the right line in 95 %", total[1] >= RIGHT_LINE * total[0]),
        ("names the cause in 90 %", total[2] >= NAMES_CAUSE * total[0]),
    ]
    if page:
        with open(page, encoding="utf-8") as file:
            checks.append((f"{os.path.basename(page)} holds these figures", "\n".join(table) in file.read()))
    for name, good in checks:
        print(("ok   " if good else "FAIL ") + name)
    passed = sum(good for _, good in checks)
    print(f"{passed} passed, {len(checks) - passed} failed")
    return 0 if passed == len(checks) else 1


if __name__ == "__main__":
    sys.exit(main())
