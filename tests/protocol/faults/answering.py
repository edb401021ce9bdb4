"""What the programs here have in common: they say what they are, and then do one thing wrong."""

import json
import sys


def asked(name):
    """The request to generate; one to describe is answered here."""
    request = json.load(sys.stdin)
    if request["verb"] == "describe":
        answer(name=name, summary="does one thing wrong")
        sys.exit(0)
    return request


def answer(**members):
    """One answer of version 1."""
    json.dump({"version": 1, **members}, sys.stdout)
    sys.stdout.flush()


def one_file(name):
    """A list of one file of this name."""
    return [{"name": name, "text": "from outside\n"}]
