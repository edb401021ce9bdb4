"""clang-format would change nothing."""

import re
import shutil
import subprocess

import tree

NAME = "clang-format"
COMPLAINT = re.compile(r"^(.*?):(\d+):\d+: (?:error|warning): code should be clang-formatted", re.MULTILINE)


def check(root, build):
    """Findings, one line of text a file; build is not used."""
    tool = shutil.which("clang-format") or shutil.which("clang-format-14")
    if tool is None:
        return ["clang-format is not installed"]
    paths = tree.files(root, ["compiler", "plugins", "tests", "examples"], (".cpp", ".hpp"))
    if not paths:
        return []
    style = root / ".clang-format"
    if not style.is_file():
        return [".clang-format is missing"]
    run = subprocess.run(
        [tool, "--style=file", "--dry-run", "-Werror", *(tree.shown(root, path) for path in paths)],
        cwd=root,
        capture_output=True,
        text=True,
        check=False,
    )
    if run.returncode == 0:
        return []
    first = {}
    for match in COMPLAINT.finditer(run.stderr):
        first.setdefault(match[1], match[2])
    findings = [f"{path}:{line}: not as clang-format writes it" for path, line in first.items()]
    return findings or [f"clang-format failed: {run.stderr.strip()}"]
