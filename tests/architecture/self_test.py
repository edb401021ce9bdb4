"""Shows every check a small project that is right and files that are wrong on purpose."""

import pathlib
import tempfile

import lone_files

RIGHT = {
    ".clang-format": "BasedOnStyle: LLVM\n",
    "README.md": "A project: [docs](docs/README.md#two-words-in-front), [the folder](docs), [outside](https://example.org/none.md).\n",
    "docs/README.md": "# Docs\n\n## Two words, `in` front\n\n![a picture](mast.svg) `[none](none.md)`\n\n```\n[none](none.md)\n```\n",
    "docs/mast.svg": "<svg/>\n",
    "build/dev/RigLexer.cpp": "// made by the build\n",
    "compiler/base/id.hpp": "#pragma once\n#include <vector>\n",
    "compiler/units/length.hpp": '#pragma once\n#include "base/id.hpp"\n#include <fmt/format.h>\n',
    "compiler/units/length.cpp": '#include "units/length.hpp"\n\n// Was std::stod once; never say a rig is safe.\n'
    "constexpr int million = 1'000'000; // it's\nconst char *text() { return \"unsafe // '%d'\"; }\n",
    "compiler/source/load.cpp": "#include <fstream>\n",
    "compiler/diagnostics/findings/contents": "value: Values\n  missing-unit\n  too-long\n",
    "compiler/diagnostics/findings/value/missing-unit.finding": "severity: error\n\n=== example boat.rig\ntoggle a 3\n\n"
    "=== says\nerror at boat.rig:1:10 (missing-unit)\n\n=== mended boat.rig\ntoggle a 3 mm\n",
    "compiler/diagnostics/findings/value/too-long.finding": "severity: note\ncommand: sheerpole check boat.rig --set a=1\n"
    "mended-command: sheerpole check boat.rig\n\n=== example boat.rig\nlanguage 1\n\n=== says\nnote (too-long)\n",
    "compiler/units/report.cpp": 'void diagnose(const char *slug);\n'
    'void report() { diagnose("missing-unit"); }\nauto slug = "too-long";\n',
    "compiler/model/rig.hpp": '#pragma once\n#include "units/length.hpp"\n',
    "compiler/driver/web/missing/algorithm": "constexpr bool all_of(int range) {\n  return range > 0;\n}\n",
    "compiler/model/reefed.cpp": "#include <algorithm>\n#include <vector>\nbool reefed(const std::vector<int> &all) {\n"
    "  return std::ranges::all_of(all, [](int one) { return one > 0; });\n}\n",
    "compiler/model/knot.hpp": "#pragma once\nnamespace sheerpole {\nstruct Knot {\n  int turns = 0;\n};\n} // namespace sheerpole\n",
    "compiler/results/checked_rig.hpp": '#pragma once\n#include "model/rig.hpp"\n',
    "compiler/backend/backend.hpp": '#pragma once\n#include "results/checked_rig.hpp"\n',
    "compiler/service/compile.hpp": '#pragma once\n#include "backend/backend.hpp"\n#include "elaborate/elaborate.hpp"\n',
    # The build makes them, and there is none here.
    "compiler/syntax/antlr/build_tree.cpp": "#ifdef SHEERPOLE_BUILT\n"
    '#include "RigParser.h"\n#include <RigLexer.h>\n#include <antlr4-runtime.h>\n#endif\n',
    "compiler/syntax/parse.hpp": "#pragma once\n",
    "compiler/calculate/cutting/search.hpp": "#pragma once\nclass ClpSimplex;\n",
    "compiler/calculate/cutting/search.cpp": '#include <coin/ClpSimplex.hpp>\nClpSimplex program; // a program of Clp\n',
    "compiler/statics/matrix.hpp": "#pragma once\n// Eigen::MatrixXd is in the .cpp.\n",
    "compiler/statics/matrix.cpp": "#if __has_include(<Eigen/Core>)\n#include <Eigen/Core>\nEigen::MatrixXd *matrix;\n#endif\n",
    "compiler/names/resolve.cpp": '#include "syntax/parse.hpp"\n#include <filesystem>\nstd::filesystem::path path;\n',
    "compiler/driver/built_in_backends.cpp": '#include "plugins/echo/echo.hpp"\n',
    "plugins/echo/echo.hpp": '#pragma once\n#include "backend/backend.hpp"\n#include "model/rig.hpp"\n',
    "plugins/echo/echo.cpp": '#include "plugins/echo/echo.hpp"\n#include "wording/papers/echo_words.hpp"\n'
    "int say(EchoPhrase phrase, int heard);\nint said = say(EchoPhrase::heard, 1);\n",
    "compiler/wording/papers/echo_words.hpp": "#pragma once\nenum class EchoPhrase {\n  heard,\n  unheard,\n};\n",
    "compiler/wording/papers/echo_words.cpp": '#include "wording/papers/echo_words.hpp"\nconst char *words(EchoPhrase phrase) {\n'
    '  switch (phrase) {\n  case EchoPhrase::heard:\n    return "it heard {}";\n  }\n  return nullptr;\n}\n',
    "plugins/echo/main.cpp": '#include "driver/outside/plugin_main.hpp"\n#include "plugins/echo/echo.hpp"\n',
    "compiler/driver/outside/plugin_main.hpp": "#pragma once\n",
    "compiler/driver/process/run_program.hpp": "#pragma once\n",
    "compiler/limits/limit.hpp": "#pragma once\n",
    "compiler/kinds/kind_row.hpp": "#pragma once\n",
    "compiler/elaborate/elaborate.hpp": "#pragma once\n",
    "compiler/wording/say.hpp": "#pragma once\n",
    "compiler/driver/process/run_program.cpp": "#include <unistd.h>\nauto child = fork();\n",
    "compiler/driver/outside/outside_backends.cpp": '#include "driver/process/run_program.hpp"\n',
    "compiler/rules/length_checks.cpp": "#include <array>\nstruct CheckRow {\n  const char *slug;\n  int run;\n};\nint f, g;\n"
    'std::array rows{CheckRow{"missing-unit", f}, CheckRow{"too-long", g}};\n',
    "tests/golden/checks/missing-unit.rig": '# RUN: show | %not grep "^missing-unit,.*,finding,"\n# CHECK:missing-unit,a,pass,12 mm\n',
    "tests/golden/checks/too-long.rig": '# RUN: show | %not grep "^too-long,.*,finding,"\n# CHECK:too-long,a,pass,12 mm\n',
    "tests/reference/long.cpp": "// data\n" * 700,
}

