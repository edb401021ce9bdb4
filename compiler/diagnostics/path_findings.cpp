#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "path-too-short",
        .severity = Severity::error,
        .message = "the path of {stay} has only one point",
        .why = "a length goes from one point to another",
        .cause = "The path names the points that the stay goes through, from aloft to deck, with `>` "
                 "between them. The first and the last are its pins.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "points {\n"
                   "  masthead: (0 m, 0 m, 12 m)\n"
                   "  strut-end: (1 m, 0 m, 6 m)\n"
                   "  stem: (4 m, 0 m, 1 m)\n"
                   "}\n"
                   "stay forestay {\n"
                   "  path: masthead\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Write at least the two ends: `masthead > stem`.",
    },
    CatalogueEntry{
        .slug = "path-repeats-point",
        .severity = Severity::error,
        .message = "the path of {stay} goes from {point} to {point} itself",
        .why = "the piece between them has no length; another point was meant",
        .cause = "The same point stands twice in a row.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "points {\n"
                   "  masthead: (0 m, 0 m, 12 m)\n"
                   "  strut-end: (1 m, 0 m, 6 m)\n"
                   "  stem: (4 m, 0 m, 1 m)\n"
                   "}\n"
                   "stay forestay {\n"
                   "  path: masthead > strut-end free > strut-end free > stem\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take one of them out, or write the point that is meant.",
    },
    CatalogueEntry{
        .slug = "path-goes-on",
        .severity = Severity::error,
        .message = "the path of {stay} goes on behind a point at which it `ends`",
        .why = "two pieces with an end between them are cut apart: they are two stays",
        .cause = "At a spreader tip the line runs through `free`, is `clamped`, or `ends` there. If it "
                 "ends, what goes on below is another stay with a stack of its own.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "points {\n"
                   "  masthead: (0 m, 0 m, 12 m)\n"
                   "  strut-end: (1 m, 0 m, 6 m)\n"
                   "  stem: (4 m, 0 m, 1 m)\n"
                   "}\n"
                   "stay forestay {\n"
                   "  path: masthead > strut-end ends > stem\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Make a second stay of the piece below, or write `clamped` if it is one piece that is "
                "only held there.",
    },
    CatalogueEntry{
        .slug = "passage-at-end",
        .severity = Severity::error,
        .message = "`{word}` stands at an end of the path of {stay}",
        .why = "at its two ends the stay is held by its pins",
        .cause = "`free`, `clamped` and `ends` say how the line passes a point between its two ends. At "
                 "the first and at the last point there is nothing to pass.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "points {\n"
                   "  masthead: (0 m, 0 m, 12 m)\n"
                   "  strut-end: (1 m, 0 m, 6 m)\n"
                   "  stem: (4 m, 0 m, 1 m)\n"
                   "}\n"
                   "stay forestay {\n"
                   "  path: masthead free > stem\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the word out.",
    },
    CatalogueEntry{
        .slug = "passage-not-here",
        .severity = Severity::error,
        .message = "`{word}` has no meaning in the {what}",
        .why = "it belongs to a path, and here it would be lost",
        .cause = "`free`, `clamped` and `ends` say how a line passes a point of its path.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm free\n"
                   "}\n",
        .mend = "Take the word out.",
    },
    CatalogueEntry{
        .slug = "passage-not-stated",
        .severity = Severity::warning,
        .message = "the path of {stay} does not say how the line passes here; `free` is taken",
        .why = "a clamped line pulls the spreader tip up or down when it stretches, and needs a mark for "
               "the clamp",
        .cause = "Between its ends the line can run through a point `free`, be `clamped` there, or end. "
                 "For the length it is all the same, for the card and for the load on the spreader it is "
                 "not.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "points {\n"
                   "  masthead: (0 m, 0 m, 12 m)\n"
                   "  strut-end: (1 m, 0 m, 6 m)\n"
                   "  stem: (4 m, 0 m, 1 m)\n"
                   "}\n"
                   "stay forestay {\n"
                   "  path: masthead > strut-end > stem\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Write `free` or `clamped` behind the point.",
    },
    CatalogueEntry{
        .slug = "reading-empty",
        .severity = Severity::error,
        .message = "the reading of {stay} has neither a run nor a mark",
        .why = "nothing was measured, so it says nothing about the length",
        .cause = "A reading holds the lengths as read, `runs`, or for a messenger cord the `mark` that "
                 "keeps the length.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n"
                   "reading of forestay {\n"
                   "  method: tape\n"
                   "}\n",
        .mend = "State what was read, or take the reading out until it has been taken.",
    },
    CatalogueEntry{
        .slug = "reading-needs-side",
        .severity = Severity::error,
        .message = "{stay} is there on both sides, and the reading does not say which one was measured",
        .why = "port and starboard are rarely the same length, and one reading for both would hide it",
        .cause = "A stay with `sides` is one stay a side, and each is measured by itself.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n"
                   "reading of cap-shroud {\n"
                   "  method: tape\n"
                   "  runs: 11_640 mm\n"
                   "}\n",
        .mend = "Write the side: `reading of cap-shroud.port`. If both were measured, write two readings.",
    },
    CatalogueEntry{
        .slug = "reading-of-no-side",
        .severity = Severity::error,
        .message = "{stay} has no {side} side that could be measured",
        .why = "the reading would belong to no stay",
        .cause = "The stay is on the centreline, or its `sides` does not name this side.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n"
                   "reading of forestay.port {\n"
                   "  method: tape\n"
                   "  runs: 11_640 mm\n"
                   "}\n",
        .mend = "Take the side out for a stay on the centreline, or correct it.",
    },
};

} // namespace

std::span<const CatalogueEntry> path_findings() {
  return entries;
}

} // namespace sheerpole
