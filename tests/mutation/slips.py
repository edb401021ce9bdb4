"""The slips: each takes a line of a rig file and gives the line as a hurried hand might have written it."""

import dataclasses
import os
import re

BOATS = ["pellimoor.rig", "grisolde.rig", "oddnys-wager.rig", "smidgeon.rig"]
LIBRARIES = {"parts/demo-hardware.rig": "pellimoor.rig", "parts/demo-gaff-hardware.rig": "oddnys-wager.rig",
             "parts/demo-trailer-hardware.rig": "smidgeon.rig", "parts/demo-lines.rig": "grisolde.rig"}
PER_FILE = 2  # variants of one sort in one file at most, spread over it


@dataclasses.dataclass(frozen=True)
class Variant:
    """One file with one slip. lines: where it may be found; places: how many labels of the finding count."""

    sort: str
    root: str
    file: str
    text: str
    lines: frozenset
    slugs: frozenset
    what: str
    places: int = 1


@dataclasses.dataclass(frozen=True)
class Slip:
    """sort, what a line must look like, what becomes of it, which findings name the cause.

    next_line: a sign is missing at the end, so the next line may be blamed. anywhere: two places disagree, or something is not
    there, so that any line of the file that speaks of it may come first. line_above: a line of one brace is gone, and the place where
    it belongs is the end of the line above. files: "libraries" leaves the boats out.
    """

    sort: str
    line: str
    becomes: object  # a template of re, or a function of the match
    slugs: tuple
    next_line: bool = False
    anywhere: bool = False
    line_above: bool = False
    files: str = "both"


NAMES = ("unknown-name", "unknown-property", "unknown-kind", "unknown-setting", "unknown-choice", "unknown-end")

# A number of a length behind a property, with its unit.
LENGTH = r"^(  (?:length|shortest|longest|beam|displacement|partners|rise): [0-9._]+) (mm|m|kg)\b(.*)$"

