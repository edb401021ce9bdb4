"""Whatever fails while papers are written: the old files whole or the new files whole, and what is said of it is true.

    python3 tests/faults/run.py SHEERPOLE SHIM [--much]

SHIM is the library made from fail_nth.cpp. For each verb that writes and each kind of call, the n-th call fails, for every n;
allocations are tried at some sixty places. Then pairs of builds into one folder at once, and builds that are killed.
--much tries 400 pairs and 300 kills in place of 40 and 40. The last line is "N passed, N failed".
"""

import argparse
import os
import pathlib
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import time

NOTE = "WRITING-WAS-STOPPED.txt"
CALLS = ("open", "write", "rename", "link", "close", "fsync")
ALLOCATIONS = 60

RIG = """language 1
wire wire-6 {
  construction: "1x19"
  size: "6 mm"
}
stock spool-six of wire-6 {
  sort: spool
  length: 60 m maker
}
stay forestay {
  pin-to-pin: LENGTH m drawn
  line: wire-6
  stack {
    line
  }
}
"""


def rig_text(length):
    return RIG.replace("LENGTH", length)


def snapshot(folder):
    """From the path of each file in a folder to its bytes."""
    return {
        str(path.relative_to(folder)): path.read_bytes() if path.is_file() else b"?"
        for path in sorted(folder.rglob("*"))
        if not path.is_dir()
    }


class Case:
    """One verb that writes: how it is set up in a folder of its own and how it is called."""

    def __init__(self, name, arguments, before, now):
        self.name = name
        self.arguments = arguments
        self.before = before
        self.now = now

    def lay(self, folder, old):
        """The files as they are before the call; `old` is the folder of an earlier run or None."""
        shutil.rmtree(folder, ignore_errors=True)
        if old is None:
            folder.mkdir(parents=True)
        else:
            shutil.copytree(old, folder)
        for name, text in self.now.items():
            (folder / name).write_text(text)


ONLY = ["--only", "cut-list,findings"]
CASES = [
    Case("build", ["build", "boat.rig", "--into", "out", *ONLY], {"boat.rig": rig_text("10")}, {"boat.rig": rig_text("11")}),
    Case("plan", ["plan", "boat.rig", "--into", "out"], {"boat.rig": rig_text("10")}, {"boat.rig": rig_text("11")}),
    Case("seal", ["seal", "boat.rig", "--into", "out", "--only", "cut-list"], None, {"boat.rig": rig_text("11")}),
    Case("tidy", ["tidy", "boat.rig"], None, {"boat.rig": rig_text("11").replace("  ", "        ")}),
    Case("mend", ["mend", "boat.rig"], None, {"boat.rig": rig_text("11").replace("language 1\n", "")}),
]


