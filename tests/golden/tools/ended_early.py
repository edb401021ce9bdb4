"""ended_early.py SHEERPOLE PROGRAM RIG FOLDER: what is left when a build is ended while a program outside is at work.

PROGRAM writes the numbers of its processes into `numbers` in its folder. One line for each signal.
"""

import os
import pathlib
import signal
import subprocess
import sys
import time

sheerpole, program, rig, folder = sys.argv[1:]


def usual_signals():
    """Who starts us may have them ignored, as a shell does for what runs behind."""
    for each in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP):
        signal.signal(each, signal.SIG_DFL)


def wait_for(condition):
    """The first true value of the condition, or the last one after ten seconds."""
    end = time.monotonic() + 10
    while not (value := condition()) and time.monotonic() < end:
        time.sleep(0.02)
    return value


def lives(number):
    """Whether the process is there and not only waiting for its parent's last look."""
    try:
        return pathlib.Path(f"/proc/{number}/stat").read_text(encoding="utf-8").rsplit(")", 1)[1].split()[0] != "Z"
    except (FileNotFoundError, ProcessLookupError):
        return False


for number in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP, signal.SIGKILL):
    temporary = pathlib.Path(folder) / number.name
    temporary.mkdir(parents=True)
    build = subprocess.Popen(
        [sheerpole, "build", rig, "--only", "findings", "--outside", program, "--outside-seconds", "60", "--into", f"{folder}/out"],
        env={**os.environ, "TMPDIR": str(temporary)}, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        preexec_fn=usual_signals)
    found = wait_for(lambda: list(temporary.glob("*/numbers")))
    numbers = found[0].read_text(encoding="utf-8").split() if found else []
    build.send_signal(number)
    ended = "ended by it" if build.wait(timeout=20) == -number else f"code {build.returncode}"
    wait_for(lambda: not any(lives(one) for one in numbers))
    left = sum(lives(one) for one in numbers)
    folders = "" if number == signal.SIGKILL else f" and {len(list(temporary.iterdir()))} folders"
    print(f"{number.name}: {ended}, {left} of {len(numbers)} processes{folders} left")
