#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "use-cycle",
        .severity = Severity::error,
        .message = "{file} brings in itself, by way of the files that it uses",
        .why = "there is no order in which the two can be read",
        .cause = "A file after `use` is read before the file that asks for it. Here the chain of `use` "
                 "lines comes back to a file that is still being read: the boat brings in a library, and "
                 "the library brings in the boat.",
        .example = "language 1\n"
                   "use \"cycle.rig\"\n",
        .mend = "Take out the `use` line that leads back. A library of parts needs nothing of the boats "
                "that use it; what both need goes into a third file.",
    },
    CatalogueEntry{
        .slug = "too-many-files",
        .severity = Severity::error,
        .message =
            "too many files: a rig may consist of {files} files, and `use` may go {depth} files deep",
        .why = "a chain this long is more likely a slip than a rig",
        .cause = "A rig is read from one file and the files that it brings in. The bounds are far above "
                 "any boat; a program that writes rig files may have run away, or every part was given a "
                 "file of its own.",
        .example = "# the seventeenth file of a chain in which each brings in the next\n"
                   "language 1\n"
                   "use \"eighteenth.rig\"\n",
        .mend = "Put the parts of one maker or one boat into one file, and bring libraries in from the "
                "boat's own file instead of from one another.",
    },
    CatalogueEntry{
        .slug = "rig-too-large",
        .severity = Severity::error,
        .message = "with {file}, the files of this rig are together larger than {limit} MiB",
        .why = "a rig is some kilobytes of text; something else was brought in",
        .cause =
            "Each file is within its bound, but all files that `use` brings in are together far larger "
            "than any boat. A program that writes rig files may have run away.",
        .example = "# each of these is 4 MiB, and there are five of them\n"
                   "language 1\n"
                   "use \"parts-1.rig\"\n",
        .mend =
            "Bring in only what this boat needs. A library for many boats is divided into files by kind "
            "of part.",
    },
    CatalogueEntry{
        .slug = "too-many-declarations",
        .severity = Severity::error,
        .message = "the files of this rig state more than {limit} things; here is the first one too many",
        .why = "a rig of this size is more likely a slip than a boat",
        .cause = "Declarations, properties, points and the items of stacks are counted in all files "
                 "together. A boat with every part spelt out has some thousands of them; a program that "
                 "writes rig files may have run away.",
        .example = "# the same stay, twenty thousand times\n"
                   "stay stay-1 { line: hmpe-9 }\n",
        .mend = "One boat is one rig: divide a fleet into a file for each boat. A row of equal parts is "
                "written with its number, `40 x toggle-12`.",
    },
    CatalogueEntry{
        .slug = "use-outside-folder",
        .severity = Severity::error,
        .message = "{file} leads outside the folder of the boat's file",
        .why = "a rig that reaches outside its folder can not be handed on or kept as one",
        .cause = "The path after `use` begins at a folder of this computer, or goes up with `..` beyond "
                 "the folder of the file that was asked for, or it is empty. On another computer, or in "
                 "ten years, it would name another file or none.",
        .example = "language 1\n"
                   "use \"../other-boat/hardware.rig\"\n",
        .mend =
            "Copy the file next to the boat's file or into a folder below it, and name it from there: "
            "`use \"parts/hardware.rig\"`. To read a shared library where it is, name its folder on the "
            "command line: --allow-folder ../parts.",
    },
    CatalogueEntry{
        .slug = "language-line-missing",
        .severity = Severity::error,
        .message = "the first line does not say which language version the file is written in",
        .why = "words can get another meaning in a later version; with the line, this file keeps its "
               "numbers",
        .cause = "Every rig file begins with the line `language 1`, libraries of parts too. It is how an "
                 "old file goes on giving the same lengths.",
        .example = "boat \"Tern\" {\n"
                   "  beam: 3.20 m\n"
                   "}\n",
        .mend = "Put `language 1` on the first line. Comments may stand above it.",
    },
    CatalogueEntry{
        .slug = "language-line-not-first",
        .severity = Severity::error,
        .message = "the language line stands below other lines",
        .why = "what stands above it was read without knowing its version",
        .cause = "The line `language 1` must be the first thing in the file, before `use`, `let` and all "
                 "declarations. Only comments may stand above it.",
        .example = "let drop = 12 mm\n"
                   "language 1\n",
        .mend = "Move the line to the top of the file.",
    },
    CatalogueEntry{
        .slug = "language-line-twice",
        .severity = Severity::error,
        .message = "the file says twice which language version it is written in",
        .why = "two versions could disagree about what the file says",
        .cause = "There is one language line in a file, at the top. A second one often came along when "
                 "another file was pasted in.",
        .example = "language 1\n"
                   "language 1\n",
        .mend = "Take the second line out.",
    },
    CatalogueEntry{
        .slug = "language-version",
        .severity = Severity::error,
        .message = "this file is written in language version {version}; this compiler reads version 1",
        .why = "a word can mean something else in that version, and a length could come out wrong "
               "without a sign of it",
        .cause = "The number after `language` is not 1. Either the file was written for a newer compiler, "
                 "or the number is a slip.",
        .example = "language 2\n",
        .mend = "Use the compiler that the file was written for, or, if the number is a slip, write "
                "`language 1`.",
    },
};

} // namespace

std::span<const CatalogueEntry> file_findings() {
  return entries;
}

} // namespace sheerpole
