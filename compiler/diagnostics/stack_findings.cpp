#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "stack-missing",
        .severity = Severity::error,
        .message = "{stay} has no stack",
        .why = "what it is made of is not known, so there is no body to cut",
        .cause = "A stay holds a block `stack` that names, from aloft to deck, every part between its two "
                 "pins and the line itself.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "}\n",
        .mend = "Write the stack, with one line for each part: `stack { … }`.",
    },
    CatalogueEntry{
        .slug = "line-missing",
        .severity = Severity::error,
        .message = "the stack of {stay} has no `line` in it",
        .why = "it would be hardware only, with nothing to cut",
        .cause = "One line of the stack is the word `line`: the rope or the wire, where it sits between "
                 "the parts. It takes what is left of the pin-to-pin length.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm\n"
                   "}\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    toggle-12\n"
                   "  }\n"
                   "}\n",
        .mend = "Write `line` into the stack where the rope or the wire sits.",
    },
    CatalogueEntry{
        .slug = "no-free-line",
        .severity = Severity::error,
        .message = "every `line` in the stack of {stay} has a length of its own",
        .why = "the lengths of the stack are then all fixed, and nothing takes up what is left of the "
               "pin-to-pin length",
        .cause = "A stay with insulators has several bodies. All but one of them state a length, and that "
                 "one takes what is left.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line (length: 455 mm)\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the length off the one that is cut last, to fit.",
    },
    CatalogueEntry{
        .slug = "two-free-lines",
        .severity = Severity::error,
        .message = "the stack of {stay} has two lines without a length",
        .why = "what is left can be shared between the two in any way, so neither can be cut",
        .cause = "Exactly one `line` of a stack takes what is left of the pin-to-pin length. All others "
                 "state their own.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "insulator egg {\n"
                   "  length: 90 mm\n"
                   "}\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "    egg\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "State the length of one of them: `line (length: 455 mm)`.",
    },
    CatalogueEntry{
        .slug = "line-counted",
        .severity = Severity::error,
        .message = "the line of {stay} is written more than once with a number",
        .why = "two lines of one length are two bodies, and each needs its own length",
        .cause = "`2 x toggle-12` repeats a part. A line can not be repeated like that.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    2 x line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the number out, or write each line with its own length.",
    },
    CatalogueEntry{
        .slug = "adjuster-not-set",
        .severity = Severity::error,
        .message = "{part} in {stay} has no setting",
        .why = "it can be {shortest} to {longest} mm long: the cut could be wrong by {range} mm",
        .cause = "Shops deliver adjusters open by a half, five eighths, two thirds or three quarters; "
                 "there is no usual setting to fall back on. How far it is open decides the length of the "
                 "body, so it has to be stated.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "turnbuckle bottle-12 {\n"
                   "  shortest: 265 mm\n"
                   "  longest: 395 mm\n"
                   "}\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "    bottle-12\n"
                   "  }\n"
                   "}\n",
        .mend = "State it behind the part: `open: 50 %` (0 % is closed, 100 % open to the last thread "
                "that may be used), or the length as set; for a lashing its `gap`.",
    },
    CatalogueEntry{
        .slug = "adjuster-set-twice",
        .severity = Severity::error,
        .message = "{part} in {stay} is set twice",
        .why = "two settings are two lengths, and the cut follows from one of them",
        .cause = "An adjuster is set either as a share of its range, `open`, or by its length.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "turnbuckle bottle-12 {\n"
                   "  shortest: 265 mm\n"
                   "  longest: 395 mm\n"
                   "}\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "    bottle-12 (open: 50 %, length: 330 mm)\n"
                   "  }\n"
                   "}\n",
        .mend = "Keep the one that you will measure when it is fitted.",
    },
    CatalogueEntry{
        .slug = "part-at-both-ends",
        .severity = Severity::error,
        .message = "{part}, a {kind}, is at both ends of {stay}",
        .why = "it is one fitting of the boat: the stay would begin and end at the same pin",
        .cause = "A tang or a chainplate belongs to the boat and stands at the first or the last line of a "
                 "stack. The same one was written at both: usually a line was copied, and the name at the "
                 "deck end not changed.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "tang tang-10 {\n"
                   "  lower: jaw (gap: 9 mm)\n"
                   "}\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    tang-10\n"
                   "    line\n"
                   "    tang-10\n"
                   "  }\n"
                   "}\n",
        .mend = "Write the name of the fitting that is really at that end.",
    },
    CatalogueEntry{
        .slug = "boat-fitting-inside",
        .severity = Severity::error,
        .message = "{part}, a {kind}, stands in the middle of {stay}",
        .why = "a stay ends at a fitting of the boat; what comes behind it would be another stay",
        .cause = "A tang or a chainplate belongs to the boat. It stands at the first or at the last line "
                 "of a stack, and pin-to-pin begins or ends at its pin.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "tang tang-10 {\n"
                   "  lower: jaw (gap: 9 mm)\n"
                   "}\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm\n"
                   "}\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "    tang-10\n"
                   "    toggle-12\n"
                   "  }\n"
                   "}\n",
        .mend = "Put it first or last, or use a `link` if it is a plate that hangs in the stay.",
    },
};

} // namespace

std::span<const CatalogueEntry> stack_findings() {
  return entries;
}

} // namespace sheerpole
