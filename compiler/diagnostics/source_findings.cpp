#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "file-not-found",
        .severity = Severity::error,
        .message = "there is no file {file}",
        .why = "what it should say about the rig is missing: points, parts or the boat itself",
        .cause =
            "The file named on the command line or after `use` is not there. The path after `use` starts "
            "from the folder of the file that says it, not from the folder in which the command was typed. "
            "Capital and small letters are different letters.",
        .example = "language 1\n"
                   "use \"hardwear.rig\"\n",
        .mend =
            "Look at the spelling of the name and of the folders before it, or move the file to where it "
            "is looked for.",
    },
    CatalogueEntry{
        .slug = "file-not-readable",
        .severity = Severity::error,
        .message = "the file {file} is there but can not be read",
        .why = "nothing of what it says about the rig is known",
        .cause =
            "The file exists, but this user may not read it, or the disk or the network failed while it "
            "was read.",
        .example = "language 1\n"
                   "use \"locked-hardware.rig\"\n",
        .mend = "Give yourself the right to read it, or copy it to a disk that works, and run again.",
    },
    CatalogueEntry{
        .slug = "file-is-folder",
        .severity = Severity::error,
        .message = "{file} is a folder, not a rig file",
        .why = "nothing of what it should say about the rig is known",
        .cause =
            "A rig file was expected and the path leads to a folder. Often the name of the file after the "
            "folder was left out.",
        .example = "language 1\n"
                   "use \"hardware\"\n",
        .mend = "Name the file inside it, for instance `use \"hardware/turnbuckles.rig\"`.",
    },
    CatalogueEntry{
        .slug = "file-too-large",
        .severity = Severity::error,
        .message = "the file {file} is larger than 4 MiB and was not read",
        .why = "a rig is some kilobytes of text; this is likely another file",
        .cause =
            "Rig files are limited to 4 MiB, so that a wrong file, a picture for instance, is not read as "
            "a rig. A boat with every part spelt out stays far below that.",
        .example = "language 1\n"
                   "use \"photo-of-the-masthead.jpg\"\n",
        .mend = "Look whether this is the file you meant. A large parts library can be split into several "
                "files, each brought in by a `use` of its own.",
    },
    CatalogueEntry{
        .slug = "file-not-utf8",
        .severity = Severity::error,
        .message = "the file {file} is not UTF-8 text; the first wrong byte is in line {line}",
        .why = "a sign saved in another encoding could be read as another number or another name",
        .cause =
            "A rig file is plain text in the encoding UTF-8. This one holds bytes that are not: an editor "
            "saved it in an older encoding, or it is not a plain text at all. Fraction signs, degree "
            "signs, "
            "curly quotes and letters with accents are where it shows.",
        .example = "# saved in an older encoding, where the sign for one half is the single byte BD:\n"
                   "use \"parts-\xC2\xBD-inch.rig\"\n",
        .mend =
            "Open it in the editor, save it again as UTF-8, then read the signs that are not plain letters "
            "once more: do they still say what you meant?",
    },
    CatalogueEntry{
        .slug = "line-too-long",
        .severity = Severity::error,
        .message = "this line is longer than {limit} bytes; the file was not read",
        .why = "nobody can look through such a line, so a slip in it would stay",
        .cause =
            "Lines of rig files may have 4 000 bytes, which is some forty lines of a screen. "
            "A line beyond that was written by a program, or the line ends of the file have been lost.",
        .example = "# more points in one line than anybody can look through\n"
                   "stay forestay { path: a > b > c > d }\n",
        .mend = "Break the line up: a block has one property on each line, and inside parentheses a line "
                "may end behind any comma.",
    },
    CatalogueEntry{
        .slug = "too-many-words",
        .severity = Severity::error,
        .message =
            "the files of this rig have more than {limit} words and signs together; the rest was not "
            "read",
        .why = "a rig of this size is more likely a slip than a boat",
        .cause = "A boat with every part spelt out has some ten thousand words, numbers and signs. The "
                 "bound is far above that, and keeps a file that a program has filled by mistake from "
                 "filling the computer too.",
        .example = "# the same line, a hundred thousand times\n"
                   "let packing = 3 mm\n",
        .mend = "Look at the end of the file: what is repeated there? One boat is one rig; a fleet in one "
                "file is divided into a file for each boat.",
    },
};

} // namespace

std::span<const CatalogueEntry> source_findings() {
  return entries;
}

} // namespace sheerpole
