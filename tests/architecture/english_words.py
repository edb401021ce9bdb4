"""calculate, model and rules hold no sentence: what a result says in English is said in wording/."""

import re

import cpp_text
import tree

NAME = "no English outside wording"

FOLDERS = ["compiler/calculate", "compiler/model", "compiler/rules"]
# Two words with a blank between them; a name of a column or a key has none.
SENTENCE = re.compile(r"(?:^|[^\w])(?!(?:mm|kN|deg|degC)\b)[A-Za-z]{2,},? (?!(?:mm|kN|deg|degC)\b)[A-Za-z]{2,}")
# What is said to contributors, of a fault of the compiler itself.
FAULT = re.compile(r"\b(internal_error|static_assert|std::logic_error)\b")
# The printer of a phase, and the named sizes and threads of published tables, whose words are names.
NAMES = ("compiler/model/print_", "compiler/model/construction.cpp", "compiler/model/stated.cpp")

# What is left from before, by file: it may become less, never more.
LEFT = {
    "compiler/calculate/bench/restate_for_shop.cpp": 4,
    "compiler/calculate/change/stay_inputs.cpp": 5,
    "compiler/calculate/cut/contraction.cpp": 3,
    "compiler/calculate/cut/eye_allowance.cpp": 1,
    "compiler/calculate/cut/line_stretch.cpp": 1,
    "compiler/calculate/facts.cpp": 1,
    "compiler/calculate/length/path_length.cpp": 1,
    "compiler/calculate/length/pin_to_pin.cpp": 2,
    "compiler/calculate/strength/screening_inputs.cpp": 1,
    "compiler/model/limits.cpp": 1,
    "compiler/model/part.hpp": 1,
    "compiler/model/piece_state.hpp": 3, # words of the one vocabulary: data files have them as well
    "compiler/model/provenance.cpp": 2,
}


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, FOLDERS, (".cpp", ".hpp")):
        name = tree.shown(root, path)
        if name.startswith(NAMES):
            continue
        text = tree.read(path)
        lines = text.split("\n")
        for number, literal in cpp_text.take_apart(text).strings:
            if SENTENCE.search(literal) and not FAULT.search("\n".join(lines[max(0, number - 3) : number])):
                findings.append(f"{name}:{number}: \"{literal[:40]}\" is English; it belongs into compiler/wording")
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
