"""Papers say nothing by themselves: their words stand in the tables of compiler/wording/papers, each is said somewhere, and who
says it fills in what it asks for."""

import re

import cpp_text
import tree

NAME = "the words of papers stand in tables"

FOLDERS = ["plugins", "compiler/backend"]
# What is no paper: a program to be copied, JSON, what is said to programs outside, how SVG and HTML are marked up.
NO_PAPERS = (
    "plugins/template/", "plugins/echo/main.cpp", "compiler/backend/json/", "compiler/backend/process/",
    "compiler/backend/drawing/svg_writer.cpp", "compiler/backend/page/html.cpp",
)
# Two words with a blank between them, or a word that begins a sentence.
WORDS = re.compile(r"(?:^|[^\w])(?!(?:mm|kN|deg|degC)\b)[A-Za-z]{2,},? (?!(?:mm|kN|deg|degC)\b)[A-Za-z]{2,}|^\s*[A-Z][a-z]{2,}\b")
# The words of iCalendar and of rig files that are written, and of CSV: group and headings of a table are read by programs. So are
# the elements of a tagged PDF (ISO 32000-1, 14.8.4).
INTERFACES = re.compile(
    r"BEGIN:|END:|VERSION:|PRODID:|TRANSP:|\\n|mm computed|^(Lines|Hardware|Small parts)$|^Liberation |^(Table|Figure)$|^[a-z0-9 ,%+±-]+(kN)?$"
)
# What is said to contributors, of a fault of the compiler itself.
FAULT = re.compile(r"\b(internal_error|static_assert|std::logic_error)\b")

ENUM = re.compile(r"enum class (\w+Phrase)\b[^{]*\{([^}]*)\}")
CASE = re.compile(r'case (?:\w+::)?(\w+):\s*return ((?:"(?:[^"\\\n]|\\.)*"\s*)+);')
USED = re.compile(r"\b(\w+Phrase)::(\w+)")
SAID = re.compile(r"\bsay\((\w+Phrase)::(\w+)([,)])")
OPEN, SHUT = "([{", ")]}"


def tables(root):
    """Each enumeration of compiler/wording/papers with its file, and each of its phrases with its English."""
    found = {}
    for path in tree.files(root, ["compiler/wording/papers"], (".hpp",)):
        declared = ENUM.search(tree.read(path))
        source = path.with_suffix(".cpp")
        if declared and source.is_file():
            texts = {
                name: "".join(re.findall(r'"((?:[^"\\\n]|\\.)*)"', text)) for name, text in CASE.findall(tree.read(source))
            }
            found[declared[1]] = (tree.shown(root, source), texts)
    return found


def wanted(text):
    """How many arguments a phrase asks for."""
    places = [int(place) + 1 for place in re.findall(r"\{(\d)\}", text)]
    return max([text.count("{}"), *places])


def given(text, at):
    """How many arguments stand between `at`, behind the phrase, and the end of the call."""
    depth = 0
    count = 0
    quoted = False
    while at < len(text):
        sign = text[at]
        if quoted:
            at += sign == "\\"
            quoted = sign != '"'
        elif sign == "'" and text[at + 1 : at + 2] == "\\":
            at += 3
        elif sign == "'" and text[at + 2 : at + 3] == "'":
            at += 2
        elif sign == '"':
            quoted = True
        elif sign in OPEN:
            depth += 1
        elif sign in SHUT and depth == 0:
            return count
        elif sign in SHUT:
            depth -= 1
        elif sign == "," and depth == 0:
            count += 1
        at += 1
    return count


def literals(root):
    """What is English and stands in the code of a paper."""
    findings = []
    for path in tree.files(root, FOLDERS, (".cpp", ".hpp")):
        name = tree.shown(root, path)
        if name.startswith(NO_PAPERS):
            continue
        text = tree.read(path)
        lines = text.split("\n")
        for number, literal in cpp_text.take_apart(text).strings:
            if not WORDS.search(literal) or FAULT.search("\n".join(lines[max(0, number - 3) : number])):
                continue
            heading = "/table/" in name or name.endswith("order_list.cpp")
            if INTERFACES.search(literal) and (heading or not re.fullmatch(r"[a-z0-9 ,%+-]+(kN)?", literal)):
                continue
            findings.append(f"{name}:{number}: \"{literal[:40]}\" is said by a paper; it belongs into compiler/wording/papers")
    return findings


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = literals(root)
    known = tables(root)
    used = set()
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp")):
        name = tree.shown(root, path)
        if name.startswith("compiler/wording/papers/"):
            continue
        text = tree.read(path)
        used.update(USED.findall(text))
        for call in SAID.finditer(text):
            table, phrase, _ = call.groups()
            english = known.get(table, ("", {}))[1].get(phrase)
            count = given(text, call.end() - 1)
            if english is not None and wanted(english) != count:
                line = cpp_text.line_of(text, call.start())
                findings.append(f"{name}:{line}: {table}::{phrase} asks for {wanted(english)} arguments, here are {count}")
    for table, (name, texts) in known.items():
        findings += [f"{name}: nobody says {table}::{phrase}" for phrase in texts if (table, phrase) not in used]
    return findings