SLIPS = [
    Slip("unit left out", LENGTH, r"\1\3", ("missing-unit", "wrong-dimension")),
    Slip("unit misspelt", LENGTH, r"\1 \2r\3", ("unknown-unit",)),
    Slip("another unit", r"^(  (?:length|shortest|longest|beam): [0-9._]+) (?:mm|m)\b(.*)$", r"\1 kg\2", ("wrong-dimension", "mass-for-length")),
    Slip("kg for a force", r"^(  break-load: [0-9._]+) kN(.*)$", r"\1 kg\2", ("mass-for-force",)),
    Slip("decimal comma", r"^(  (?:length-overall|beam|waterline-length|mainsail-hoist|sheer-at-mast|foretriangle-height): \d+)\.(\d+ m .*)$", r"\1,\2", ("decimal-comma",)),
    Slip("thousands with a blank", r"^(.*[ (]\d+)_(\d{3} (?:mm|kg)\b.*)$", r"\1 \2", ("spaced-number",)),
    Slip("unit of a place left out", r"^(  [a-z-]+ \".*\": \([-0-9., ]+\)) m( .*)$", r"\1\2", ("position-not-lengths", "missing-unit")),
    Slip("a number of a place left out", r"^(  [a-z-]+ \".*\": \([-0-9.]+, )[-0-9.]+, ([-0-9.]+\) m .*)$", r"\1\2", ("place-needs-three-numbers",)),
    Slip("comma of a place left out", r"^(  [a-z-]+ \".*\": \([-0-9.]+),( [-0-9.]+, [-0-9.]+\) m .*)$", r"\1\2", ("place-needs-three-numbers", "malformed-number", "spaced-number", "left-over")),
    Slip("bracket not closed", r"^(  [a-z-]+ \".*\": \([-0-9., ]+)\)( m .*)$", r"\1\2", ("missing-closing-parenthesis",)),
    Slip("opening brace left out", r"^(stay [a-z0-9-]+ \".*\") \{$", r"\1", ("missing-opening-brace", "missing-block", "heading-unreadable"), next_line=True),
    Slip("brace too many", r"^(  line: [a-z0-9-]+)$", r"\1 }", ("extra-closing-brace", "left-over", "property-outside-block", "missing-opening-brace")),
    Slip("quote not closed", r"^(  construction: \"[^\"]+)\"$", r"\1", ("unclosed-text",)),
    Slip("quotes left out", r"^(  construction: )\"([^\"]+)\"$", r"\1\2", ("text-wanted", "left-over", "malformed-number", "quotes-missing")),
    Slip("colon left out", r"^(  (?:path|line|root|tip|length|size))(?:):( .*)$", r"\1\2", ("missing-colon",)),
    Slip("equals for a colon", r"^(  (?:path|line|root|tip|length|size)): (.*)$", r"\1 = \2", ("equals-for-colon",)),
    Slip("arrow in a path", r"^(  path: [a-z0-9-]+) > (.*)$", r"\1 -> \2", ("arrow-in-path",)),
    Slip("comma in a path", r"^(  path: [a-z0-9-]+) > ([a-z0-9-]+)$", r"\1, \2", ("path-too-short", "path-and-list")),
    Slip("point of a path misspelt", r"^(  path: [a-z0-9-]+[a-z])([a-z]) > (.*)$", r"\1 > \3", ("unknown-name",)),
    Slip("part misspelt", r"^(    [a-z]+-)([a-z])([a-z0-9-]*)( \(.*\))?$", r"\1\3\4", ("unknown-name",)),
    Slip("kind misspelt", r"^(stay|rope|wire|toggle|terminal|turnbuckle|thimble|spreader|points|link)(.)?( .*\{)$", r"\1e\3", ("unknown-kind",)),
    Slip("property misspelt", r"^(  )(path|line|length|shortest|longest|root|construction|beam|size)(: .*)$", r"\1\2s\3", ("unknown-property",)),
    Slip("setting misspelt", r"^(    [a-z0-9-]+ \()(splice|open|gap|hole|length)(: .*\))$", r"\1\2d\3", ("unknown-setting",)),
    Slip("two words turned round", r"^(  path: [a-z0-9-]+ > )([a-z0-9-]+) (free|clamped)( > .*)$", r"\1\3 \2\4", ("unknown-name", "left-over", "missing-value", "path-and-list")),
    Slip("how it passes left out", r"^(  path: [a-z0-9-]+ > [a-z0-9-]+) (?:free|clamped)( > .*)$", r"\1\2", ("passage-not-stated",)),
    Slip("mirrored left out", r"^(  (?:cap-tang|plate-a|lower-tang|cap-plate|hounds|channel-1|upper-tang|lower-plate|quarter) \".*\) m) mirrored( .*)$", r"\1\2", ("point-on-other-side", "point-not-mirrored"), anywhere=True),
    Slip("setting of an adjuster left out", r"^(    (?:turnbuckle|lashing|lanyard|tackle-[0-9]|runner-tackle|quick-lever|hole-plate)[a-z0-9-]*) \(.*\)$", r"\1", ("adjuster-not-set",)),
    Slip("wire or rope of a stay left out", r"^  line: ([a-z0-9-]+)$", "", ("property-missing", "name-missing"), anywhere=True),
    Slip("required property left out", r"^  (?:length|shortest|longest): .*$", "", ("property-missing",), anywhere=True, files="libraries"),
    Slip("side misspelt", r"^(  sides: port, )starboard$", r"\1stbd", ("unknown-choice",)),
    Slip("capital in a name", r"^(stay|rope|wire|toggle|terminal) ([a-z])([a-z0-9-]+)( .*\{)$", lambda m: f"{m[1]} {m[2].upper()}{m[3]}{m[4]}", ("capital-in-name",)),
    Slip("underscore in a name", r"^(stay|rope|wire|toggle|terminal|thimble) ([a-z]+)-([a-z0-9-]+)( .*\{)$", r"\1 \2_\3\4", ("malformed-name",)),
    Slip("line doubled", r"^(  (?:path|line|length|shortest|size): .*)$", r"\1\n\1", ("property-twice",), next_line=True),
    Slip("part doubled in the stack", r"^(    line)$", r"\1\n\1", ("two-free-lines",), next_line=True),
    Slip("two lines joined", r"^(  construction: \".*\")\n(  (?:grade|size): .*)$", r"\1 \2", ("left-over",)),
    Slip("source misspelt", r"^(  (?:length|shortest|longest): [0-9._]+ mm dra)(wn.*)$", r"\1a\2", ("left-over", "unknown-name")),
    Slip("size without quotes", r"^(  size: )\"(.*)\"$", r"\1\2", ("size-not-quoted",)),
    Slip("use of a file that is not there", r"^(use \"parts/demo)(-.*\")$", r"\1s\2", ("file-not-found",)),
    Slip("language line left out", r"^language 1$", "", ("language-line-missing",), next_line=True),
    Slip("semicolon at the end", r"^(  (?:path|line|length|size): .*)$", r"\1;", ("semicolon",)),
    Slip("slashes for a remark", r"^# (.*)$", r"// \1", ("slash-comment",)),
    Slip("bracket too many", r"^(  [a-z-]+ \".*\": \([-0-9., ]+\))( m .*)$", r"\1)\2", ("extra-closing-parenthesis",)),
    Slip("square bracket closes a round one", r"^(  [a-z-]+ \".*\": \([-0-9., ]+)\)( m .*)$", r"\1]\2", ("wrong-closing-parenthesis",)),
    Slip("closing brace of a stack left out", r"^  \}\n", "", ("missing-closing-brace",), line_above=True),
    Slip("closing brace left out", r"^\}\n", "", ("missing-closing-brace",), line_above=True),
    Slip("line of a stack left out", r"^    line$", "", ("line-missing", "no-free-line"), anywhere=True),
    Slip("what something is of misspelt", r"^(  position of [a-z-]*)[a-z]((?:\.[a-z]+)? \{)$", r"\1\2", ("unknown-name",)),
    Slip("spar of points misspelt", r"^(points on [a-z]+)[a-z]( \{)$", r"\1\2", ("unknown-name",)),
    Slip("degrees for a length", r"^(  (?:length|shortest|longest|beam): [0-9._]+) (?:mm|m)\b(.*)$", r"\1 deg\2", ("wrong-dimension",)),
    # The second one is on the lines below the first, so either is where it may be found.
    Slip("declaration doubled", r"^((?:link|thimble|tang|chainplate|rope|spreader|stay) [a-z0-9-]+ .*\{\n(?:  .*\n)*\})$", r"\1\n\n\1", ("duplicate-name",), anywhere=True),
    Slip("boat doubled", r"^(boat .*\{\n(?:  .*\n)*\})$", r"\1\n\n\1", ("boat-twice", "duplicate-name"), anywhere=True),
    Slip("reference to a spreader's point misspelt", r"^(  (?:root|tip): [a-z-]*)[a-z]$", r"\1", ("unknown-name",)),
    Slip("capital in a property", r"^  ([a-z])([a-z-]+: .* mm .*)$", lambda m: f"  {m[1].upper()}{m[2]}", ("unknown-property", "capital-in-name")),
    Slip("plus or minus of a place behind its number", r"^(  [a-z-]+ \".*\": \()(-)([0-9.]+)(, .*)$", r"\1\3\2\4", ("missing-value", "malformed-number", "place-needs-three-numbers")),
    Slip("comma between settings left out", r"^(  (?:upper|lower): [a-z-]+ \([^,\n]*),( .*\))$", r"\1\2", ("missing-comma",)),
    Slip("bracket of settings not closed", r"^(    [a-z0-9-]+ \([a-z]+: [^()\n]*)\)$", r"\1", ("missing-closing-parenthesis",)),
    Slip("bracket of settings not opened", r"^(    [a-z0-9-]+) \(([a-z]+: [^()\n]*\))$", r"\1 \2", ("extra-closing-parenthesis", "missing-opening-parenthesis")),
    Slip("colon of a setting left out", r"^(    [a-z0-9-]+ \([a-z]+):( [^()\n]*\))$", r"\1\2", ("missing-colon",)),
    Slip("unit of a setting left out", r"^(    [a-z0-9-]+ \((?:gap|length): [0-9_]+) mm(.*\))$", r"\1\2", ("missing-unit",)),
    Slip("percent left out", r"^(    [a-z0-9-]+ \(open: [0-9]+) %\)$", r"\1)", ("missing-unit", "wrong-dimension")),
    Slip("x left out", r"^(    )([a-z]+-[a-z0-9-]+)$", r"\1 2 \2", ("missing-times",)),
]


