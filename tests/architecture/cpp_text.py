"""C++ text taken apart just far enough to tell code from comments and from string literals."""

import dataclasses
import re

TOKEN = re.compile(
    r"""(?P<comment>//(?:[^\n\\]|\\.|\\\n)*|/\*.*?\*/)
      | (?P<raw>(?:u8|u|U|L)?R"(?P<mark>[^()\\\s]{0,16})\((?P<raw_text>.*?)\)(?P=mark)")
      | (?P<string>(?:u8|u|U|L)?"(?P<text>(?:[^"\\\n]|\\.)*)")
      | (?P<word>[A-Za-z_0-9](?:'?[A-Za-z_0-9])*)
      | (?P<character>'(?:[^'\\\n]|\\.)+')""",
    re.DOTALL | re.VERBOSE,
)
INCLUDE = re.compile(r'^[ \t]*\#[ \t]*include[ \t]*(?:<([^>\n]+)>|"([^"\n]+)")', re.MULTILINE)


@dataclasses.dataclass(frozen=True)
class Include:
    """One include directive: its line from 1, the path as written, whether it stands in <>."""

    line: int
    path: str
    angled: bool


@dataclasses.dataclass(frozen=True)
class CppText:
    """code has the lines of the file, with comments, string texts and include directives blanked."""

    code: str
    strings: list  # of (line from 1, text between the quotes as written)
    includes: list  # of Include


def take_apart(text):
    """Splits the text of one C++ file; never fails, since the compiler judges what is no C++."""
    strings = []
    uncommented = []
    code = []
    at = 0
    for token in TOKEN.finditer(text):
        between = text[at : token.start()]
        whole = token.group()
        blank = re.sub(r"[^\n]", " ", whole)
        uncommented += [between, blank if token["comment"] else whole]
        code += [between, whole if token["word"] else blank]
        at = token.end()
        literal = token["raw_text"] if token["raw"] else token["text"] if token["string"] else None
        if literal is not None:
            strings.append((line_of(text, token.start()), literal))
    uncommented.append(text[at:])
    code.append(text[at:])

    plain = "".join(uncommented)
    includes = []
    directive_lines = set()
    for match in INCLUDE.finditer(plain):
        line = line_of(plain, match.end())
        directive_lines.add(line)
        includes.append(Include(line, match[1] or match[2], match[1] is not None))
    lines = "".join(code).split("\n")
    lines = ["" if number in directive_lines else line for number, line in enumerate(lines, 1)]
    strings = [(line, literal) for line, literal in strings if line not in directive_lines]
    return CppText("\n".join(lines), strings, includes)


def line_of(text, offset):
    """The line, from 1, of an offset."""
    return text.count("\n", 0, offset) + 1
