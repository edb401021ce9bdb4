#!/usr/bin/env python3
"""A back end as the first authors wrote them: gives back the request that it gets. It stays as it is."""

import json
import sys

text = sys.stdin.read()
if json.loads(text)["verb"] == "describe":
    print(json.dumps({"version": 1, "name": "recorder", "summary": "the request", "outputs": ["request.json"]}))
else:
    print(json.dumps({"version": 1, "files": [{"name": "request.json", "text": text}]}))
