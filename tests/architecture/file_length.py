"""No file a person has to read is over 600 lines."""

import tree

NAME = "file length"
LIMIT = 600
ENDINGS = (".cpp", ".hpp", ".h", ".py", ".g4", ".cmake", ".sh", "CMakeLists.txt")


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["."], ENDINGS):
        name = tree.shown(root, path)
        if name.startswith("tests/reference/"):
            continue  # data, printed as its source prints it
        count = len(tree.read(path).splitlines())
        if count > LIMIT:
            findings.append(f"{name}:{LIMIT + 1}: {count} lines, over {LIMIT}")
    return findings