class Run:
    def __init__(self, program, shim, folder):
        self.program = program
        self.shim = shim
        self.folder = folder
        self.passed = 0
        self.failed = 0

    def call(self, arguments, folder, **fault):
        environment = {key: value for key, value in os.environ.items() if not key.startswith("FAIL_")}
        if fault:
            environment |= {f"FAIL_{key.upper()}": str(value) for key, value in fault.items()}
            environment["LD_PRELOAD"] = str(self.shim)
            environment["FAIL_REPORT"] = str(self.folder / "calls")
            # A sanitizer wants to be the first library and finds the memory that a fault leaves behind.
            environment["ASAN_OPTIONS"] = "verify_asan_link_order=0:detect_leaks=0:allocator_may_return_null=1"
        return subprocess.run([self.program, *arguments], cwd=folder, env=environment, capture_output=True, check=False)

    def tell(self, good, what):
        if good:
            self.passed += 1
        else:
            self.failed += 1
            print(f"FAILED: {what}")

    def old_folder(self, case):
        """The folder after an earlier run, or None."""
        if case.before is None:
            return None
        old = self.folder / f"{case.name}-old"
        old.mkdir()
        for name, text in case.before.items():
            (old / name).write_text(text)
        self.call(case.arguments, old)
        return old

    def every_fault(self, case, calls):
        old_folder = self.old_folder(case)
        work = self.folder / "work"
        case.lay(work, old_folder)
        old = snapshot(work)
        self.call(case.arguments, work)
        new = snapshot(work)
        self.tell(old != new and NOTE not in new, f"{case.name}: a run without faults writes nothing")
        for call in calls:
            for stays in (False, True):
                for nth in self.places(case, call, work, old_folder):
                    case.lay(work, old_folder)
                    fault = {"call": call, "nth": nth} | ({"on": "stays"} if stays else {})
                    ended = self.call(case.arguments, work, **fault)
                    what = f"{case.name}: {call} number {nth} fails{' and all after it' if stays else ''}"
                    now = snapshot(work)
                    if call == "malloc":
                        # Without memory there is not even an end in good order; the next build clears up.
                        now = {name: text for name, text in now.items() if ".sheerpole-" not in name}
                    self.judge(what, ended, old, new, now)

    def places(self, case, call, work, old_folder):
        """The numbers of the calls that are to fail: every one, or of allocations some."""
        case.lay(work, old_folder)
        (self.folder / "calls").unlink(missing_ok=True)
        self.call(case.arguments, work, call=call, nth=0)
        count = int((self.folder / "calls").read_text())
        if call != "malloc" or count <= ALLOCATIONS:
            return range(1, count + 1)
        return sorted(random.Random(1).sample(range(1, count + 1), ALLOCATIONS))

    def judge(self, what, ended, old, new, now):
        said = (ended.stdout + ended.stderr).decode(errors="replace")
        state = "old" if now == old else "new" if now == new else "mixed"
        # Where even putting back fails there is a note, and the words say so.
        told_as_mixed = "do not cut by them" in said and any(name.endswith(NOTE) for name in now)
        whole = state != "mixed" or told_as_mixed
        # What was printed may be lost although the files are there; the code says that something was.
        true = not ("nothing was written" in said and state == "new") and not ("is as it was" in said and state == "new")
        code = ended.returncode
        fitting = state == "new" if code == 0 else code in (1, 2, 3)
        loud = code == 0 or bool(ended.stderr) or b"write" in what.encode()
        self.tell(whole and true and fitting and loud, f"{what}: code {code}, files {state}\n{said[-600:]}")

    def pairs(self, count):
        """Two builds of two states of the boat into one folder at once: one of them, whole, is there in the end."""
        folder = self.folder / "pairs"
        folder.mkdir()
        states = []
        for number, length in enumerate(("10", "12")):
            (folder / f"boat{number}").mkdir()
            (folder / f"boat{number}" / "boat.rig").write_text(rig_text(length))
            self.call(["build", f"boat{number}/boat.rig", "--into", f"alone{number}"], folder)
            states.append(snapshot(folder / f"alone{number}"))
        out = folder / "out"
        for number in range(count):
            runs = [
                subprocess.Popen([self.program, "build", f"boat{one}/boat.rig", "--into", "out"], cwd=folder,
                                 stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
                for one in (0, 1)
            ]
            codes = [run.wait() for run in runs]
            self.tell(snapshot(out) in states and codes == [0, 0], f"pair {number}: spliced, or codes {codes}")

    def kills(self, count):
        """A build that is killed at any moment leaves one state or the other, or the note; the next one puts it right."""
        folder = self.folder / "kills"
        folder.mkdir()
        states = []
        for length in ("10", "12"):
            (folder / "boat.rig").write_text(rig_text(length))
            begun = time.monotonic()
            self.call(["build", "boat.rig", "--into", "out"], folder)
            took = time.monotonic() - begun
            states.append(snapshot(folder / "out"))
        chance = random.Random(2)
        for number in range(count):
            length, other = (("10", states[0]), ("12", states[1]))[number % 2]
            (folder / "boat.rig").write_text(rig_text(length))
            run = subprocess.Popen([self.program, "build", "boat.rig", "--into", "out"], cwd=folder,
                                   stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            # Most of the time of a build goes by before it writes.
            time.sleep(took * chance.uniform(0.5, 1.1))
            run.send_signal(signal.SIGKILL)
            run.wait()
            now = {name: text for name, text in snapshot(folder / "out").items() if not name.startswith(".sheerpole-")}
            self.tell(now in states or NOTE in now, f"kill {number}: spliced without a note")
            self.call(["build", "boat.rig", "--into", "out"], folder)
            self.tell(snapshot(folder / "out") == other, f"kill {number}: the next build does not put it right")


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("shim")
    parser.add_argument("--much", action="store_true")
    asked = parser.parse_args()
    program = str(pathlib.Path(asked.program).resolve())
    # A sanitizer brings an allocator of its own, which the shim must not stand before.
    sanitized = b"__asan_init" in pathlib.Path(program).read_bytes()
    with tempfile.TemporaryDirectory() as folder:
        run = Run(program, pathlib.Path(asked.shim).resolve(), pathlib.Path(folder))
        for case in CASES:
            run.every_fault(case, CALLS if sanitized else (*CALLS, "malloc"))
        run.pairs(400 if asked.much else 40)
        run.kills(300 if asked.much else 40)
    print(f"{run.passed} passed, {run.failed} failed")
    return 0 if run.failed == 0 and run.passed > 0 else 1


if __name__ == "__main__":
    sys.exit(main())
