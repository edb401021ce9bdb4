#!/usr/bin/env python3
"""Counts what GoogleTest and lit report.

    tally.py gtest|lit REPORT.json

prints "PASSED FAILED", and on stderr the names of what failed or was skipped. A report that is missing or cannot be
read counts as one failure: the program that should have written it did not get to its end.
"""

import json
import sys


def gtest(report):
    """(name, outcome) of every case; outcome is "passed", "failed" or "skipped"."""
    for suite in report["testsuites"]:
        for case in suite["testsuite"]:
            name = f"{suite['name']}.{case['name']}"
            if case.get("failures"):
                yield name, "failed"
            elif case["status"] == "RUN" and case["result"] == "COMPLETED":
                yield name, "passed"
            else:
                yield name, "skipped"


def lit(report):
    """(name, outcome) of every test."""
    outcomes = {"PASS": "passed", "XFAIL": "passed", "FLAKYPASS": "passed", "UNSUPPORTED": "skipped"}
    for test in report["tests"]:
        yield test["name"], outcomes.get(test["code"], "failed")


def main():
    kind, path = sys.argv[1:]
    try:
        with open(path, encoding="utf-8") as file:
            outcomes = list({"gtest": gtest, "lit": lit}[kind](json.load(file)))
    except (OSError, ValueError) as fault:
        print(f"no report of {kind}: {fault}", file=sys.stderr)
        outcomes = [(path, "failed")]
    for name, outcome in outcomes:
        if outcome != "passed":
            print(f"{outcome}: {name}", file=sys.stderr)
    counts = [outcome for _, outcome in outcomes]
    print(counts.count("passed"), counts.count("failed"))


if __name__ == "__main__":
    main()
