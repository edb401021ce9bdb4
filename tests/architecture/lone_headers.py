"""Every header compiles alone, so that the order of includes never matters."""

import concurrent.futures
import hashlib
import json
import pathlib
import shlex
import subprocess

import cpp_text
import tree

NAME = "headers compile alone"
AT_ONCE = 2


def check(root, build):
    """Findings, one line of text a header. What compiled is remembered in build, by content."""
    flags_of = compile_flags(root, build)
    cache = build / "lone_headers"
    cache.mkdir(parents=True, exist_ok=True)
    version = subprocess.run(["c++", "--version"], capture_output=True, text=True, check=True).stdout
    headers = tree.files(root, ["compiler", "plugins", "tests"], (".hpp", ".h"))

    def alone(header):
        flags = flags_of(header)
        mark = cache / content_hash(root, header, [version, *flags])
        if mark.exists():
            return None
        name = tree.shown(root, header)
        run = subprocess.run(
            ["c++", "-fsyntax-only", *flags, "-x", "c++", "-"],
            input=f'#include "{header}"\n',
            cwd=root,
            capture_output=True,
            text=True,
            check=False,
        )
        if run.returncode == 0:
            mark.touch()
            return None
        first = next((line for line in run.stderr.split("\n") if "error:" in line), run.stderr.strip())
        return f"{name}:1: does not compile alone: {first}"

    with concurrent.futures.ThreadPoolExecutor(AT_ONCE) as pool:
        return [finding for finding in pool.map(alone, headers) if finding]


def compile_flags(root, build):
    """A function from a header to its flags: those of the nearest folder the build compiles something in."""
    standard = ["-std=c++20", "-Wall", "-Wextra", f"-I{root}/compiler", f"-I{root}", f"-I{root}/tests"]
    of_folder = {}
    commands = build / "compile_commands.json"
    if commands.is_file():
        for entry in json.loads(commands.read_text(encoding="utf-8")):
            of_folder.setdefault(pathlib.Path(entry["file"]).parent, set()).update(relevant(entry["command"]))

    def flags(header):
        nearest = next((folder for folder in header.parents if folder in of_folder), None)
        return standard + sorted(of_folder.get(nearest, set()) - set(standard))

    return flags


def relevant(command):
    """The words of a compile command that decide which headers are found and what they mean."""
    words = shlex.split(command)
    for word, following in zip(words, [*words[1:], ""]):
        if word == "-isystem":
            yield f"-isystem{following}"
        elif word.startswith(("-I", "-D")) or word == "-fno-char8_t":
            yield word


def content_hash(root, header, flags):
    """Changes when the header, anything of ours it includes, or the way of compiling changes."""
    digest = hashlib.sha256("\0".join([str(root), *flags]).encode())
    waiting = [header]
    seen = set()
    while waiting:
        path = waiting.pop()
        if path in seen:
            continue
        seen.add(path)
        text = tree.read(path)
        digest.update(f"\0{path}\0{text}".encode())
        for include in cpp_text.take_apart(text).includes:
            for place in (root / "compiler", root, root / "tests", pathlib.Path(path).parent):
                if not include.angled and (place / include.path).is_file():
                    waiting.append(place / include.path)
                    break
    return digest.hexdigest()
