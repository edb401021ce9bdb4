#!/usr/bin/env python3
"""Whether the service answers as docs/service says.

    check_service.py SHEERPOLE EXAMPLES

Each boat of the examples is asked everything that can be asked, at many places and with every way of counting, through
`sheerpole editor` (its request sheerpole/ask). Every request is one by request.schema.json and every answer one by
answer.schema.json, and what every answer says of places is held against the text itself: bytes, UTF-16 units and lines name one
place.
"""

import json
import pathlib
import subprocess
import sys

import jsonschema

SCHEMAS = pathlib.Path(__file__).resolve().parent.parent.parent / "docs" / "service"
AT_PLACE = ["complete", "hover", "definition", "references"]
OF_FILE = ["format", "symbols", "fold", "inlay", "tokens"]
OF_BOAT = ["findings", "actions", "numbers", "declarations", "stays", "papers"]
EVERY = 211  # bytes between two places that are asked about


class Service:
    def __init__(self, program):
        self.process = subprocess.Popen([program, "editor"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        self.count = 0
        self.say("initialize", {"capabilities": {}})

    def say(self, method, params):
        self.count += 1
        content = json.dumps({"jsonrpc": "2.0", "id": self.count, "method": method, "params": params}).encode("utf-8")
        self.process.stdin.write(b"Content-Length: %d\r\n\r\n%s" % (len(content), content))
        self.process.stdin.flush()
        while True:
            length = int(self.process.stdout.readline().split(b":")[1])
            self.process.stdout.readline()
            message = json.loads(self.process.stdout.read(length))
            if message.get("id") == self.count:
                return message["result"]


def validator(name):
    schema = json.loads((SCHEMAS / f"{name}.schema.json").read_text(encoding="utf-8"))
    jsonschema.Draft7Validator.check_schema(schema)
    return jsonschema.Draft7Validator(schema)


def places_in(value):
    """All places of an answer."""
    if isinstance(value, dict):
        if {"file", "begin", "end"} <= value.keys():
            yield value
        for each in value.values():
            yield from places_in(each)
    elif isinstance(value, list):
        for each in value:
            yield from places_in(each)


def spot(text, byte):
    """The place of a byte, by Python's own way of reading UTF-8 and writing UTF-16."""
    before = text[:byte].decode("utf-8")
    line_begin = before.rfind("\n") + 1
    units = lambda part: len(part.encode("utf-16-le")) // 2
    return {"line": before.count("\n"), "character": units(before[line_begin:]), "byte": byte, "unit": units(before)}


class Checked:
    def __init__(self, program):
        self.service = Service(program)
        self.requests = validator("request")
        self.answers = validator("answer")
        self.faults = []
        self.asked = 0
        self.kinds = set()

    def ask(self, request, right=True):
        request = {"version": 1, **request}
        self.asked += 1
        if right:
            self.note(request, self.requests.iter_errors(request))
        answer = self.service.say("sheerpole/ask", request)
        self.note(request, self.answers.iter_errors(answer))
        if right and answer["answers"] != request["ask"]:
            self.faults.append(f"{request}: {answer}")
        self.kinds.add(answer["answers"])
        for place in places_in(answer.get("answer")):
            if place["file"] == "command line":
                continue  # what is set for a trial stands in no file
            text = pathlib.Path(place["file"]).read_bytes()
            for end in ("begin", "end"):
                if place[end] != spot(text, place[end]["byte"]):
                    self.faults.append(f"{request}: {place[end]} and {spot(text, place[end]['byte'])}")
        return answer.get("answer")

    def note(self, request, errors):
        self.faults += [f"{request}: {error.json_path}: {error.message[:200]}" for error in errors]


def main():
    program, examples = sys.argv[1], pathlib.Path(sys.argv[2])
    checked = Checked(program)
    boats = sorted(examples.glob("*.rig"))
    for boat in boats:
        text = boat.read_bytes()
        name = str(boat)
        for what in OF_BOAT + OF_FILE:
            checked.ask({"ask": what, "boat": name})
        for byte in range(0, len(text) + EVERY, EVERY):
            here = spot(text, min(byte, len(text)))
            found = []
            for at in ({"byte": byte}, {"unit": here["unit"]}, {"line": here["line"], "character": here["character"]}):
                found.append([checked.ask({"ask": what, "boat": name, "at": at}) for what in AT_PLACE])
            if any(each != found[0] for each in found):
                checked.faults.append(f"{name}: byte {byte}: the ways of counting differ")
            checked.ask({"ask": "rename", "boat": name, "at": {"byte": byte}, "new_name": "another-name"})
            checked.ask({"ask": "actions", "boat": name, "range": {"begin": {"byte": byte}, "end": {"byte": byte + EVERY}}})
        numbers = checked.ask({"ask": "numbers", "boat": name})
        lets = [each for each in numbers if each["property"] == "" and each["written"]][:3]
        for each in lets:
            value = each["written"].split(" drawn")[0].split(" mirrored")[0]
            checked.ask({"ask": "set", "boat": name, "settings": [f"{each['of']}={value}"]})
        checked.ask({"ask": "papers", "boat": name, "only": ["cut-list", "diagram"], "paper": "letter"})
        # A list of one sum that is none of hers: what is read of the boat is on no list.
        sealed = checked.ask({"ask": "verify", "boat": name, "sums": "0" * 64 + "  rig/none.rig\nno sum\n", "facts": "{}", "words": "", "only": []})
        if [sealed["missing"], sealed["bad_lines"]] != [["rig/none.rig"], ["no sum"]] or len(sealed["extra"]) < 3:
            checked.faults.append(f"{name}: verify said {sealed}")
        standing = checked.ask({"ask": "turns", "boat": name})
        for one in (standing or {}).get("adjusters", []):
            checked.ask({"ask": "turns", "boat": name, "turns": {one["stay"]: 1, "no-stay": 0.5}})
    for start in checked.ask({"ask": "starts"}):
        for line, measured, unit in (("wire", "cord", "inches"), ("rope", "tape", "millimetres"), ("wire", "drawing", "inches")):
            begin = {"ask": "begin", "rig": start["rig"], "line": line, "measured": measured, "name": "Second Wind", "unit": unit}
            checked.ask(begin)
            checked.ask({**begin, "numbers": {each["name"]: each["example"] for each in start["numbers"]}})
    for wrong in ({}, {"ask": "weather", "boat": "a"}, {"ask": "hover", "boat": str(boats[0])}, {"version": 2},
                  {"ask": "turns", "boat": str(boats[0]), "turns": {"forestay": "one"}}):
        if checked.ask(wrong, right=False) is not None:
            checked.faults.append(f"{wrong} was answered")
    for fault in checked.faults[:50]:
        print(fault)
    missing = {*AT_PLACE, *OF_FILE, *OF_BOAT, "rename", "set", "verify", "turns", "starts", "begin", "error"} - checked.kinds
    print(f"{len(boats)} boats, {len(checked.faults)} faults, never answered: {sorted(missing)}")
    return 1 if checked.faults or missing or not boats else 0


if __name__ == "__main__":
    sys.exit(main())
