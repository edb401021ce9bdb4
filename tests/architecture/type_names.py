"""A type of a header has a name of its own in the whole project.

Most of it is one namespace: two types of one name link into one program without a word, and the one is then built
with the parts of the other.
"""

import re

import cpp_text
import tree

NAME = "one name, one type"

# Not a declaration alone, which ends in a semicolon.
TYPE = re.compile(r"^(?:struct|class|enum class|enum struct|union) (\w+)(?: final)?(?: : [^;{]*)?\s*\{", re.MULTILINE)


NAMESPACE = re.compile(r"^namespace ([\w:]+) \{", re.MULTILINE)


def places(root):
    """Where each type of a header is defined: (namespace, name) to a list of FILE:LINE."""
    found = {}
    for path in tree.files(root, ["compiler", "plugins"], (".hpp",)):
        text = tree.read(path)
        for match in TYPE.finditer(text):
            before = NAMESPACE.findall(text, 0, match.start())
            place = f"{tree.shown(root, path)}:{cpp_text.line_of(text, match.start())}"
            found.setdefault((before[-1] if before else "", match[1]), []).append(place)
    return found


def check(root, build):
    """Findings, one line of text each; build is not used."""
    return [
        f"{place}: {namespace}::{name} is the name of another type as well: {', '.join(all_of_it)}"
        for (namespace, name), all_of_it in sorted(places(root).items())
        if len(all_of_it) > 1
        for place in all_of_it
    ]
