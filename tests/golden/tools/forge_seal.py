"""forge_seal.py SHEERPOLE SEALED WORK: what `verify --again` says of each forgery of a sealed folder.

Whoever forges can renew every sum, so each forgery here has a list of sums that is right. One line each: what was forged, the
code, and the last line that tells it.
"""

import hashlib
import json
import pathlib
import shutil
import subprocess
import sys

program, sealed, work = sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])


def write(name, text):
    def forge(folder):
        (folder / name).write_text(text)

    return forge


def append(name, text="12 345 mm\n"):
    def forge(folder):
        with open(folder / name, "a", encoding="utf-8") as file:
            file.write(text)

    return forge


def facts(change):
    def forge(folder):
        path = folder / "seal.json"
        content = json.loads(path.read_text(encoding="utf-8"))
        change(content)
        path.write_text(json.dumps(content, indent=2) + "\n", encoding="utf-8")

    return forge


def put(key, value):
    return facts(lambda content: content.__setitem__(key, value))


def both(*forges):
    def forge(folder):
        for one in forges:
            one(folder)

    return forge


def elsewhere(folder):
    shutil.copy(folder / "rig/pellimoor.rig", folder.parent / "elsewhere.rig")
    put("rig", "../elsewhere.rig")(folder)


def exchanged(folder):
    one, other = folder / "papers/cut-list.csv", folder / "papers/cut-list.txt"
    first, second = one.read_bytes(), other.read_bytes()
    one.write_bytes(second)
    other.write_bytes(first)


def edit(name, old, new):
    def forge(folder):
        path = folder / name
        path.write_bytes(path.read_bytes().replace(old, new))

    return forge


def twice_in_one(folder):
    path = folder / "seal.json"
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace('"boat": "Pellimoor"', '"boat": "Another",\n  "boat": "Pellimoor"'), encoding="utf-8")


FORGERIES = {
    "altered paper": append("papers/cut-list.txt"),
    "altered paper, not to be made again": both(append("papers/cut-list.txt"), put("made", ["--only=survey-report", "--pdf", "--paper=a4"])),
    "added paper": write("papers/more.txt", "more\n"),
    "paper left out": lambda folder: (folder / "papers/cut-list.csv").unlink(),
    "rig elsewhere": elsewhere,
    "rig not listed": put("rig", "rig/other.rig"),
    "rig a number": put("rig", 7),
    "made a word": put("made", "--pdf"),
    "made of numbers": put("made", [1, 2]),
    "an unknown word": put("made", ["--into=/tmp"]),
    "no object": write("seal.json", "[]\n"),
    "added library": write("rig/more.rig", "language 1\n"),
    "altered words": append("READ-ME.txt"),
    "altered boat": put("boat", "Another"),
    "papers exchanged": exchanged,
    "paper emptied": write("papers/cut-list.txt", ""),
    "paper with other line ends": edit("papers/cut-list.txt", b"\n", b"\r\n"),
    "paper renamed": lambda folder: (folder / "papers/cut-list.txt").rename(folder / "papers/cuts.txt"),
    "altered rig": append("rig/pellimoor.rig", "# a remark\n"),
    "altered library": append("rig/parts/demo-lines.rig", "# a remark\n"),
    "library for rig": put("rig", "rig/parts/demo-lines.rig"),
    "another version and an altered boat": both(put("version", "0.0.9"), put("boat", "Another")),
    "another version and an altered paper": both(put("version", "0.0.9"), append("papers/cut-list.txt")),
    "paper of no size": both(put("made", ["--only=cut-list", "--only=survey-report", "--pdf", "--paper=a3"])),
    "paper of another size": put("made", ["--only=cut-list", "--only=survey-report", "--pdf", "--paper=letter"]),
    "a shop that is not there": put("made", ["--only=cut-list", "--shop=nobody"]),
    "a back end that is not there": put("made", ["--only=cut-lists"]),
    "rig through a folder above": put("rig", "rig/parts/../pellimoor.rig"),
    "seal.json twice in one": twice_in_one,
}

for name, forge in FORGERIES.items():
    folder = work / name.replace(" ", "-").replace(",", "")
    shutil.copytree(sealed, folder)
    forge(folder)
    files = sorted(path for path in folder.rglob("*") if path.is_file() and path.name != "SHA256SUMS")
    sums = sorted((str(path.relative_to(folder)), hashlib.sha256(path.read_bytes()).hexdigest()) for path in files)
    (folder / "SHA256SUMS").write_text("".join(f"{digest}  {path}\n" for path, digest in sums), encoding="utf-8")
    ended = subprocess.run([program, "verify", str(folder), "--again"], capture_output=True, text=True, check=False)
    telling = [line for line in (ended.stdout + ended.stderr).splitlines() if "made again" in line]
    paper = [line for line in telling if not line.endswith((": seal.json", ": SHA256SUMS"))]
    print(f"{name}: {ended.returncode} {(paper or telling or ['nothing'])[0]}")
