#!/usr/bin/env python3
"""Whether all JSON that the command line writes is as its schema says (docs/json).

    check_json.py SHEERPOLE FOLDER RIG...

Every table, listing and paper of each rig is asked for as JSON. What comes must be as its schema says, with no member that the
schema does not name. A member that is a number says in its name what it is measured in, and a length that may be X is
spelled in one way. FOLDER is for files of our own.
"""

import csv
import io
import json
import pathlib
import re
import subprocess
import sys
import warnings

import jsonschema

DOCS = pathlib.Path(__file__).resolve().parent.parent.parent / "docs"
SCHEMAS = sorted([*DOCS.glob("json/*.schema.json"), *DOCS.glob("backends/*.schema.json"), *DOCS.glob("service/*.schema.json")])
# What a number may be called: with its unit at the end, or a word that is one.
MEASURED_IN = re.compile(
    r"(_mm|kilograms_before|_deg|_kn|_d|_si|_kg|_turns|_newtons|_kilograms|_kelvin|_seconds|_per_[a-z_]+)$"
    r"|^(newtons|kilograms|kelvin|si)$"
)
# A share of one or a factor, which has no unit, and counts that may have a fraction; the description says so.
PLAIN_NUMBERS = {
    "value", "share", "share_of_break", "share_of_take_up", "open", "stiffness", "strength", "mass", "coverage_factor",
    "degrees_of_freedom", "moves", "reaches", "bound", "adjuster_reaches",
    "least", "most", "turns",  # of an adjuster: turns of its screw, or holes
}  # fmt: skip


def main():
    sheerpole, folder, rigs = sys.argv[1], pathlib.Path(sys.argv[2]), [pathlib.Path(name) for name in sys.argv[3:]]
    faults = [fault for schema in SCHEMAS for fault in of_schema(schema)]
    tables = [line.split()[0] for line in run(sheerpole, "list", "tables").splitlines()[2:]]
    words = [word for word in re.search(r"one of: ([a-z, -]+)", spaced(run(sheerpole, "list", "--help"))).group(1).strip().split(", ")]
    checked = Checked(faults)
    for word in words:
        text = run(sheerpole, "list", word, "--form", "json")
        checked.one(f"list {word}", text, "completion" if word == "completion" else "table")
    for rig in rigs:
        checked.one(f"check {rig.name}", run(sheerpole, "check", rig, "--form", "json"), "findings")
        for table in tables:
            text = run(sheerpole, "show", table, rig, "--form", "json")
            if text:
                checked.one(f"show {table} {rig.name}", text, "table")
                faults += as_in_csv(f"show {table} {rig.name}", json.loads(text), run(sheerpole, "show", table, rig, "--form", "csv"))
        into = folder / rig.stem
        run(sheerpole, "build", rig, "--into", into, "--only", "cut-list,echo,findings")
        for name in ("cut-list", "echo", "findings"):
            if (into / f"{name}.json").exists():
                checked.one(f"{name}.json of {rig.name}", (into / f"{name}.json").read_text(encoding="utf-8"), name)
        faults += totals_alike(rig.name, into)
        run(sheerpole, "seal", rig, "--into", folder / f"{rig.stem}-sealed", "--only", "cut-list")
        if (folder / f"{rig.stem}-sealed" / "seal.json").exists():
            checked.one(f"seal of {rig.name}", (folder / f"{rig.stem}-sealed" / "seal.json").read_text(encoding="utf-8"), "seal")
    for before, now in zip(rigs, rigs[1:]):
        text = run(sheerpole, "changes", before, now, "--form", "json")
        if text:
            checked.one(f"changes {before.name} {now.name}", text, "change-sheet")
    checked.one("fleet", run(sheerpole, "fleet", *rigs, folder / "no.rig", "--form", "json"), "fleet")
    checked.one("check of several", run(sheerpole, "check", *rigs, "--form", "json"), "fleet")
    checked.one("check --form code-quality", run(sheerpole, "check", *rigs, "--form", "code-quality"), "code-quality")
    checked.one("find", run(sheerpole, "find", "toggle", *rigs, "--form", "json"), "found")
    lacking = {path.name.removesuffix(".schema.json") for path in DOCS.glob("json/*.schema.json")} - checked.seen
    faults += [f"nothing was written by the schema {name}" for name in sorted(lacking)]
    print("\n".join([*faults, f"{checked.count} documents, {len(faults)} faults"]))
    return 1 if faults or not checked.count else 0


def run(*command):
    """What a command prints; findings are no failure here, a fault of the program is."""
    done = subprocess.run([str(word) for word in command], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, check=False)
    if done.returncode not in (0, 1):
        sys.exit(f"{' '.join(map(str, command))} ended with {done.returncode}")
    return done.stdout


def spaced(text):
    return re.sub(r"\s+", " ", text)


class Checked:
    """Documents held against their schemas, in which there is no room for a member that is not named."""

    def __init__(self, faults):
        self.faults = faults
        self.validators = {}
        self.seen = set()
        self.count = 0

    def one(self, what, text, name):
        if name not in self.validators:
            path = DOCS / "json" / f"{name}.schema.json"
            schema = closed(json.loads(path.read_text(encoding="utf-8")))
            with warnings.catch_warnings():  # it does what is needed in the version of Debian 12 and in later ones
                warnings.simplefilter("ignore", DeprecationWarning)
                self.validators[name] = jsonschema.Draft7Validator(schema, resolver=jsonschema.RefResolver(path.as_uri(), schema))
        self.count += 1
        self.seen.add(name)
        try:
            document = json.loads(text)
        except ValueError as error:
            self.faults.append(f"{what}: no JSON: {error}")
            return
        for _, fault in zip(range(5), self.validators[name].iter_errors(document)):
            self.faults.append(f"{what}: {fault.json_path}: {fault.message[:200]}")


