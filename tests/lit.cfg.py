"""How lit runs the tests below golden/: shell commands after RUN:, their output checked by FileCheck.

What a test may write, besides lit's own %s (the test file), %S (its folder) and %t (a name for its own files):

  %sheerpole      the executable of the build folder (--param build=DIR; build/dev when not given)
  %write_reference  the executable that writes the pages of docs made from tables
  %docs           the folder docs/
  %filecheck      FileCheck where blanks count and a pattern covers its whole line; follow it with %s
  %exits N CMD    runs CMD and fails unless it exits with exactly N
  %not CMD        runs CMD and fails unless it exits with something other than 0
  %same_everywhere  see tools/same_everywhere
  %examples       the folder of example boats
  %golden         the folder golden/, whose inputs/ holds files that are no tests themselves
  %reference      the folder reference/
  %protocol       the folder protocol/, with programs that speak to the compiler
  %programs       the folder of the executables of the build folder
"""

import os
import shutil

import lit.formats

config.name = "sheerpole"
config.test_format = lit.formats.ShTest(execute_external=True)
config.suffixes = [".test", ".rig"]
config.excludes = ["inputs", "tools", "parts", "frozen"]
config.test_source_root = os.path.dirname(os.path.abspath(__file__))

project = os.path.dirname(config.test_source_root)
build = os.path.abspath(lit_config.params.get("build", os.path.join(project, "build", "dev")))
config.test_exec_root = os.path.join(build, "golden")

golden = os.path.join(config.test_source_root, "golden")
sheerpole = os.path.join(build, "bin", "sheerpole")
if not os.access(sheerpole, os.X_OK):
    lit_config.fatal(f"there is no {sheerpole}; build it first, or name the build folder with --param build=DIR")


def llvm_tool(name):
    """The tool as Debian names it, or as anyone else does."""
    found = shutil.which(f"{name}-14") or shutil.which(name)
    if found is None:
        lit_config.fatal(f"{name} is not installed (Debian package llvm-14-tools)")
    return found


# Every test starts from one locale and one time zone; a test that is about either sets its own.
# The sanitizers leave with 99, which is no exit code of ours, so that no expected failure can hide one.
config.environment = {
    "PATH": os.environ["PATH"],
    "HOME": os.environ.get("HOME", "/"),
    "LC_ALL": "C",
    "TZ": "UTC",
    "ASAN_OPTIONS": "exitcode=99",
    "LSAN_OPTIONS": "exitcode=99",
    "UBSAN_OPTIONS": "exitcode=99:print_stacktrace=1",
    "TSAN_OPTIONS": "exitcode=99",
}

config.substitutions += [
    ("%sheerpole", sheerpole),
    ("%write_reference", os.path.join(build, "bin", "write_reference")),
    ("%docs", os.path.join(project, "docs")),
    ("%filecheck", llvm_tool("FileCheck") + " --strict-whitespace --match-full-lines"),
    ("%exits", os.path.join(golden, "tools", "exits")),
    ("%not", llvm_tool("not")),
    ("%same_everywhere", os.path.join(golden, "tools", "same_everywhere")),
    ("%examples", os.path.join(project, "examples")),
    ("%golden", golden),
    ("%reference", os.path.join(config.test_source_root, "reference")),
    ("%protocol", os.path.join(config.test_source_root, "protocol")),
    ("%programs", os.path.join(build, "bin")),
]
