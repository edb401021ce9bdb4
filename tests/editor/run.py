#!/usr/bin/env python3
"""Editors and clients that are not ours work a boat through `sheerpole editor`, without a screen.

  python3 tests/editor/run.py SHEERPOLE [SUBJECT...]

Subjects are neovim, emacs, random_edits and textmate; the npm packages are those of package-lock.json. The last line is
"N passed, N failed".
"""

import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
PROJECT = HERE.parent.parent
SUM = re.compile(r"^(\d+) passed, (\d+) failed$", re.MULTILINE)
LONGEST = 900  # seconds


def commands(sheerpole):
    """From a subject to its command; both editors see a copy of the boats, which they change."""
    return {
        "neovim": ["nvim", "--headless", "-u", "NONE", "-i", "NONE", "-c", f"luafile {HERE / 'neovim.lua'}"],
        "emacs": ["emacs", "--batch", "--no-init-file", "-l", str(HERE / "emacs.el")],
        "random_edits": ["node", str(HERE / "random_edits.mjs"), sheerpole],
        "textmate": ["node", str(HERE / "textmate.mjs"), sheerpole],
    }


def run(command, sheerpole):
    """The two sums of one subject, and what it said."""
    with tempfile.TemporaryDirectory(prefix="sheerpole-editor-") as folder:
        boats = pathlib.Path(folder) / "boats"
        shutil.copytree(HERE / "boats", boats)
        environment = {
            **os.environ,
            "HOME": folder,  # nobody's own settings
            "XDG_CONFIG_HOME": folder,
            "LC_ALL": "C.UTF-8",
            "SHEERPOLE": sheerpole,
            "BOATS": str(boats),
            "VIM_FILES": str(PROJECT / "docs" / "editors" / "vim"),
            "EMACS_FILES": str(PROJECT / "docs" / "editors" / "emacs"),
        }
        try:
            done = subprocess.run(command, env=environment, cwd=folder, stdin=subprocess.DEVNULL, capture_output=True,
                                  timeout=LONGEST, check=False)
        except (OSError, subprocess.TimeoutExpired) as fault:
            return 0, 1, str(fault)
    said = (done.stdout + done.stderr).decode("utf-8", "replace").replace("\r", "")
    sums = SUM.findall(said)
    if len(sums) != 1:
        return 0, 1, said
    passed, failed = map(int, sums[0])
    # One that says all is well and leaves as if it were not is not believed.
    return passed, failed if (done.returncode == 0) == (failed == 0) else failed + 1, said


def main():
    if len(sys.argv) < 2:
        print(__doc__)
        return 2
    sheerpole = str(pathlib.Path(sys.argv[1]).resolve())
    known = commands(sheerpole)
    passed = failed = 0
    for subject in sys.argv[2:] or known:
        right, wrong, said = run(known[subject], sheerpole)
        print(f"{subject}: {right} passed, {wrong} failed", flush=True)
        if wrong or not right:
            print("".join(f"    {line}\n" for line in said.splitlines()), end="", flush=True)
        passed += right
        failed += wrong
    print(f"{passed} passed, {failed} failed")
    return 0 if passed and not failed else 1


if __name__ == "__main__":
    sys.exit(main())
