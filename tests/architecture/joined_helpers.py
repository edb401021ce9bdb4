"""No two files that the build may join define the same helper for themselves.

Builds from nothing join several files of a target to one. Two unnamed namespaces of one enclosing namespace are then
one, so a helper of one name and one list of parameters in both is defined twice; whether it meets depends on the
alphabet. Mostly it is the same helper and belongs into a header; else each subject has a namespace of its own.

Neither is a function of one file a variable or a type of the other. Nor has a helper the name of a type in a header of
the enclosing namespace: a file that is joined behind it means the type and gets the helper.
"""

import collections
import re

import cpp_text
import tree
import type_names

NAME = "helpers of joined files"

OPEN = re.compile(r"\b(?:inline\s+)?namespace(?:\s+([\w:]+))?\s*\{|[{}]")
FUNCTION = re.compile(r"(?:^|[\s*&>])(~?\w+)\s*(\([^;{}]*\))\s*(?:const\s*)?(?:noexcept\s*)?(?:->\s*[^{};]+)?$")
TYPE = re.compile(r"\b(?:struct|class|enum(?:\s+class)?|union)\s+(\w+)[^;=()]*$")
VARIABLE = re.compile(r"(?:^|[\s*&>])(\w+)\s*(?:\[[^\]]*\]\s*)*(?:=|$)")
NOT_NAMES = {"if", "for", "while", "switch", "return", "sizeof", "static_assert", "using", "template", "operator"}


APART = re.compile(r'APART "([^"]+)"')


def compiled_apart(root, name):
    """Whether the build never joins the file, since its room says so."""
    makefile = root / "/".join(name.split("/")[:2]) / "CMakeLists.txt"
    if not makefile.is_file():
        return False
    match = APART.search(tree.read(makefile))
    return match is not None and re.search(match[1].replace("\\\\", "\\"), name) is not None


def target_of(name):
    """The folder whose files are one target: a room, a back end, a program."""
    parts = name.split("/")
    if parts[0] == "compiler" and parts[1] == "driver" and len(parts) > 3 and parts[2] == "pdf":
        return "compiler/driver/pdf"
    if parts[0] == "compiler" and parts[1] == "syntax":
        return "compiler/syntax/antlr" if parts[2] == "antlr" else "compiler/syntax"
    return "/".join(parts[:2])


def parameters(text):
    """The types of a list of parameters, without the names and the defaults."""
    types = []
    for one in re.split(r",(?![^<]*>)", text.strip()[1:-1]):
        one = re.sub(r"=.*", "", one).strip()
        one = re.sub(r"([\w>&*])\s+\w+$", r"\1", one)
        types.append(re.sub(r"\s+", " ", one))
    return "(" + ", ".join(types) + ")"


def helpers(code):
    """Yields (line, enclosing namespace, name) of what stands in unnamed namespaces, with a function's parameters."""
    scopes = []  # names of namespaces; None for the unnamed; False for another brace
    statement = 0
    at = 0
    while True:
        match = OPEN.search(code, at)
        semicolon = code.find(";", at)
        inside = bool(scopes) and scopes[-1] is None
        if semicolon != -1 and (match is None or semicolon < match.start()):
            if inside:
                text = re.sub(r"^\s*(?:#|namespace\b).*$", "", code[statement:semicolon], flags=re.M).strip()
                found = VARIABLE.search(text.split("=")[0].strip() + " =") if text and "(" not in text.split("=")[0] else None
                if found and found[1] not in NOT_NAMES and not text.startswith(("using", "template", "static_assert", "friend")):
                    yield cpp_text.line_of(code, semicolon), enclosing(scopes), found[1]
            at = statement = semicolon + 1
            continue
        if match is None:
            return
        if match.group() == "}":
            if scopes:
                scopes.pop()
            at = statement = match.end()
            continue
        if match.group() == "{":
            if inside:
                text = re.sub(r"^\s*#.*$", "", code[statement : match.start()], flags=re.M).strip()
                if (found := FUNCTION.search(text)) and found[1] not in NOT_NAMES and "=" not in text.split("(")[0]:
                    yield cpp_text.line_of(code, match.start()), enclosing(scopes), found[1] + parameters(found[2])
                elif found := TYPE.search(text):
                    yield cpp_text.line_of(code, match.start()), enclosing(scopes), found[1]
                elif (found := VARIABLE.search(text.split("=")[0].strip() + " =")) and "(" not in text.split("=")[0]:
                    if found[1] not in NOT_NAMES:
                        yield cpp_text.line_of(code, match.start()), enclosing(scopes), found[1]
            scopes.append(False)
            at = statement = match.end()
            continue
        scopes.append(match[1] if match[1] else None)
        at = statement = match.end()


def enclosing(scopes):
    return "::".join(scope for scope in scopes if scope)


def of_two_kinds(defined):
    """A function in one file that is a variable or a type in another."""
    plain = {key: places for key, places in defined.items() if "(" not in key[2]}
    for (target, namespace, helper), places in sorted(defined.items()):
        others = plain.get((target, namespace, helper.split("(")[0]), []) if "(" in helper else []
        for name, line in places:
            for other, at in others:
                if other != name:
                    yield f"{name}:{line}: {helper} is a function here and none in {other}"
                    yield f"{other}:{at}: {helper} is a function in {name} and none here"


def check(root, build):
    """Findings, one line of text each; build is not used."""
    defined = collections.defaultdict(list)
    types = type_names.places(root)
    shadows = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp",)):
        name = tree.shown(root, path)
        if path.name == "main.cpp" or compiled_apart(root, name):
            continue
        for line, namespace, helper in helpers(cpp_text.take_apart(tree.read(path)).code):
            if (namespace, helper) in types:
                shadows.append(f"{name}:{line}: {helper} is the name of a type as well: {types[namespace, helper][0]}")
            places = defined[target_of(name), namespace, helper]
            if not places or places[-1][0] != name:
                places.append((name, line))
    return shadows + [
        f"{name}:{line}: {helper} is a helper of {', '.join(other for other, _ in places if other != name)} as well"
        for (_, _, helper), places in sorted(defined.items())
        if len(places) > 1
        for name, line in places
    ] + list(of_two_kinds(defined))
