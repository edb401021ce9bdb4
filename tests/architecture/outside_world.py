"""Disk, clock, environment, processes, threads, network and chance are reached from the rooms named here; a back end reaches none."""

import re

import cpp_text
import tree

NAME = "disk, clock and environment"

DISK = ["source", "driver", "editor"]
CLOCK = ["driver", "editor"]
ENVIRONMENT = ["driver", "editor"]
PROCESSES = ["driver/process"]
NETWORK = ["driver/watch"]
CHANCE = ["driver/watch"]
# Where there is none, in a page, base/in_threads does one thing after the other.
THREADS = ["base", "driver"]

HEADERS = {
    "fstream": DISK,
    "filesystem": [*DISK, "names", "service"],  # these join paths, which asks the disk nothing; see DISK_CALL
    "chrono": CLOCK,
    "ctime": CLOCK,
    "time.h": CLOCK,
    "sys/time.h": CLOCK,
    "sys/socket.h": NETWORK,
    "netdb.h": NETWORK,
    "netinet/in.h": NETWORK,
    "arpa/inet.h": NETWORK,
    "random": [],
    "thread": THREADS,
    "future": THREADS,
    "stop_token": THREADS,
    "condition_variable": THREADS,
}
CALLS = {
    "fopen": DISK,
    "freopen": DISK,
    "std::time": CLOCK,
    "clock_gettime": CLOCK,
    "gettimeofday": CLOCK,
    "getenv": ENVIRONMENT,
    "secure_getenv": ENVIRONMENT,
    "system": [],
    "popen": [],
    "fork": PROCESSES,
    "vfork": PROCESSES,
    "execve": PROCESSES,
    "execv": [],
    "execvp": [],
    "execl": [],
    "execlp": [],
    "posix_spawn": PROCESSES,
    "posix_spawnp": [],
    "socket": NETWORK,
    "getaddrinfo": NETWORK,
    "getrandom": CHANCE,
    "rand": [],
    "srand": [],
}
CALL = re.compile(r"(?<![\w.>])((?:std::)?(?:" + "|".join(name.replace("std::", "") for name in CALLS) + r"))\s*\(")
DISK_CALL = re.compile(r"\b(filesystem::(?!path\b)\w+)")
CHANCE_TYPE = re.compile(r"\b(random_device)\b")


def check(root, build):
    """Findings, one line of text each; build is not used."""
    findings = []
    for path in tree.files(root, ["compiler", "plugins"], (".cpp", ".hpp", ".h")):
        name = tree.shown(root, path)
        text = cpp_text.take_apart(tree.read(path))
        for include in text.includes:
            allowed = HEADERS.get(include.path)
            if allowed is not None and not stands_in(name, allowed):
                findings.append(f"{name}:{include.line}: <{include.path}> {only(allowed)}")
        for number, line in enumerate(text.code.split("\n"), 1):
            for match in CALL.finditer(line):
                called = match[1] if match[1] in CALLS else match[1].removeprefix("std::")
                # Plain time( is as likely a function of ours; with std:: it is the clock.
                if called in CALLS and not stands_in(name, CALLS[called]):
                    findings.append(f"{name}:{number}: {called}() {only(CALLS[called])}")
            for match in DISK_CALL.finditer(line):
                if not stands_in(name, DISK):
                    findings.append(f"{name}:{number}: {match[1]} {only(DISK)}")
            for match in CHANCE_TYPE.finditer(line):
                findings.append(f"{name}:{number}: {match[1]} gives other bytes each time")
    return findings


def stands_in(name, allowed):
    """Whether the file is below one of the allowed folders of compiler/."""
    return any(name.startswith(f"compiler/{folder}/") for folder in allowed)


def only(allowed):
    """How a message says where a thing may stand."""
    return f"belongs to {', '.join(allowed)} only" if allowed else "belongs nowhere in the compiler"
