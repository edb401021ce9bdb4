#!/usr/bin/env python3
"""instructions.py beside SHEERPOLE [--page]      counted instructions of the optimised build, beside protoc and dot
instructions.py recorded BUILD [--record]         of the everyday build, against instructions.tsv

Instructions are those that Valgrind counts in user space: they do not depend on the clock, on other work or on the size of a
cache. What is linked in counts too, so figures hold for one compiler and one C library; only shares and growth tell
anything elsewhere.

`recorded` fails a workload that takes over 5 % more than instructions.tsv says, and says where one takes 5 % less, so that it
can be written anew with --record. Under a sanitizer, or built by another compiler than the figures, nothing is
measured, and that is said. The last line is "N passed, N failed".
"""

import argparse
import os
import pathlib
import re
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

import write_generated_boat

HERE = pathlib.Path(__file__).resolve().parent
PROJECT = HERE.parent.parent
TABLE = HERE / "instructions.tsv"
MOST_MORE = 0.05

TWO_MESSAGES = """syntax = "proto3";
message Pin { string name = 1; double diameter = 2; }
message Stay { string name = 1; repeated Pin pins = 2; }
"""
FOURTEEN_NODES = "digraph rig {\n" + "".join(f"  n{i} -> n{i + 1};\n" for i in range(1, 14)) + "}\n"

# Each name and what is given to sheerpole; OUT is a folder, BOAT is generated.
WORKLOADS = {
    "version": "--version",
    "check of Pellimoor": "check examples/pellimoor.rig",
    "three outputs of Pellimoor": "build examples/pellimoor.rig --only cut-list,findings,diagram --into OUT",
    "all papers of Pellimoor": "build examples/pellimoor.rig --into OUT",
    "check of a boat with a bound on each part": "check BOAT",
    "cut list of a fleet of that boat": "fleet BOAT --only cut-list --into OUT --workers 1",
}
# What stands beside it, and the share that is to be reached.
BESIDE = {
    "check of Pellimoor": ("protoc, two messages", ["protoc", "--proto_path=.", "--cpp_out=.", "two.proto"], 1.0),
    "three outputs of Pellimoor": ("dot, 14 nodes to SVG", ["dot", "-Tsvg", "-o", "fourteen.svg", "fourteen.dot"], 1.0),
}
MOST = {"version": 4e6, "all papers of Pellimoor": 110e6}
# Stays of the generated boat. Without optimisation most of them would cost a minute and tell nothing more.
STAYS, STAYS_UNOPTIMISED = 14, 3


def prepare(folder, stays):
    """Writes what the workloads and their neighbours read."""
    (folder / "two.proto").write_text(TWO_MESSAGES, encoding="utf-8")
    (folder / "fourteen.dot").write_text(FOURTEEN_NODES, encoding="utf-8")
    (folder / "boat.rig").write_text(write_generated_boat.boat(stays), encoding="utf-8")


def count(command, cwd):
    """Instructions in user space of a command; ends the program when it does not end well."""
    ended = subprocess.run(
        ["valgrind", "--tool=callgrind", "--callgrind-out-file=/dev/null", *command],
        cwd=cwd, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, encoding="utf-8", errors="replace",
        env={"PATH": "/usr/local/bin:/usr/bin:/bin", "LC_ALL": "C.UTF-8"}, check=False)
    found = re.search(r"I\s+refs:\s+([\d,]+)", ended.stderr)
    if found is None or ended.returncode not in (0, 1):
        sys.exit(f"{' '.join(map(str, command))}: {ended.stderr[-2000:]}")
    return int(found.group(1).replace(",", ""))


def count_workload(program, name, folder):
    """Instructions of one workload with a program."""
    places = {"OUT": folder / name.replace(" ", "-"), "BOAT": folder / "boat.rig"}
    words = [places.get(word, word) for word in WORKLOADS[name].split()]
    return count([program, *words], PROJECT)


