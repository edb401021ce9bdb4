#!/usr/bin/env python3
"""A back end as the first authors wrote them: every sum of every piece, term by term. It stays as it is."""

import base64
import json
import sys

request = json.load(sys.stdin)
assert request["format"] == "sheerpole-request" and request["version"] == 1
if request["verb"] == "describe":
    reply = {"name": "lengths", "summary": "every sum, term by term", "outputs": ["lengths.txt"], "sometimes": ["paper.txt"]}
else:
    lines = [request["rig"]["boat"]["title"]]
    for stay in request["derived"]["stays"]:
        for piece in stay["pieces"]:
            lines.append(f"{piece['name']} of {piece['material']}")
            for term in piece["cut"]["terms"]:
                place = term["provenance"]["place"]
                where = f"{place['file']}:{place['line']}" if place else "worked out"
                lines.append(f"  {term['amount_mm']:+.1f} {term['name']}; {term['provenance']['class']}, {where}")
            unknown = "X + " if piece["cut"]["unknown"] else ""
            lines.append(f"  = {unknown}{piece['cut']['known_mm']:.1f}")
    paper = request["paper"]
    size = f"{paper['name']} {paper['width_mm']:g} x {paper['height_mm']:g}\n"
    reply = {
        "files": [
            {"name": "lengths.txt", "text": "\n".join(lines) + "\n"},
            {"name": "more/paper.txt", "base64": base64.b64encode(size.encode()).decode()},
        ]
    }
print(json.dumps({"format": "sheerpole-reply", "version": 1, **reply}))
