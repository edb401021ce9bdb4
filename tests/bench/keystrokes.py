#!/usr/bin/env python3
"""How long it is from a key to its findings, in an editor.

  python3 tests/bench/keystrokes.py SHEERPOLE [FILE [KEYS]]

A line is typed into the file (default: examples/grisolde.rig) sign by sign and taken out again: 200 keys by default. Each is sent to
`sheerpole editor` as an editor sends it, and the time runs until the findings of that state have come back. In turns it is a statement, which
is a slip until it is whole, and a comment, with which the boat is worked out each time. Machines differ and are noisy: the median is what counts. Memory is the most that the server had.
"""

import json
import pathlib
import statistics
import subprocess
import sys
import time

PROJECT = pathlib.Path(__file__).resolve().parent.parent.parent
# A statement, which is a slip until it is whole, and a comment, with which the boat is whole all along.
LINES = ["let new-length = 12 mm", "# how far it is to go"]


class Editor:
    def __init__(self, program):
        self.process = subprocess.Popen([program, "editor"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)

    def send(self, message):
        content = json.dumps({"jsonrpc": "2.0", **message}).encode("utf-8")
        self.process.stdin.write(b"Content-Length: %d\r\n\r\n%s" % (len(content), content))
        self.process.stdin.flush()

    def message(self):
        length = int(self.process.stdout.readline().split(b":")[1])
        self.process.stdout.readline()
        return json.loads(self.process.stdout.read(length))

    def findings(self, uri, version):
        while True:
            params = self.message().get("params", {})
            if params.get("uri") == uri and params.get("version") == version:
                return params["diagnostics"]

    def peak_kib(self):
        status = pathlib.Path(f"/proc/{self.process.pid}/status").read_text(encoding="ascii")
        return int(status.split("VmHWM:")[1].split()[0])


def main():
    if len(sys.argv) < 2:
        print(__doc__)
        return 2
    path = pathlib.Path(sys.argv[2] if len(sys.argv) > 2 else PROJECT / "examples" / "grisolde.rig").resolve()
    keys = int(sys.argv[3]) if len(sys.argv) > 3 else 200
    text = path.read_text(encoding="utf-8")
    uri = path.as_uri()
    editor = Editor(sys.argv[1])
    editor.send({"id": 1, "method": "initialize", "params": {"capabilities": {"textDocument": {"publishDiagnostics": {"relatedInformation": True}}}}})
    editor.message()
    editor.send({"method": "textDocument/didOpen", "params": {"textDocument": {"uri": uri, "languageId": "rig", "version": 0, "text": text}}})
    at_first = editor.findings(uri, 0)
    line = text.split("\n").index("")  # the first empty one
    whole, slips = [], []
    typed = 0
    forward = True
    lines = list(LINES)
    findings = at_first
    for version in range(1, keys + 1):
        here = {"line": line, "character": typed}
        if forward:
            change = {"range": {"start": here, "end": here}, "text": lines[0][typed]}
            typed += 1
        else:
            typed -= 1
            change = {"range": {"start": {"line": line, "character": typed}, "end": here}, "text": ""}
        begin = time.perf_counter()
        editor.send({"method": "textDocument/didChange", "params": {"textDocument": {"uri": uri, "version": version}, "contentChanges": [change]}})
        findings = editor.findings(uri, version)
        took = time.perf_counter() - begin
        (slips if any(each["severity"] == 1 for each in findings) else whole).append(took)
        if typed in (0, len(lines[0])):
            forward = typed == 0
        if typed == 0:
            lines.append(lines.pop(0))
    both = sorted(whole + slips)
    for name, times in (("all", both), ("whole boats", whole), ("with a slip", slips)):
        if times:
            print(f"{name}: {len(times)} keys, median {statistics.median(times) * 1000:.1f} ms, "
                  f"95 % within {sorted(times)[int(len(times) * 0.95)] * 1000:.1f} ms")
    print(f"at most {editor.peak_kib() / 1024:.0f} MiB")
    if typed == 0 and findings != at_first:
        print("the findings of the same text differ")
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
