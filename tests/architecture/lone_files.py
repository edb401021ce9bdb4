"""Every file compiles alone.

The order of includes must never matter, and a build that joins several files to one must not hide that one of them lacks an
include. A header that a file of its own name includes first is compiled with that file. The files of the tests are not
compiled here: most of their time goes into the test libraries.
"""

import concurrent.futures
import hashlib
import json
import pathlib
import shlex
import subprocess

import cpp_text
import tree

NAME = "files compile alone"
AT_ONCE = 2


def check(root, build):
    """Findings, one line of text a file. What compiled is remembered in build, by content."""
    flags_of = compile_flags(root, build)
    cache = build / "lone_files"
    cache.mkdir(parents=True, exist_ok=True)
    version = subprocess.run(["c++", "--version"], capture_output=True, text=True, check=True).stdout

    def alone(path):
        flags = flags_of(path)
        mark = cache / content_hash(root, path, [version, *flags])
        if mark.exists():
            return None
        run = subprocess.run(
            ["c++", "-fsyntax-only", *flags, "-x", "c++", "-"],
            input=f'#include "{path}"\n',
            cwd=root,
            capture_output=True,
            text=True,
            check=False,
        )
        if run.returncode == 0:
            mark.touch()
            return None
        first = next((line for line in run.stderr.split("\n") if "error:" in line), run.stderr.strip())
        return f"{tree.shown(root, path)}:1: does not compile alone: {first}"

    with concurrent.futures.ThreadPoolExecutor(AT_ONCE) as pool:
        return [finding for finding in pool.map(alone, to_compile(root)) if finding]


def to_compile(root):
    """The files of compiler and plugins, and the headers that none of them compiles first."""
    files = tree.files(root, ["compiler", "plugins"], (".cpp",))
    first = {path.with_suffix(".hpp") for path in files if includes_itself_first(root, path)}
    headers = tree.files(root, ["compiler", "plugins", "tests"], (".hpp", ".h"))
    return [*files, *(header for header in headers if header not in first)]


def includes_itself_first(root, path):
    includes = cpp_text.take_apart(tree.read(path)).includes
    header = path.with_suffix(".hpp")
    return bool(includes) and header in (root / "compiler" / includes[0].path, root / includes[0].path)


def compile_flags(root, build):
    """A function from a file to its flags: those of the nearest folder the build compiles something in."""
    standard = ["-std=c++20", "-Wall", "-Wextra", f"-I{root}/compiler", f"-I{root}", f"-I{root}/tests"]
    of_folder = {}
    commands = build / "compile_commands.json"
    if commands.is_file():
        for entry in json.loads(commands.read_text(encoding="utf-8")):
            of_folder.setdefault(folder_of(root, build, entry["file"]), set()).update(relevant(entry["command"]))

    def flags(path):
        nearest = next((folder for folder in path.parents if folder in of_folder), None)
        return standard + sorted(of_folder.get(nearest, set()) - set(standard))

    return flags


def folder_of(root, build, file):
    """The folder of the project for which the build compiles the file, which may be several files joined into one."""
    folder = pathlib.Path(file).parent
    if build in folder.parents and "CMakeFiles" in folder.parts:
        made = folder.relative_to(build).parts
        return root.joinpath(*made[: made.index("CMakeFiles")])
    return folder


def relevant(command):
    """The words of a compile command that decide which headers are found and what they mean."""
    words = shlex.split(command)
    for word, following in zip(words, [*words[1:], ""]):
        if word == "-isystem":
            yield f"-isystem{following}"
        elif word.startswith(("-I", "-D")) or word == "-fno-char8_t":
            yield word


def content_hash(root, path, flags):
    """Changes when the file, anything of ours it includes, or the way of compiling changes."""
    digest = hashlib.sha256("\0".join([str(root), *flags]).encode())
    waiting = [path]
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