def beside(program, page):
    """Prints each workload with what stands beside it."""
    failed = 0
    rows = []
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        prepare(folder, STAYS)
        for workload in WORKLOADS:
            mine = count_workload(program, workload, folder)
            row = [workload, f"{mine / 1e6:.1f} M", "", "", ""]
            if workload in BESIDE:
                other, command, most = BESIDE[workload]
                theirs = count(command, folder)
                row[2:] = [f"{other}: {theirs / 1e6:.1f} M", f"{mine / theirs:.2f}", f"{most:.2f}"]
                failed += mine > most * theirs
            elif workload in MOST:
                row[4] = f"{MOST[workload] / 1e6:.0f} M"
                failed += mine > MOST[workload]
            rows.append(row)
    head = ["what", "instructions", "beside it", "share", "at most"]
    if page:
        print("| " + " | ".join(head) + " |\n|---|---:|---|---:|---:|")
    for row in rows if page else [head, *rows]:
        print("| " + " | ".join(row) + " |" if page else f"{row[0]:36}{row[1]:>14}  {row[2]:32}{row[3]:>6}{row[4]:>9}")
    return 1 if failed else 0


def compiler_of(build):
    """How a build was compiled: "GNU 12 Debug", as in instructions.tsv."""
    cache = (build / "CMakeCache.txt").read_text(encoding="utf-8")
    kind = re.search(r"^CMAKE_BUILD_TYPE:\w+=(.*)$", cache, re.M)
    found = sorted(build.glob("CMakeFiles/*/CMakeCXXCompiler.cmake"))
    text = found[-1].read_text(encoding="utf-8") if found else ""
    name = re.search(r'CMAKE_CXX_COMPILER_ID "(\w+)"', text)
    version = re.search(r'CMAKE_CXX_COMPILER_VERSION "(\d+)', text)
    return f"{name and name.group(1)} {version and version.group(1)} {kind and kind.group(1)}"


def sanitizers_of(build):
    """The sanitizers that a build has; empty when it has none."""
    found = re.search(r"^SHEERPOLE_SANITIZERS:\w+=(.*)$", (build / "CMakeCache.txt").read_text(encoding="utf-8"), re.M)
    return found.group(1) if found else ""


def recorded(build, record):
    """Compares with what instructions.tsv says, or writes it."""
    compiler = compiler_of(build)
    if sanitizers := sanitizers_of(build):
        print(f"not measured: Valgrind does not run what is built with -fsanitize={sanitizers}\n0 passed, 0 failed")
        return 0
    lines = TABLE.read_text(encoding="utf-8").splitlines() if TABLE.exists() else []
    said = dict(line.split("\t") for line in lines if line and not line.startswith("#"))
    if not record and said.get("compiler") != compiler:
        print(f"not measured: the figures are of {said.get('compiler')}, this is {compiler}\n0 passed, 0 failed")
        return 0
    passed = failed = 0
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        prepare(folder, STAYS_UNOPTIMISED)
        with ThreadPoolExecutor(os.cpu_count()) as pool:
            counts = pool.map(lambda workload: count_workload(build / "bin" / "sheerpole", workload, folder), WORKLOADS)
            found = dict(zip(WORKLOADS, counts))
    for workload, instructions in found.items():
        before = int(said.get(workload, 0))
        more = instructions / before - 1 if before else float("inf")
        fault = not record and more > MOST_MORE
        passed, failed = passed + (not fault), failed + fault
        remark = "; less than recorded: --record writes it" if more < -MOST_MORE else ""
        share = f"{100 * more:+.1f} %" if before else "not recorded"
        print(f"{'FAILED ' if fault else ''}{workload}: {instructions / 1e6:.1f} M, {share}{remark}")
    if record:
        rows = "".join(f"{workload}\t{instructions}\n" for workload, instructions in found.items())
        TABLE.write_text(f"# Written by instructions.py recorded BUILD --record\ncompiler\t{compiler}\n{rows}", encoding="utf-8")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


def main():
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    kinds = words.add_subparsers(dest="kind", required=True)
    one = kinds.add_parser("beside")
    one.add_argument("program", type=pathlib.Path)
    one.add_argument("--page", action="store_true")
    other = kinds.add_parser("recorded")
    other.add_argument("build", type=pathlib.Path)
    other.add_argument("--record", action="store_true")
    options = words.parse_args()
    if options.kind == "beside":
        return beside(options.program.resolve(), options.page)
    return recorded(options.build.resolve(), options.record)


if __name__ == "__main__":
    sys.exit(main())
