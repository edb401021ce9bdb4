#!/usr/bin/env python3
"""Writes a build.ninja for many boats to standard output, so that only what has changed is made again:

    python3 fleet_ninja.py boats/*.rig > build.ninja
    ninja -k 0

Each boat's papers go to papers/NAME, as `sheerpole build` writes them; after a change of a library, of a rig file or of
sheerpole itself those boats are made again that read it. Needs Python 3 and ninja 1.7 or later, nothing else.
"""

import argparse
import pathlib
import shlex
import shutil
import sys


def escaped(path):
    """A path as ninja reads it in a line that begins with `build`."""
    return path.replace("$", "$$").replace(" ", "$ ").replace(":", "$:")


def folder_names(files):
    """The file's name without .rig; with its folders before it where two files have one name."""
    names = [pathlib.PurePath(file).name.removesuffix(".rig") for file in files]
    twice = {name for name in names if names.count(name) > 1}
    for i, file in enumerate(files):
        if names[i] in twice:
            names[i] = "-".join(part for part in pathlib.PurePath(file).with_suffix("").parts if part not in ("/", "..", "."))
    if len(set(names)) < len(names):
        sys.exit("fleet_ninja.py: two boats would have one folder; rename one of them")
    return names


def main():
    options = argparse.ArgumentParser(description="Writes a build.ninja for many boats.")
    options.add_argument("files", nargs="+", metavar="FILE", help="the rig files of the boats, without their libraries")
    options.add_argument("--papers", default="papers", metavar="FOLDER", help="where the papers go (papers)")
    options.add_argument("--sheerpole", default="sheerpole", metavar="PROGRAM", help="the program, by its name or path")
    options.add_argument("--options", default="", metavar="WORDS", help="further options of build: '--pdf --paper letter'")
    asked = options.parse_args()
    for name in [asked.papers, *asked.files]:
        if "\n" in name:
            sys.exit("fleet_ninja.py: ninja has no way to write a name with a line end in it")
    program = shutil.which(asked.sheerpole) or sys.exit(f"fleet_ninja.py: there is no program {asked.sheerpole}")

    out = [
        "ninja_required_version = 1.7",
        "rule boat",
        "  command = $sheerpole build $in --into $folder --depends $folder.d --form lines $options >/dev/null && touch $out",
        "  depfile = $depends",
        "  deps = gcc",
        "  description = $in",
        "sheerpole = " + shlex.quote(program).replace("$", "$$"),
        "options = " + asked.options.replace("$", "$$"),
    ]
    for file, name in zip(asked.files, folder_names(asked.files)):
        folder = asked.papers + "/" + name
        # A name that begins with - is no option.
        rig = "./" + file if file.startswith("-") else file
        out.append(f"build {escaped(folder)}.made: boat {escaped(rig)} | {escaped(program)}")
        out.append("  folder = " + shlex.quote(folder).replace("$", "$$"))
        out.append("  depends = " + (folder + ".d").replace("$", "$$"))
    sys.stdout.reconfigure(encoding="utf-8", errors="surrogateescape", newline="\n")
    print("\n".join(out))


if __name__ == "__main__":
    main()
