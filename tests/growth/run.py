#!/usr/bin/env python3
"""run.py SHEERPOLE [--from N] [--doublings N] [--only WORDS] [--page]: how work and memory grow with a boat.

Each boat of boats.py is written in sizes that double, and its command runs on each. Of the last two sizes that were taken
the exponent is log2 of the ratio of their processor times (user, less that of the smallest boat), the least of three runs
where a run is short. Where that is over 1.1, the instructions of the smallest size and of one four times as large are
counted with Valgrind, and their exponent is what counts: times grow faster than the work once a boat is larger than a
cache, or while other programs run. A size that is refused by a finding counts as a named limit. It fails when the
exponent is over 1.1 and the time over half a second, when a command takes more than 1 GB, and when it ends otherwise than
with 0, 1 or 2.
--page prints a table for docs. The last line is "N passed, N failed".
"""

import argparse
import math
import os
import pathlib
import re
import resource
import shutil
import subprocess
import sys
import tempfile

import boats

MOST_EXPONENT = 1.1
MOST_MEMORY_KB = 1_000_000
SHORT = 0.3  # seconds: below it a run is done three times


def words_of(command, folder):
    """The words of a command; FILES are the boats of a fleet."""
    words = []
    for word in command.split():
        words += sorted(path.name for path in folder.glob("b*.rig")) if word == "FILES" else [word]
    return words


def count(program, maker, command, size):
    """Instructions in user space, as Valgrind counts them; None where there is no Valgrind."""
    if shutil.which("valgrind") is None:
        return None
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        for file, text in maker(size).items():
            (folder / file).write_text(text, encoding="utf-8")
        ended = subprocess.run(["valgrind", "--tool=callgrind", "--callgrind-out-file=/dev/null", program, *words_of(command, folder)],
                               cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, encoding="utf-8",
                               errors="replace", check=False, preexec_fn=unlimited)
    found = re.search(r"I\s+refs:\s+([\d,]+)", ended.stderr)
    return int(found.group(1).replace(",", "")) if found else None


def unlimited():
    """Valgrind needs more addresses than the command may have."""
    resource.setrlimit(resource.RLIMIT_AS, (resource.RLIM_INFINITY, resource.RLIM_INFINITY))


def exponent_of_counts(program, maker, command, rows):
    """Of the first size and of one four times as large; None where they cannot be counted."""
    first = rows[0][0]
    if len(rows) < 3:
        return None
    counts = [count(program, maker, command, size) for size in (first, 4 * first)]
    return math.log(counts[1] / counts[0], 4) if all(counts) else None


def run(program, command, folder):
    """(code, user seconds, kB, what was said) of one run."""
    words = words_of(command, folder)
    with open(folder / "said", "wb") as said:
        child = subprocess.Popen([program, *words], cwd=folder, stdout=said, stderr=subprocess.STDOUT)
        _, status, usage = os.wait4(child.pid, 0)
    child.returncode = os.waitstatus_to_exitcode(status)
    return child.returncode, usage.ru_utime, usage.ru_maxrss, (folder / "said").read_text(encoding="utf-8", errors="replace")


def measure(program, maker, command, size):
    """The least of some runs, each in a folder of its own."""
    best = None
    for _ in range(3):
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            for file, text in maker(size).items():
                (folder / file).write_text(text, encoding="utf-8")
            found = run(program, command, folder)
        if best is None or found[1] < best[1]:
            best = found
        if found[1] > SHORT:
            break
    return best


def errors_in(said):
    """The slugs of the errors that were said."""
    return sorted(set(re.findall(r"^error .*\(([a-z-]+)\)$", said, flags=re.M)))


def main():
    words = argparse.ArgumentParser()
    words.add_argument("program")
    words.add_argument("--from", dest="first", type=int, default=1000)
    words.add_argument("--doublings", type=int, default=3)
    words.add_argument("--only", default="")
    words.add_argument("--page", action="store_true")
    options = words.parse_args()
    program = str(pathlib.Path(options.program).resolve())
    resource.setrlimit(resource.RLIMIT_AS, (4 << 30, resource.RLIM_INFINITY))
    passed = failed = 0
    if options.page:
        print("| what grows | from | to | seconds | MB | exponent |\n|---|---:|---:|---:|---:|---|")
    for name, (maker, command) in boats.DIMENSIONS.items():
        if options.only not in name:
            continue
        base = measure(program, maker, command, 8)[1]
        rows = []
        fault = limit = ""
        for doubling in range(options.doublings + 1):
            size = options.first << doubling
            code, seconds, kilobytes, said = measure(program, maker, command, size)
            if code not in (0, 1, 2):
                fault = f"code {code} at {size}"
            if kilobytes > MOST_MEMORY_KB:
                fault = f"{kilobytes // 1000} MB at {size}"
            rows.append((size, seconds, kilobytes))
            if code != 0 and name not in boats.OF_ERRORS:
                limit = ", ".join(errors_in(said)) or said.splitlines()[0][:60]
            if limit or seconds > 120 or fault:
                break
        # What was refused took no work, so it says nothing of how work grows.
        taken = [row for row in (rows[:-1] if limit else rows) if row[1] - base > 0.02]
        exponent = 0.0
        if len(taken) > 1:
            (size, seconds, _), (larger, more, _) = taken[0], taken[-1]
            exponent = math.log2((more - base) / (seconds - base)) / math.log2(larger / size)
        counted = ""
        if not fault and not limit and exponent > MOST_EXPONENT and rows[-1][1] > 0.5:
            by_count = exponent_of_counts(program, maker, command, rows)
            if by_count is not None:
                exponent, counted = by_count, " counted"
            if exponent > MOST_EXPONENT:
                fault = f"exponent {exponent:.2f}"
        passed, failed = passed + (not fault), failed + bool(fault)
        grows = f"{exponent:.2f}{counted}" if len(taken) > 1 else "" if limit else "too quick to tell"
        words = grows + ("; then " if grows and limit else "") + (f"`{limit}`" if limit else "")
        if options.page:
            print(f"| {name} | {rows[0][0]} | {rows[-1][0]} | {rows[-1][1]:.2f} | {rows[-1][2] // 1000} | {words}{' FAILED' if fault else ''} |")
        else:
            print(f"{'FAILED ' if fault else ''}{name}: to {rows[-1][0]}, {rows[-1][1]:.2f} s, {rows[-1][2] // 1000} MB, {words} {fault}")
        sys.stdout.flush()
    print(f"{passed} passed, {failed} failed")
    return 0 if failed == 0 and passed > 0 else 1


if __name__ == "__main__":
    sys.exit(main())
