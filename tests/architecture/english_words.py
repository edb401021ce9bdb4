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
# The words by which a file denies something or names a construction, and those of the trade, are read, never printed; the states
# of a piece are one vocabulary, which data files have as well.
NAMES = ("compiler/model/construction.cpp", "compiler/model/stated.cpp", "compiler/model/trade_words.cpp",
         "compiler/model/piece_state.hpp")


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
    return findings
