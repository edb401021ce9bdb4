#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

// About programs outside that make papers: `build --outside`.
constexpr std::string_view left_out = "none of its papers is written, so that a part of them is not taken "
                                      "for all; those of the others are there";

constexpr std::array entries{
    CatalogueEntry{
        .slug = "outside-not-started",
        .severity = Severity::error,
        .message = "{name} can not be started: {reason}",
        .why = left_out,
        .cause = "The word after --outside is the path of a program, from the folder in which the command "
                 "is given. It is started as it is; it is not looked for anywhere else.",
        .example = "sheerpole build boat.rig --into out --outside mass_aloft.pi\n",
        .mend = "Write the path as it is, and make the file executable (chmod +x). A script says in its "
                "first line what reads it, for example #!/usr/bin/env python3.",
    },
    CatalogueEntry{
        .slug = "outside-late",
        .severity = Severity::error,
        .message = "{name} was not done after {seconds} s and was stopped",
        .why = left_out,
        .cause = "A program outside has a time for each answer, until it ends; 10 seconds when nothing "
                 "else is said. It also counts as late when it has answered but does not end.",
        .example = "sheerpole build boat.rig --into out --outside ./slow.py --outside-seconds 2\n",
        .mend = "Give it more time with --outside-seconds, or ask its author why it takes so long.",
    },
    CatalogueEntry{
        .slug = "outside-answer-large",
        .severity = Severity::error,
        .message = "{name} wrote more than {limit} MiB and was stopped",
        .why = left_out,
        .cause = "The answer of a program outside, all its files together, is longer than any paper for a "
                 "boat. Often it writes the same thing again and again.",
        .example = "while True: print(answer)\n",
        .mend = "Ask its author to mend it.",
    },
    CatalogueEntry{
        .slug = "outside-failed",
        .severity = Severity::error,
        .message = "{name} ended with {how}",
        .why = left_out,
        .cause = "A program outside ends with exit code 0 when it has answered. Any other end says that "
                 "something went wrong in it; what it wrote before that is not used.",
        .example = "sys.exit(1)\n",
        .mend = "Read what it says; when that does not help, tell its author, with the rig file.",
    },
    CatalogueEntry{
        .slug = "outside-not-json",
        .severity = Severity::error,
        .message = "the answer of {name} can not be read as JSON: {fault}",
        .why = left_out,
        .cause = "A program outside answers with one JSON object on its standard output and writes nothing "
                 "else there. A stray print is enough to spoil it.",
        .example = "print(\"here we go\")\n"
                   "print(json.dumps(answer))\n",
        .mend = "Write the answer alone to the standard output, and words for people to the error stream.",
    },
    CatalogueEntry{
        .slug = "outside-other-version",
        .severity = Severity::error,
        .message = "{name} answers in version {version}; this compiler speaks version {ours}",
        .why = left_out,
        .cause = "The number `version` of the answer says how it is built. An answer of another version is "
                 "not guessed at.",
        .example = "{\"version\": 2, \"files\": []}\n",
        .mend = "Use a program that speaks the version of this compiler.",
    },
    CatalogueEntry{
        .slug = "outside-answer-odd",
        .severity = Severity::error,
        .message = "the answer of {name} is not built as agreed, at {where}: {fault}",
        .why = left_out,
        .cause = "What an answer holds is written down in docs/backends/describe-reply.schema.json and "
                 "generate-reply.schema.json. Something is missing there, or is of another kind.",
        .example = "{\"version\": 1, \"files\": [{\"name\": \"masses.txt\"}]}\n",
        .mend = "Mend the program; docs/backends/outside.md shows a whole answer.",
    },
    CatalogueEntry{
        .slug = "outside-file-name",
        .severity = Severity::error,
        .message = "{name} wants to write `{file}`, which {fault}",
        .why = left_out,
        .cause = "Papers are written below the folder after --into and nowhere else. A name is relative, "
                 "has no part that begins with a dot, and holds no sign that a disk may not take.",
        .example = "{\"version\": 1, \"files\": [{\"name\": \"../masses.txt\", \"text\": \"\"}]}\n",
        .mend = "Mend the program: masses.txt, or masses/aloft.txt with a folder.",
    },
    CatalogueEntry{
        .slug = "outside-file-twice",
        .severity = Severity::error,
        .message = "{name} wants to write `{file}`, but {other}",
        .why = left_out,
        .cause = "Two papers would have one name, or names that are one on a disk that does not know "
                 "capitals, or one would be a folder of the other. The one that came first stays.",
        .example = "{\"version\": 1, \"files\": [{\"name\": \"cut-list.txt\", \"text\": \"\"}]}\n",
        .mend = "Give the paper another name; one that begins with the name of the back end is free.",
    },
    CatalogueEntry{
        .slug = "outside-says",
        .severity = Severity::note,
        .message = "{name} says: {words}",
        .why = "",
        .cause = "A program outside wrote something to its error stream: words for people that are no part "
                 "of its papers.",
        .example = "print(\"no mass is stated for wire-6\", file=sys.stderr)\n",
        .mend = "Read it; what it asks for, if anything, is between you and the program.",
    },
};

} // namespace

std::span<const CatalogueEntry> outside_findings() {
  return entries;
}

} // namespace sheerpole
