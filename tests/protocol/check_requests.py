#!/usr/bin/env python3
"""Whether what the compiler says to programs outside today is what it said when version 1 of it was frozen.

    check_requests.py SHEERPOLE FOLDER

Each request in version_1/ carries the texts of its rig. They are built again, with a back end of that time that gives
back what it was sent, and the request of today must be as the schema of that time says, and have every member that the
frozen one has, of the same kind. What a member says may change: a finding gets clearer words, a check comes to more. A
member that is new must be in the schema of today.
FOLDER is for files of our own.
"""

import json
import pathlib
import subprocess
import sys

import jsonschema

HERE = pathlib.Path(__file__).resolve().parent
FROZEN = HERE / "version_1"
TODAY = HERE.parent.parent / "docs" / "backends"
KINDS = {dict: "object", list: "list", str: "text", bool: "yes or no", int: "number", float: "number", type(None): "null"}


def main():
    sheerpole, folder = sys.argv[1], pathlib.Path(sys.argv[2])
    faults = [f"{name}: {fault}" for name in ("request", "describe-reply", "generate-reply") for fault in weaker(name)]
    requests = sorted(FROZEN.glob("*.request.json"))
    for path in requests:
        frozen = json.loads(path.read_text(encoding="utf-8"))
        again = ask_again(sheerpole, folder / path.stem, frozen)
        for words, request, schema in (
            ("the frozen request by the schema of that time", frozen, FROZEN),
            ("the frozen request by the schema of today", frozen, TODAY),
            ("the request of today by the schema of that time", again, FROZEN),
            ("the request of today by the schema of today", again, TODAY),
        ):
            faults += [f"{path.name}: {words}: {fault}" for fault in unlike(request, schema / "request.schema.json")]
        faults += [f"{path.name}: not in the schema of today: {fault}" for fault in unlike(again, TODAY / "request.schema.json", closed)]
        now = members(again)
        for place, kinds in members(frozen).items():
            if not kinds & now.get(place, set()) and not in_empty_list(place, now):
                faults.append(f"{path.name}: {place} was {' or '.join(sorted(kinds))} and is no more")
    print("\n".join([*faults, f"{len(requests)} requests, {len(faults)} faults"]))
    return 1 if faults or not requests else 0


def ask_again(sheerpole, folder, frozen):
    """The request that the compiler makes today of the rig of a frozen one."""
    origin = frozen["origin"]
    for file in origin["files"]:
        path = folder / "rig" / file["name"]
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(file["text"], encoding="utf-8", newline="")
    command = [sheerpole, "build", folder / "rig" / origin["rig"], "--into", folder / "out", "--only", "recorder"]
    command += ["--outside", FROZEN / "back_ends" / "recorder.py", "--paper", frozen["paper"]["name"]]
    command += [word for setting in origin["settings"] for word in ("--set", setting)]
    command += ["--shop", origin["shop"]] if origin["shop"] else []
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return json.loads((folder / "out" / "request.json").read_text(encoding="utf-8"))


def unlike(document, schema, change=lambda schema: schema):
    """What the schema finds wrong with the document, a few of it."""
    validator = jsonschema.Draft7Validator(change(json.loads(schema.read_text(encoding="utf-8"))))
    return [f"{fault.json_path}: {fault.message[:200]}" for _, fault in zip(range(5), validator.iter_errors(document))]


def closed(schema):
    """The schema with no room for members that it does not name."""
    if isinstance(schema, list):
        return [closed(inside) for inside in schema]
    if not isinstance(schema, dict):
        return schema
    result = {key: closed(inside) for key, inside in schema.items()}
    if schema.get("type") == "object":
        result["additionalProperties"] = False
    return result


def in_empty_list(place, now):
    """Whether the place is in a list that has nothing in it today: there may be nothing left to find."""
    lists = [place[:end] for end in range(len(place)) if place.startswith("[]", end)]
    return any(outer in now and outer + "[]" not in now for outer in lists)


def members(value, place="$", found=None):
    """Every place of a document with the kinds of what stands there; items of a list are one place."""
    found = {} if found is None else found
    found.setdefault(place, set()).add(KINDS[type(value)])
    if isinstance(value, dict):
        for key, inside in value.items():
            members(inside, f"{place}.{key}", found)
    elif isinstance(value, list):
        for inside in value:
            members(inside, f"{place}[]", found)
    return found


def weaker(name):
    """Members that the schema of that time knows and that of today does not; what an answer must have besides."""
    frozen, today = (json.loads((folder / f"{name}.schema.json").read_text(encoding="utf-8")) for folder in (FROZEN, TODAY))
    properties = {place: kind for place, kind in members(today).items()}
    faults = [f"the schema has lost {place}" for place in members(frozen) if place not in properties]
    if name != "request":
        demands = [set(demand) for demand in (today.get("required", []), frozen.get("required", []))]
        faults += [f"the schema asks for {more}" for more in sorted(demands[0] - demands[1])]
    return faults


if __name__ == "__main__":
    sys.exit(main())