def spread(found, count):
    """At most count of them, spread evenly: the same each time."""
    if len(found) <= count:
        return found
    return [found[i * len(found) // count] for i in range(count)]


def variants_of(slip, root, name, text):
    """The variants of one sort in one file."""
    found = list(re.finditer(slip.line, text, re.MULTILINE))
    for match in spread(found, PER_FILE):
        changed = text[: match.start()] + (slip.becomes(match) if callable(slip.becomes) else match.expand(slip.becomes)) + text[match.end() :]
        line = text.count("\n", 0, match.start()) + 1
        lines = {line}
        if slip.line_above:
            lines.add(line - 1)
        if slip.next_line:
            lines |= {line + 1, line + 2}
        if slip.anywhere:  # the declaration that the line belongs to, or any that uses it
            lines = set(range(1, text.count("\n") + 2))
        yield Variant(slip.sort, root, name, changed, frozenset(lines), frozenset(slip.slugs),
                      match.group(0).strip().split("\n")[0][:60], 3 if slip.anywhere else 1)


def all_variants(examples):
    """Every variant, in one order."""
    result = []
    files = [(boat, boat) for boat in BOATS] + [(root, name) for name, root in LIBRARIES.items()]
    for slip in SLIPS:
        for root, name in files:
            if slip.files == "libraries" and name in BOATS:
                continue
            with open(os.path.join(examples, name), encoding="utf-8") as file:
                result += variants_of(slip, root, name, file.read())
    return result