def closed(schema):
    """The schema with no room for members that it does not name; where it names none, or says so itself, it stays as it is."""
    if isinstance(schema, list):
        return [closed(inside) for inside in schema]
    if not isinstance(schema, dict):
        return schema
    # Alternatives of one value are joined, and each names a part of the members.
    result = {key: inside if key == "allOf" else closed(inside) for key, inside in schema.items()}
    if schema.get("type") == "object" and "properties" in schema:
        result.setdefault("additionalProperties", False)
    return result


def of_schema(path):
    """What is wrong with a schema: with itself, with what its numbers are called, with how a length that may be X is spelled."""
    schema = json.loads(path.read_text(encoding="utf-8"))
    jsonschema.Draft7Validator.check_schema(schema)
    faults = []

    def walk(inside, named=False):
        """`named`: what stands here is said by the name of what holds it, as in `slack_mm: {now, with}`."""
        if isinstance(inside, list):
            for each in inside:
                walk(each)
        elif isinstance(inside, dict):
            members = inside.get("properties", {})
            for name, member in members.items():
                kinds = member.get("type", []) if isinstance(member, dict) else []
                kinds = [kinds] if isinstance(kinds, str) else kinds
                if "number" in kinds and not named and not MEASURED_IN.search(name) and name not in PLAIN_NUMBERS:
                    faults.append(f"{path.name}: {name} does not say what it is measured in")
            for older, spelled in (("plus_x", "unknown"), ("x_of", "unknown"), ("plus_mm", "known_mm"), ("was_plus_x", "was"), ("is_plus_x", "is")):
                if older in members and spelled not in members:
                    faults.append(f"{path.name}: {older} without {spelled}")
            for key, each in inside.items():
                if key == "properties":
                    for name, member in each.items():
                        walk(member, bool(MEASURED_IN.search(name)))
                else:
                    walk(each)

    walk(schema)
    return faults


def as_in_csv(what, document, text):
    """Whether a table says as JSON what it says as CSV: the same rows, and of a number the same number."""
    rows = list(csv.reader(io.StringIO(text)))
    names = [column["name"] for column in document["columns"]]
    if [column["heading"] for column in document["columns"]] != rows[0] or len(document["rows"]) != len(rows) - 1:
        return [f"{what}: another table than as CSV"]
    faults = []
    for row, cells in zip(document["rows"], rows[1:]):
        if list(row) != names:
            faults.append(f"{what}: members {list(row)} and no others were to be {names}")
        for value, cell in zip(row.values(), cells):
            if not same(value, cell):
                faults.append(f"{what}: {json.dumps(value)} is {cell} as CSV")
    return faults[:5]


def same(value, cell):
    """What a spreadsheet would take for a formula has an apostrophe before it in CSV."""
    cell = cell.removeprefix("'")
    if value is None:
        return cell == ""
    if isinstance(value, str):
        return value.removeprefix("'") == cell
    if isinstance(value, dict) and "unit" in value:
        return cell.endswith(" " + value["unit"]) and float(cell.split()[0]) == value["value"]
    if isinstance(value, dict):
        found = re.fullmatch(r"X(\([^)]*\))?(?: ([+-]) (.*))?|([+-]?[\d.]+)", cell)
        known = float(found[4]) if found[4] else float(found[3] or 0) * (-1 if found[2] == "-" else 1)
        return value == {"unknown": found[4] is None, "known_mm": known}
    return float(re.match(r"[+-]?[\d.]+", cell).group()) == value


def totals_alike(what, into):
    """Whether a back end of another author is told the very totals that the cut list prints."""
    if not (into / "echo.json").exists():
        return []
    stays = json.loads((into / "echo.json").read_text(encoding="utf-8"))["derived"]["stays"]
    listed = {piece["name"]: piece for piece in json.loads((into / "cut-list.json").read_text(encoding="utf-8"))["pieces"]}
    faults = []
    for piece in (piece for stay in stays for piece in stay["pieces"]):
        printed, on_list = piece["printed"], listed[piece["name"]]
        if [printed["body"], printed["cut"]] != [on_list["body"], on_list["cut"]]:
            faults.append(f"{what}: {piece['name']} is printed as {printed['cut']} and listed as {on_list['cut']}")
        rows = [[row["printed_mm"] for row in section["rows"]] for section in on_list["sum"]]
        if [[row["printed_mm"] for row in section["rows"]] for section in printed["sum"]] != rows:
            faults.append(f"{what}: the rows of {piece['name']} are not those of the cut list")
        total = 0
        for section in printed["sum"]:  # each upon the one before, in whole tenths
            total += sum(round(10 * row["printed_mm"]) for row in section["rows"])
            if round(10 * section["printed_total_mm"]) != total:
                faults.append(f"{what}: {section['name']} of {piece['name']} is not the sum of its rows")
        for mark in printed["marks"]:
            ends = mark["from_aloft"], mark["from_below"]
            both = sum(round(10 * end["known_mm"]) for end in ends)
            cut = printed["sum"][-1]["printed_total_mm"]
            if any(end["unknown"] for end in ends) == printed["cut"]["unknown"] and both != round(10 * cut):
                faults.append(f"{what}: mark {mark['name']} of {piece['name']}: {both} tenths in all, cut {cut}")
    return faults


if __name__ == "__main__":
    sys.exit(main())
