"""Every file compiles alone.

The order of includes must never matter, and a build that joins several files to one must not hide that one of them lacks an
include. A header that a file of its own name includes first is compiled with that file. The files of the tests are not
compiled here: most of their time goes into the test libraries.

Most of the work would be to read the same headers hundreds of times, so a few of those are read once. A file is compiled
after one of them only when its own includes reach all of it: includes stand above everything else, so each line of the
file sees the same declarations as when it is compiled alone, and what it includes is itself looked at here.
"""

import concurrent.futures
import functools
import hashlib
import json
import pathlib
import re
import shlex
import subprocess
import tempfile

import cpp_text
import tree

NAME = "files compile alone"
AT_ONCE = 2
# How many files of ours there are for one that is looked at, chosen by what is in it: each change of a file draws anew.
one_in = 1
# The longest first; each is written as in an #include.
READ_ONCE = [
    ["service/compile.hpp", "backend/backend.hpp"],
    ["backend/backend.hpp"],
    ["service/compile.hpp"],
    ["elaborate/evaluator.hpp"],
    ["rules/by_side.hpp"],
    ["backend/table/rig_tables.hpp"],
    ["results/checked_rig.hpp"],
    ["diagnostics/sink.hpp", "calculate/derived.hpp"],
    ["calculate/derived.hpp"],
    ["diagnostics/sink.hpp", "model/rig.hpp"],
    ["model/rig.hpp"],
    ["names/resolved_tree.hpp"],
    ["diagnostics/sink.hpp"],
    ["<string>", "<vector>", "<optional>"],
    ["<string>", "<vector>"],
]
# Under so many it is quicker to read them each time.
WORTH_READING_ONCE = 4


def check(root, build):
    """Findings, one line of text a file. What compiled is remembered in build, by content."""
    flags_of = compile_flags(root, build)
    cache = build / "lone_files"
    cache.mkdir(parents=True, exist_ok=True)
    version = subprocess.run(["c++", "--version"], capture_output=True, text=True, check=True).stdout
    reached_from = Reached(root)
    waiting = {}
    for path in to_compile(root):
        if path.suffix == ".cpp" and built_one_by_one(build):
            continue
        if int(hashlib.sha256(tree.read(path).encode()).hexdigest()[:8], 16) % one_in:
            continue
        mark = cache / content_hash(root, path, [version, *flags_of(path)], reached_from)
        if not mark.exists():
            waiting[path] = mark

    def alone(path, read_already):
        run = compiled(root, [*flags_of(path), "-fsyntax-only", *read_already, "-x", "c++", "-"], f'#include "{path}"\n')
        if run.returncode == 0:
            waiting[path].touch()
            return None
        first = next((line for line in run.stderr.split("\n") if "error:" in line), run.stderr.strip())
        return f"{tree.shown(root, path)}:1: does not compile alone: {first}"

    with tempfile.TemporaryDirectory() as folder, concurrent.futures.ThreadPoolExecutor(AT_ONCE) as pool:
        read_already = precompiled(root, pathlib.Path(folder), waiting, flags_of, reached_from, pool)
        return [finding for finding in pool.map(lambda path: alone(path, read_already.get(path, [])), waiting) if finding]


@functools.lru_cache(None)
def built_one_by_one(build):
    """Whether the build has compiled each source alone already."""
    settings = build / "CMakeCache.txt"
    return settings.is_file() and not re.search(r"^CMAKE_UNITY_BUILD:\w+=(ON|1|TRUE)$", tree.read(settings), re.MULTILINE)


def compiled(root, flags, text):
    """The compiler's run over this text."""
    return subprocess.run(["c++", *flags], input=text, cwd=root, capture_output=True, text=True, check=False)


def precompiled(root, folder, paths, flags_of, reached_from, pool):
    """From a file to the words that put before it what has been read already; those with none are left out."""
    groups = {}
    for path in paths:
        reached = reached_from(path)
        for number, wanted in enumerate(READ_ONCE):
            if all(name in reached if name.startswith("<") else root / "compiler" / name in reached for name in wanted):
                # Switches that change the language, and names that are defined, make another reading.
                key = (number, tuple(word for word in flags_of(path) if word.startswith(("-f", "-D"))))
                groups.setdefault(key, []).append(path)
                break

    def read(group):
        number_of_group, ((number, _), members) = group
        if len(members) < WORTH_READING_ONCE:
            return {}
        once = folder / f"{number_of_group}.hpp"
        names = [name if name.startswith("<") else f'"{name}"' for name in READ_ONCE[number]]
        once.write_text("".join(f"#include {name}\n" for name in names))
        # Where it does not compile, or is no good for some file, it is simply read as the text that it is.
        compiled(root, [*flags_of(members[0]), "-x", "c++-header", str(once), "-o", f"{once}.gch"], "")
        return {member: ["-include", str(once)] for member in members}

    return {path: words for part in pool.map(read, enumerate(groups.items())) for path, words in part.items()}


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


class Reached:
    """What a file of ours includes and what that includes in turn: paths of ours and, as they are written, <names>."""

    def __init__(self, root):
        self.places = (root / "compiler", root, root / "tests")
        self.includes = functools.lru_cache(None)(self.includes)

    def includes(self, path):
        found = []
        for include in cpp_text.take_apart(tree.read(path)).includes:
            if include.angled:
                found.append(f"<{include.path}>")
                continue
            for place in (*self.places, path.parent):
                if (place / include.path).is_file():
                    found.append(place / include.path)
                    break
        return found

    def __call__(self, path):
        """In no order; without the file itself unless it includes itself."""
        waiting = [path]
        seen = set()
        while waiting:
            for found in self.includes(waiting.pop()):
                if found not in seen:
                    seen.add(found)
                    if isinstance(found, pathlib.Path):
                        waiting.append(found)
        return seen


def content_hash(root, path, flags, reached_from):
    """Changes when the file, anything of ours it includes, or the way of compiling changes."""
    digest = hashlib.sha256("\0".join([str(root), *flags]).encode())
    ours = {path, *(found for found in reached_from(path) if isinstance(found, pathlib.Path))}
    for one in sorted(ours):
        digest.update(f"\0{one}\0{tree.read(one)}".encode())
    return digest.hexdigest()