# For each check, by its NAME: files that are wrong, and what one finding of each must contain.
WRONG = {
    "layout and file names": [
        ("scripts/release.sh", "true\n", "scripts"),
        ("notes.txt", "\n", "notes.txt"),
        ("compiler/units/AngleType.hpp", "#pragma once\n", "AngleType.hpp"),
        ("compiler/base/string_utils.hpp", "#pragma once\n", "does not say what is inside"),
    ],
    "pages are reached and links lead somewhere": [
        ("docs/alone.md", "# Alone\n", "no page that is reached"),
        ("docs/alone.svg", "<svg/>\n", "no page that is reached"),
        ("docs/lost.md", "[gone](gone.md)\n", "there is no gone.md"),
        ("docs/out.md", "[out](../../out.md)\n", "there is no ../../out.md"),
        ("docs/deep.md", "[deep](README.md#three-words)\n", "has no heading #three-words"),
    ],
    "include arrows": [
        ("compiler/units/wrong_arrow.hpp", '#include "model/rig.hpp"\n', "may not include model"),
        ("compiler/names/wrong_arrow.cpp", '#include "model/rig.hpp"\n', "may not include model"),
        ("compiler/backend/wrong_arrow.cpp", '#include "syntax/parse.hpp"\n', "may not include syntax"),
        ("compiler/service/wrong_arrow.cpp", '#include "driver/process/run_program.hpp"\n', "started by"),
        ("compiler/backend/asks.cpp", '#include "service/compile.hpp"\n', "may not include service"),
        ("compiler/source/wrong_arrow.cpp", '#include "units/length.hpp"\n', "may not include units"),
        ("compiler/base/library.cpp", "#include <fmt/format.h>\n", "<fmt/format.h>"),
        ("compiler/rules/library.cpp", "#include <CLI/CLI.hpp>\n", "<CLI/CLI.hpp>"),
        ("compiler/model/library.cpp", "#include <nlohmann/json.hpp>\n", "<nlohmann/json.hpp>"),
        ("compiler/driver/library.cpp", "#include <pugixml.hpp>\n", "<pugixml.hpp>"),
        ("compiler/names/generated.cpp", "#include <RigParser.h>\n", "<RigParser.h>"),
        ("compiler/syntax/runtime.cpp", "#include <antlr4-runtime/Token.h>\n", "<antlr4-runtime/Token.h>"),
        ("compiler/calculate/plan.cpp", "#include <coin/CbcModel.hpp>\n", "<coin/CbcModel.hpp>"),
        ("compiler/calculate/matrix.cpp", "#include <Eigen/Core>\n", "<Eigen/Core>"),
        ("compiler/statics/wrong_arrow.cpp", '#include "units/length.hpp"\n', "may not include units"),
        ("compiler/model/unknown.cpp", "#include <boost/any.hpp>\n", "no library of the table"),
        ("compiler/model/relative.cpp", '#include "rig.hpp"\n', "no file below compiler/"),
        ("compiler/driver/run.cpp", '#include "plugins/echo/echo.hpp"\n', "include a back end"),
        ("plugins/other/other.cpp", '#include "plugins/echo/echo.hpp"\n', "include a back end"),
        ("plugins/echo/peeks.cpp", '  #  include "names/scope.hpp"\n', "names/scope.hpp"),
        ("plugins/echo/asks.cpp", '#include "driver/outside/plugin_main.hpp"\n', "may not include driver"),
        ("compiler/driver/starts.cpp", '#include "driver/process/run_program.hpp"\n', "programs are started by"),
        ("compiler/backend/process/judge.cpp", "#include <valijson/validator.hpp>\n", "<valijson/validator.hpp>"),
        ("compiler/backend/process/run.cpp", "#include <unistd.h>\n", "<unistd.h>"),
        ("compiler/gadgets/gadget.hpp", "#pragma once\n", "no room of the table"),
    ],
    "a provoking example and a clean golden for each check": [
        ("compiler/rules/joint_checks.cpp", 'CheckRow rows[]{{"no", f}, CheckRow{"pin-loose", f}};\n', "an example that provokes it"),
        ("compiler/rules/joint_checks.cpp", 'CheckRow rows[]{CheckRow{"pin-loose", f}};\n', "in which it passes"),
        ("tests/golden/checks/missing-unit.rig", '# | %not grep "^missing-unit,.*,finding,"\n# CHECK:missing-unit,a,not checked,b\n', "does not expect that"),
        ("tests/golden/checks/too-long.rig", "# CHECK:too-long,a,pass,b\n", "does not forbid"),
    ],
    "one name, one type": [
        ("compiler/names/scope.hpp", "#pragma once\nstruct Scope {\n};\n", "name of another type"),
        ("compiler/model/scope.hpp", "#pragma once\nclass Scope final : Base {\n};\n", "name of another type"),
    ],
    "helpers of joined files": [
        ("compiler/units/one.cpp", "namespace sheerpole {\nnamespace {\nint twice(int x) {\n  return 2 * x;\n}\n} // namespace\n} // namespace sheerpole\n", "twice(int)"),
        ("compiler/units/other.cpp", "namespace sheerpole {\nnamespace {\nint twice(int y) {\n  return y + y;\n}\n} // namespace\n} // namespace sheerpole\n", "twice(int)"),
        ("compiler/units/pairs.cpp", "namespace sheerpole {\nnamespace {\nconstexpr int halved[] = {1, 2};\n} // namespace\n} // namespace sheerpole\n", "and none here"),
        ("compiler/units/halves.cpp", "namespace sheerpole {\nnamespace {\nint halved(int x) {\n  return x / 2;\n}\n} // namespace\n} // namespace sheerpole\n", "a function here and none in"),
        ("compiler/units/tied.cpp", "namespace sheerpole {\nnamespace {\nstruct Knot {\n  int loops = 0;\n};\n} // namespace\n} // namespace sheerpole\n", "name of a type as well"),
    ],
    "kinds are no strings": [
        ("compiler/rules/kind.cpp", 'bool is(const Part& part) { return part.kind == "lashing"; }\n', "is a type"),
        ("plugins/echo/term.cpp", 'bool is(const Term& term) { return term.name.ends_with("aloft"); }\n', "is a type"),
    ],
    "no English outside wording": [
        ("compiler/calculate/say.cpp", 'auto how = " is not stated";\n', "is English"),
        ("compiler/model/say.cpp", 'auto how = "from the file";\n', "is English"),
    ],
    "the words of papers stand in tables": [
        ("plugins/echo/says.cpp", 'auto how = "is not stated";\n', "is said by a paper"),
        ("compiler/backend/says.cpp", 'auto how = "Lengths of it";\n', "is said by a paper"),
        (
            "plugins/echo/lacks.cpp",
            '#include "wording/papers/echo_words.hpp"\nint say(EchoPhrase phrase);\nint said = say(EchoPhrase::heard);\n',
            "asks for 1 arguments, here are 0",
        ),
        (
            "compiler/wording/papers/echo_words.cpp",
            '#include "wording/papers/echo_words.hpp"\nconst char *words(EchoPhrase phrase) {\n  switch (phrase) {\n'
            '  case EchoPhrase::heard:\n    return "it heard {}";\n  case EchoPhrase::unheard:\n    return "nothing";\n  }\n'
            "  return nullptr;\n}\n",
            "nobody says EchoPhrase::unheard",
        ),
    ],
    "files are concepts": [
        (f"compiler/units/dust_{number}.hpp", "#pragma once\n", "headers under 25 lines") for number in range(61)
    ],
    "ANTLR only in syntax/antlr": [
        ("compiler/syntax/parse.cpp", "antlr4::Token *token;\n", "antlr4"),
        ("compiler/names/resolve_uses.cpp", '#include "syntax/antlr/build_tree.hpp"\n', "syntax/antlr/build_tree.hpp"),
        ("compiler/driver/tokens.cpp", "class RigLexer;\n", "RigLexer"),
    ],
    "COIN-OR only in calculate/cutting": [
        ("compiler/calculate/plan_spools.cpp", "#include <coin/ClpSimplex.hpp>\n", "coin/ClpSimplex.hpp"),
        ("compiler/calculate/cutting/program.hpp", "#pragma once\n#include <coin/CbcModel.hpp>\n", "coin/CbcModel.hpp"),
        ("plugins/echo/solve.cpp", "CbcModel *model;\n", "CbcModel"),
    ],
    "Eigen only in statics": [
        ("compiler/calculate/solve.cpp", "#include <Eigen/Dense>\n", "Eigen/Dense"),
        ("compiler/statics/factors.hpp", "#pragma once\n#include <Eigen/Core>\n", "Eigen/Core"),
        ("plugins/echo/invert.cpp", "Eigen::MatrixXd *matrix;\n", "names Eigen"),
    ],
    "disk, clock and environment": [
        ("compiler/driver/spawn.cpp", "auto child = fork();\n", "fork() belongs to driver/process"),
        ("compiler/driver/find.cpp", "int gone = execvp(name, words);\n", "execvp() belongs nowhere"),
        ("plugins/echo/disk.cpp", "#include <fstream>\n", "<fstream>"),
        ("plugins/echo/folder.cpp", "#include <filesystem>\n", "<filesystem>"),
        ("plugins/echo/clock.cpp", "#include <chrono>\n", "<chrono>"),
        ("compiler/calculate/threads.cpp", "#include <thread>\n", "<thread>"),
        ("plugins/echo/date.cpp", "#include <ctime>\n", "<ctime>"),
        ("plugins/echo/environment.cpp", 'auto home = std::getenv("HOME");\n', "getenv"),
        ("plugins/echo/network.cpp", "#include <sys/socket.h>\n", "<sys/socket.h>"),
        ("compiler/names/there.cpp", "bool there = std::filesystem::exists(path);\n", "filesystem::exists"),
        ("compiler/calculate/now.cpp", "auto now = std::time(nullptr);\n", "std::time"),
        ("compiler/rules/dice.cpp", "std::random_device dice;\n", "random_device"),
        ("compiler/model/open.cpp", 'auto file = fopen("rig", "r");\n', "fopen"),
    ],
    "the page's library has the algorithms over ranges": [
        ("compiler/units/counts.cpp", "#include <algorithm>\n#include <vector>\nauto odd(std::vector<int>& all) {\n"
         "  return std::ranges::count_if(all, [](int one) { return one % 2 == 1; });\n}\n", "count_if"),
    ],
    "numbers without locale": [
        ("compiler/units/read.cpp", "double x = std::stod(text);\n", "stod"),
        ("compiler/units/read_c.cpp", "double x = strtod(text, nullptr);\n", "strtod"),
        ("compiler/units/read_a.cpp", "double x = atof(text);\n", "atof"),
        ("compiler/units/wide.cpp", "long double x = 0;\n", "long double"),
        ("compiler/driver/start.cpp", 'void start() { setlocale(LC_ALL, ""); }\n', "setlocale"),
        ("plugins/echo/stream.cpp", "std::ostringstream out;\n", "ostringstream"),
        ("plugins/echo/header.cpp", "#include <sstream>\n", "<sstream>"),
        ("compiler/base/print.cpp", 'std::fprintf(stderr, "%.3f", x);\n', "printf"),
        ("compiler/units/grouped.cpp", 'fmt::format("{:Lf}", x);\n', "format field"),
    ],
    "no verdicts in the texts": [
        ("compiler/rules/verdict.cpp", 'auto text = "this rig is safe";\n', "safe"),
        ("plugins/echo/stamp.cpp", 'auto text = R"(Approved, by whom)";\n', "Approved"),
        ("compiler/driver/seal.cpp", 'auto text = "certified"; // a seal\n', "certified"),
    ],
    "finding slugs": [
        ("compiler/rules/report.cpp", 'void f() { diagnose("no-words"); }\n', "no-words has no file"),
        ("compiler/diagnostics/findings/rig/idle.finding", "severity: error\n", "idle is never reported"),
        ("compiler/diagnostics/findings/xtra/missing-unit.finding", "severity: error\n", "stands in"),
    ],
    "an example for each finding": [
        ("compiler/diagnostics/findings/rig/unseen.finding", "severity: error\n", "unseen has no example"),
        ("compiler/diagnostics/findings/contents", "value: Values\n  missing-unit\n  too-long\n  too-long\n", "names value/too-long 2 times"),
        ("compiler/diagnostics/findings/rig/not-said.finding", "severity: error\n\n=== example a\n=== says\nnote (not-said)\n",
         "does not hold not-said with its severity"),
        ("compiler/diagnostics/findings/rig/not-mended.finding", "severity: error\n\n=== example a\n", "no mended example"),
        ("compiler/diagnostics/findings/rig/as-it-was.finding", "severity: error\n\n=== example a\nb\n=== mended a\nb\n",
         "is the example itself"),
    ],
    "file length": [
        ("compiler/units/long.cpp", "// line\n" * 601, "601 lines"),
        ("tests/unit/units/long_test.py", "pass\n" * 601, "601 lines"),
        ("grammar/Long.g4", "//\n" * 700, "700 lines"),
    ],
    "no generated code kept": [
        ("compiler/syntax/antlr/RigParser.cpp", "int x;\n", "RigParser.cpp"),
        ("grammar/Rig.interp", "\n", "Rig.interp"),
        ("compiler/syntax/antlr/tokens.hpp", "// Generated from Tokens.g4 by ANTLR 4\n", "tokens.hpp"),
    ],
    "clang-format": [
        ("compiler/units/untidy.cpp", "int   x ;\n", "untidy.cpp"),
    ],
    "files compile alone": [
        ("compiler/base/needs_string.hpp", "#pragma once\ninline std::string name;\n", "needs_string.hpp"),
        ("plugins/echo/needs_other.hpp", "#pragma once\ninline sheerpole::Missing missing;\n", "needs_other.hpp"),
        ("compiler/base/counts.cpp", "std::size_t count() { return 0; }\n", "counts.cpp"),
    ],
    "what is used is included": [
        ("compiler/base/sorts.cpp", "#include <vector>\nvoid sorts(std::vector<int>& all) { std::sort(all.begin(), all.end()); }\n",
         "uses std::sort without <algorithm>"),
        ("compiler/model/ties.cpp", "namespace sheerpole {\nint turns(const Knot& knot) { return knot.turns; }\n}\n",
         "uses Knot without compiler/model/knot.hpp"),
    ],
    "namespaces of tests": [
        ("tests/unit/units/length_test.cpp", "namespace sheerpole {\n}\n", "namespace sheerpole::length_test"),
        ("tests/unit/units/angle_test.cpp", "int degrees = 0;\n", "namespace sheerpole::angle_test"),
    ],
}


