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
READS_WORDS = ("compiler/elaborate/", "compiler/names/", "compiler/syntax/", "compiler/kinds/", "compiler/driver/begin/")

# What is left from before, by file: it may become less, never more.
LEFT = {
    "compiler/calculate/adjust/account.cpp": 6,
    "compiler/calculate/adjust/fit_stack.cpp": 6,
    "compiler/calculate/behaviour/creep.cpp": 14,
    "compiler/calculate/behaviour/replacement.cpp": 2,
    "compiler/calculate/behaviour/tension.cpp": 10,
    "compiler/calculate/behaviour/thermal_table.cpp": 6,
    "compiler/calculate/bench/restate_for_shop.cpp": 6,
    "compiler/calculate/change/sensitivity.cpp": 2,
    "compiler/calculate/cut/contraction.cpp": 7,
    "compiler/calculate/cut/end_use.cpp": 2,
    "compiler/calculate/cut/line_ends.cpp": 3,
    "compiler/calculate/cut/line_stretch.cpp": 5,
    "compiler/calculate/cut/piece.cpp": 1,
    "compiler/calculate/facts.cpp": 3,
    "compiler/calculate/reading/reading_length.cpp": 18,
    "compiler/driver/compile.cpp": 2,
    "compiler/driver/seal/make_seal.cpp": 1,
    "compiler/rules/adjusters/adjuster_range.cpp": 2,
    "compiler/rules/adjusters/adjuster_setting.cpp": 2,
    "compiler/rules/adjusters/lashings.cpp": 1,
    "compiler/rules/adjusters/reserve.cpp": 2,
    "compiler/rules/adjusters/screws.cpp": 2,
    "compiler/rules/evidence/ages.cpp": 1,
    "compiler/rules/evidence/inspections.cpp": 3,
    "compiler/rules/evidence/readings.cpp": 2,
    "compiler/rules/lengths/expectations.cpp": 1,
    "compiler/rules/securing/access.cpp": 2,
    "compiler/rules/securing/articulation.cpp": 1,
    "compiler/rules/securing/metals.cpp": 1,
    "compiler/rules/securing/pins_and_threads.cpp": 3,
    "compiler/rules/securing/rope_bearing.cpp": 4,
    "compiler/rules/strength/mast_loads.cpp": 1,
    "compiler/wording/length_words.cpp": 1,
    "plugins/survey-report/survey_report.cpp": 1,
}


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
    return [
        finding
        for number, finding in numbered(findings)
        if number > LEFT.get(finding.split(":")[0], 0)
    ]


def numbered(findings):
    """Each with its number among those of its file."""
    seen = {}
    for finding in findings:
        file = finding.split(":")[0]
        seen[file] = seen.get(file, 0) + 1
        yield seen[file], finding
