#!/usr/bin/env python3
"""For verbs/fleet.test, in its folder: what the documents of many boats say of one is what her own document says."""

import json


def load(name):
    with open(name, encoding="utf-8") as file:
        return json.load(file)


together, alone = load("all.json"), load("one.json")
assert [boat["file"] for boat in together["boats"]] == ["north/bea.rig", "south/broken.rig"]
broken = together["boats"][1]
assert (alone.pop("format"), together["format"]) == ("sheerpole-findings", "sheerpole-fleet")
assert alone.pop("version") == together["version"] == 1
for key, value in alone.items():
    assert broken[key] == value, key
assert together["total"]["boats"] == 2 and together["total"]["errors"] == 1

run = load("all.sarif")["runs"][0]
results = []
rules = {}
for name in ("bea.sarif", "broken.sarif"):
    log = load(name)
    assert log["$schema"] == load("all.sarif")["$schema"] and log["version"] == load("all.sarif")["version"]
    for result in log["runs"][0]["results"]:
        del result["ruleIndex"]
        results.append(result)
    rules.update((rule["id"], rule) for rule in log["runs"][0]["tool"]["driver"]["rules"])
    assert run["columnKind"] == log["runs"][0]["columnKind"]
assert run["results"] == results and results
assert run["tool"]["driver"]["name"] == "Sheerpole"
assert {rule["id"]: rule for rule in run["tool"]["driver"]["rules"]} == rules
assert len(run["tool"]["driver"]["rules"]) == len(rules)