def outcomes(checks):
    """Yields (name of the case, findings against the check itself). Every planted file is compiled, whatever the share."""
    lone_files.one_in = 1
    for check in checks:
        yield f"self-test: {check.NAME}: says nothing of what is right", silent_on_right(check)
        yield f"self-test: {check.NAME}: reports what is wrong", reports_wrong(check)


def silent_on_right(check):
    """What the check says of a project without fault."""
    with tempfile.TemporaryDirectory() as folder:
        root = pathlib.Path(folder).resolve()
        write(root, RIGHT)
        return [f"says: {finding}" for finding in check.check(root, root / "build" / "dev")]


def reports_wrong(check):
    """Which of the planted faults the check misses. All lie in one project, as they would at their worst."""
    planted = WRONG.get(check.NAME, [])
    if not planted:
        return ["no fault is planted for this check"]
    with tempfile.TemporaryDirectory() as folder:
        root = pathlib.Path(folder).resolve()
        write(root, RIGHT | {name: text for name, text, _ in planted})
        findings = check.check(root, root / "build" / "dev")
        missed = []
        for name, _, fragment in planted:
            top = name.split("/")[0]
            if not any(found.startswith((name, top + ":")) and fragment in found for found in findings):
                missed.append(f"misses {name} ({fragment})")
        surplus = [found for found in findings if not found.startswith(tuple(n for n, _, _ in planted))
                   and not any(found.startswith(n.split("/")[0] + ":") for n, _, _ in planted)]
        return missed + [f"also says: {found}" for found in surplus]


def write(root, texts):
    """Writes the files below root."""
    for name, text in texts.items():
        path = root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
