"""Every page of docs is reached from README.md, and every link leads to a file and a heading that are there."""

import pathlib
import re
import urllib.parse

NAME = "pages are reached and links lead somewhere"
FRONT = ["README.md"]
# Pages are read by people; data beside them is named by a page too.
MUST_BE_REACHED = (".md", ".json", ".svg")
FENCED = re.compile(r"^```.*?^```\s*$", re.MULTILINE | re.DOTALL)
CODE = re.compile(r"`[^`\n]*`")
LINK = re.compile(r"\[(?:[^\[\]]|\[[^\[\]]*\])*\]\(([^)\s]+)\)")
HEADING = re.compile(r"^#{1,6}\s+(.+?)\s*$", re.MULTILINE)
OUTSIDE = re.compile(r"^[a-z]+:")


def anchors(text):
    """The anchors of a page's headings, as they are made by those who show Markdown on the web."""
    seen = {}
    for heading in HEADING.findall(FENCED.sub("", text)):
        words = re.sub(r"\[([^\]]*)\]\([^)]*\)", r"\1", heading).replace("`", "").lower()
        words = re.sub(r"[^\w\- ]", "", words).replace(" ", "-")
        count = seen.get(words, 0)
        seen[words] = count + 1
        yield words if count == 0 else f"{words}-{count}"


def links(text):
    """Each link with the line that it stands in."""
    blanked = FENCED.sub(lambda block: re.sub(r"[^\n]", " ", block.group()), text)
    blanked = CODE.sub(lambda code: " " * len(code.group()), blanked)
    for found in LINK.finditer(blanked):
        yield found.group(1), blanked.count("\n", 0, found.start()) + 1


def check(root, build):
    """Findings, one line of text each; build is not used."""
    if not (root / "docs").is_dir():
        return []
    findings = []
    texts = {}
    reached = set()

    def text_of(path):
        if path not in texts:
            texts[path] = path.read_text(encoding="utf-8")
        return texts[path]

    def shown(path):
        return path.relative_to(root).as_posix()

    def look_at(path):
        for target, line in links(text_of(path)):
            if OUTSIDE.match(target):
                continue
            file, _, anchor = urllib.parse.unquote(target).partition("#")
            at = pathlib.Path(path.parent, file).resolve() if file else path
            if at.is_dir():
                at = at / "README.md"
                if not at.is_file() and not at.is_relative_to(root / "docs"):
                    continue  # a folder of the source, to look through
            if not at.is_file() or not at.is_relative_to(root):
                findings.append(f"{shown(path)}:{line}: there is no {target}")
                continue
            if anchor and at.suffix == ".md" and anchor not in set(anchors(text_of(at))):
                findings.append(f"{shown(path)}:{line}: {shown(at)} has no heading #{anchor}")
            yield at

    waiting = [root / name for name in FRONT if (root / name).is_file()]
    reached.update(waiting)
    while waiting:
        for at in look_at(waiting.pop()):
            if at not in reached:
                reached.add(at)
                if at.suffix == ".md":
                    waiting.append(at)
    for path in sorted((root / "docs").rglob("*")):
        if path.suffix in MUST_BE_REACHED and path not in reached:
            findings.append(f"{shown(path)}: no page that is reached from README.md leads here")
    for path in [*sorted((root / "docs").rglob("*.md")), root / "DEVELOPERS.md"]:
        if path.is_file() and path not in reached:  # its links are looked at all the same
            list(look_at(path))
    return sorted(findings)
