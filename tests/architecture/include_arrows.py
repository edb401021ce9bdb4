"""Every include of compiler/ and plugins/ follows the table of who may include whom."""

import cpp_text
import tree

NAME = "include arrows"

# What each room may include itself; what those may include comes with them.
ROOMS = {
    "base": [],
    "statics": ["base"],
    "source": ["base"],
    "units": ["base"],
    "diagnostics": ["base", "source"],
    "limits": ["base", "units"],
    "kinds": ["base", "units", "limits"],
    "syntax": ["base", "source", "units", "diagnostics"],
    "names": ["syntax", "kinds"],
    "model": ["base", "units", "source", "limits"],
    "elaborate": ["names", "model", "kinds", "diagnostics"],
    "calculate": ["model", "units", "statics"],
    "wording": ["kinds", "model", "calculate"],
    "rules": ["model", "calculate", "wording", "diagnostics"],
    "results": ["model", "calculate", "wording", "diagnostics"],
    "backend": ["results", "wording", "kinds"],
    "service": ["names", "elaborate", "calculate", "wording", "rules", "results", "backend"],
}
# These see every room.
ALL_SEEING = ["driver"]
# The one file that may name a back end.
LISTS_BACK_ENDS = "compiler/driver/built_in_backends.cpp"
# What a back end that is a program of its own as well includes in its main.cpp, and nowhere else.
PLUGIN_MAIN = "driver/outside/plugin_main.hpp"
# Starting programs, by how its include begins, and who may: none of them reads what a rig file says.
STARTS_PROGRAMS = "driver/process/"
MAY_START_PROGRAMS = ["driver/process", "driver/outside", "driver/make_pdfs.cpp", "driver/seal", "driver/rig_argument.cpp"]

# A library, by how its include begins, and the folders below compiler/ that may use it.
LIBRARIES = {
    "fmt/": [room for room in [*ROOMS, *ALL_SEEING, "plugins"] if room != "base"],
    "nlohmann/": ["diagnostics", "results", "backend", "service", "plugins", "driver"],
    "CLI/": ["driver"],
    "pugixml.hpp": ["driver/pdf"],
    "sha2.h": ["base"],
    "fast_float/": ["units/shortest_digits.cpp"],
    "utf8proc.h": ["backend/process/file_name.cpp"],
    "qrcodegen/": ["backend/drawing/qr_code.cpp"],
    "Eigen/": ["statics"],
    "coin/": ["calculate/cutting"],
    "event2/": ["driver/watch/local_server.cpp"],
    "netinet/": ["driver/watch/local_server.cpp"],
    "valijson/": ["backend/process/outside_json.cpp"],
    "cairo.h": ["driver/pdf"],
    "cairo-ft.h": ["driver/pdf"],
    "cairo-pdf.h": ["driver/pdf"],
    "fontconfig/": ["driver/pdf"],
    "pango/": ["driver/pdf"],
    "antlr4-runtime": ["syntax/antlr"],
    "RigLexer.h": ["syntax/antlr"],
    "lexer_table.hpp": ["syntax/antlr/lexer_engine.cpp"],
    "RigParser.h": ["syntax/antlr"],
    "built_from.hpp": ["driver/version.cpp"],
}
SYSTEM_HEADERS = ["malloc.h", "unistd.h", "fcntl.h", "poll.h", "spawn.h", "signal.h", "sys/"]
TALKS_TO_SYSTEM = ["source", "driver"]
LIBRARIES |= {header: TALKS_TO_SYSTEM for header in SYSTEM_HEADERS}


def reachable(room):
    """The room and everything it may include."""
    if room in ALL_SEEING:
        return {*ROOMS, *ALL_SEEING}
    seen = {room}
    waiting = [room]
    while waiting:
        for other in ROOMS[waiting.pop()]:
            if other not in seen:
                seen.add(other)
                waiting.append(other)
    return seen


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = [
        f"compiler/{room}:1: the table has a room of this name, and there is none"
        for room in [*ROOMS, *ALL_SEEING]
        if not (root / "compiler" / room).is_dir()
    ]
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp", ".h")):
        name = tree.shown(root, path)
        top, _, inside = name.partition("/")
        room = inside.split("/")[0]
        if top == "compiler" and room not in ROOMS and room not in ALL_SEEING:
            findings.append(f"{name}:1: compiler/{room} is no room of the table")
            continue
        for include in cpp_text.take_apart(tree.read(path)).includes:
            reason = wrong(root, name, include)
            if reason:
                findings.append(f"{name}:{include.line}: {reason}")
    return findings


def below(place, folder):
    """Whether the place is this folder or file, or stands below it."""
    return place == folder or place.startswith(folder + "/")


def wrong(root, name, include):
    """Why the include may not stand in the file called name, or nothing."""
    path = include.path
    folders = name.split("/")
    inside = "/".join(folders[1:])
    if include.angled:
        for begin, allowed in LIBRARIES.items():
            if path.startswith(begin):
                place = "plugins" if folders[0] == "plugins" else inside
                here = any(below(place, folder) for folder in allowed)
                return None if here else f"<{path}> belongs to {', '.join(allowed)} only"
        if "/" in path or "." in path:
            return f"<{path}> is of no library of the table"
        return None

    if path.startswith("plugins/"):
        if name == LISTS_BACK_ENDS:
            return None
        if folders[0] == "plugins" and path.split("/")[1] == folders[1]:
            return None
        return f'"{path}": only {LISTS_BACK_ENDS} and the back end itself include a back end'
    if name.startswith("compiler/syntax/antlr/") and path.split("/")[-1].startswith(("RigLexer", "RigParser")):
        return None
    if not (root / "compiler" / path).is_file():
        return f'"{path}" is no file below compiler/ (paths start there, never at the including file)'
    if path == PLUGIN_MAIN and folders[0] == "plugins" and folders[2:] == ["main.cpp"]:
        return None
    if path.startswith(STARTS_PROGRAMS) and not any(below(inside, place) for place in MAY_START_PROGRAMS):
        return f'"{path}": programs are started by {", ".join(MAY_START_PROGRAMS)} only'
    may = reachable("backend") if folders[0] == "plugins" else reachable(folders[1])
    other = path.split("/")[0]
    if other not in may:
        return f'"{path}": {"/".join(folders[:2])} may not include {other}'
    return None
