"""Which files of the project a check reads."""

import os
import pathlib

# Made by building, testing or editing; nobody reviews them, so no check reads them.
NOT_OURS = {".git", "build", "__pycache__", "node_modules"}


def files(root, folders, endings):
    """Every file below the folders of root whose name ends in one of the endings, sorted by path."""
    found = []
    for folder in folders:
        for here, inner, names in os.walk(pathlib.Path(root) / folder):
            inner[:] = sorted(name for name in inner if name not in NOT_OURS)
            found += [pathlib.Path(here) / name for name in names if name.endswith(endings)]
    return sorted(found)


def shown(root, path):
    """The path as a message names it: relative to root, with forward slashes."""
    return pathlib.Path(path).relative_to(root).as_posix()


def read(path):
    """The text of a file; bytes that are no UTF-8 do not stop a check of something else."""
    return pathlib.Path(path).read_text(encoding="utf-8", errors="replace")
