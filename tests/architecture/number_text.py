"""No number becomes text, or text a number, by a way that asks the locale or that a platform has of its own: the bytes must be
the same everywhere."""

import re

import cpp_text
import tree

NAME = "numbers without locale"

CALLS = re.compile(
    r"\b(setlocale|newlocale|uselocale|localeconv|strtod|strtof|strtold|stod|stof|stold|atof|sscanf|fscanf|scanf"
    r"|ostringstream|istringstream|stringstream|std::locale)\b"
)
HEADERS = {"sstream", "iomanip", "locale", "clocale", "locale.h", "iostream"}
PRINTF = re.compile(r"\b\w*printf\s*\(")
FLOATING = re.compile(r"%[-+ #0]*[\d*]*(?:\.[\d*]+)?L?[aefgAEFG]")
# Each platform has another one, and to_chars of a double is not in every library.
NOT_EVERYWHERE = re.compile(r"\b(long double|std::to_chars)\b")
LOCALE_FIELD = re.compile(r"\{[^{}]*:[^{}]*L[a-zA-Z]?\}")


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp", ".h")):
        name = tree.shown(root, path)
        text = cpp_text.take_apart(tree.read(path))
        for include in text.includes:
            # The command line may print whole texts with std::cout.
            words = include.path == "iostream" and name.startswith("compiler/driver/")
            if include.path in HEADERS and not words:
                findings.append(f"{name}:{include.line}: includes <{include.path}>; use fmt")
        lines = text.code.split("\n")
        for number, line in enumerate(lines, 1):
            for match in CALLS.finditer(line):
                findings.append(f"{name}:{number}: {match[1]} asks the locale; use fmt or units/shortest_digits")
            for match in NOT_EVERYWHERE.finditer(line):
                if not name.startswith("compiler/driver/"):
                    findings.append(f"{name}:{number}: {match[1]} is not the same everywhere; use units/shortest_digits")
        for number, literal in text.strings:
            if FLOATING.search(literal) and PRINTF.search("\n".join(lines[max(0, number - 3) : number])):
                findings.append(f"{name}:{number}: printf of a floating number asks the locale; use fmt")
            if LOCALE_FIELD.search(literal):
                findings.append(f"{name}:{number}: a format field with L asks the locale")
    return findings
