#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "property-missing",
        .severity = Severity::error,
        .message = "the {kind} {owner} has no {property}: {help}",
        .why = "without it no length can be worked out with this {kind}, and a number taken for granted "
               "would be a guess",
        .cause = "Every kind has a few properties that must be stated. Nothing that moves a cut is taken "
                 "for granted.",
        .example = "language 1\n"
                   "toggle toggle-12 \"Toggle for a 12 mm pin\" {\n"
                   "  lower: jaw (gap: 12 mm)\n"
                   "}\n",
        .mend = "Measure it or look it up, and state it with its source. If it is not known yet, state "
                "the likely value and mark it `assumed`: all cards are then drafts and say why.",
    },
    CatalogueEntry{
        .slug = "boat-twice",
        .severity = Severity::error,
        .message = "the boat is declared twice",
        .why = "two boats could have two reference temperatures and two names on the cards",
        .cause = "A rig describes one boat. A second one comes from a file that was brought in with `use`, "
                 "usually another boat instead of a library of parts.",
        .example = "language 1\n"
                   "boat \"Tern\" {\n"
                   "  beam: 3.20 m\n"
                   "}\n"
                   "boat \"Petrel\" {\n"
                   "  beam: 3.10 m\n"
                   "}\n",
        .mend = "Take one out. Parts that two boats share go into a file without a boat.",
    },
    CatalogueEntry{
        .slug = "mirrored-not-here",
        .severity = Severity::error,
        .message = "the {what} can not be mirrored",
        .why = "only a whole point has a twin on the other side",
        .cause = "`mirrored` stands behind the place of a point and makes its twin on the other side of "
                 "the boat. One that says of itself which side it is, and anything that is not a point, "
                 "has none.",
        .example = "language 1\n"
                   "points {\n"
                   "  plate-a: (0.1 m, 1.4 m, 1.1 m) mirrored\n"
                   "  plate-a.port: (0.1 m, -1.41 m, 1.1 m) mirrored\n"
                   "}\n",
        .mend = "Take the word out, or put it behind the point that stands for both sides.",
    },
    CatalogueEntry{
        .slug = "mirrored-on-centreline",
        .severity = Severity::error,
        .message = "{point} is on the centreline, so its mirror image is {point} itself",
        .why = "two points in one place would make two stays where the boat has one",
        .cause = "The second number of a place is how far it is off the centreline, to starboard. It is "
                 "zero here, and the mirror image falls on the same place.",
        .example = "language 1\n"
                   "points {\n"
                   "  masthead: (0 m, 0 m, 12 m) mirrored\n"
                   "}\n",
        .mend = "Take `mirrored` out, or state how far the point is off the centreline. A shroud tang "
                "sits at half the thickness of the mast.",
    },
    CatalogueEntry{
        .slug = "position-wanted",
        .severity = Severity::error,
        .message = "{name} is a place and needs three numbers (x, y, z)",
        .why = "a point without its place has no distance to any other",
        .cause = "A point is written with three numbers in parentheses: forward, to starboard, and up from "
                 "the waterline.",
        .example = "language 1\n"
                   "points {\n"
                   "  cap-tang: 10.2 m\n"
                   "}\n",
        .mend = "Write all three: `(0.10 m, 0.31 m, 10.20 m)` or `(0.10, 0.31, 10.20) m`.",
    },
    CatalogueEntry{
        .slug = "position-not-lengths",
        .severity = Severity::error,
        .message = "a place is made of three lengths, and {found} stands in {name}",
        .why = "millimetres and metres would be mixed up without a sign of it",
        .cause = "Each of the three numbers carries a unit, or one unit stands behind the parentheses for "
                 "those that have none.",
        .example = "language 1\n"
                   "points {\n"
                   "  cap-tang: (0.10, 0.31, 10.20)\n"
                   "}\n",
        .mend = "Write the unit behind the parentheses: `(0.10, 0.31, 10.20) m`.",
    },
    CatalogueEntry{
        .slug = "point-not-mirrored",
        .severity = Severity::error,
        .message = "{point} has no {side} side",
        .why = "there is no place for that side's stay to go to",
        .cause = "The point was stated once, without `mirrored`, or only its other side was stated. A side "
                 "can be named only of a point that has it.",
        .example = "language 1\n"
                   "points {\n"
                   "  plate-a: (0.1 m, 1.4 m, 1.1 m)\n"
                   "  plate-a.port: (0.1 m, -1.41 m, 1.1 m)\n"
                   "}\n",
        .mend = "Put `mirrored` behind the point if both sides are alike by design, or state each side as "
                "measured.",
    },
    CatalogueEntry{
        .slug = "point-on-wrong-side",
        .severity = Severity::error,
        .message = "{point} is stated with a place that is not on the {side} side",
        .why = "a stay would cross the boat, and its length would be far off",
        .cause = "The second number of a place is positive to starboard and negative to port. The sign "
                 "does not fit the side in the name.",
        .example = "language 1\n"
                   "points {\n"
                   "  plate-a: (0.1 m, 1.4 m, 1.1 m) mirrored\n"
                   "  plate-a.port: (0.1 m, 1.41 m, 1.1 m)\n"
                   "}\n",
        .mend = "Turn the sign of the second number, or change the side in the name, whichever was meant.",
    },
    CatalogueEntry{
        .slug = "point-on-other-side",
        .severity = Severity::error,
        .message = "{owner} goes to {side} as well, and {point} is on the {point_side} side only",
        .why = "the {side} one would be measured to the wrong side of the boat",
        .cause = "What is stated for both sides uses a point that has only one. Without `mirrored` a point "
                 "has no twin.",
        .example = "language 1\n"
                   "points {\n"
                   "  root: (0 m, 0 m, 6 m)\n"
                   "  tip: (-0.3 m, 0.9 m, 6 m)\n"
                   "}\n"
                   "spreader upper {\n"
                   "  root: root\n"
                   "  tip: tip\n"
                   "}\n",
        .mend = "Put `mirrored` behind the point, state the other side as well, or restrict `sides`.",
    },
    CatalogueEntry{
        .slug = "side-needed",
        .severity = Severity::error,
        .message = "{point} is there on both sides, and {owner} does not say which one",
        .why = "the length depends on the side",
        .cause = "A stay without `sides` is one stay on the centreline. A point that was mirrored has two "
                 "places.",
        .example = "language 1\n"
                   "points {\n"
                   "  masthead: (0 m, 0 m, 12 m)\n"
                   "  quarter: (-4 m, 1 m, 1 m) mirrored\n"
                   "}\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay backstay {\n"
                   "  path: masthead > quarter\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Write the side, as in `quarter.port`, or give the stay both sides with `sides: port, "
                "starboard`.",
    },
    CatalogueEntry{
        .slug = "range-reversed",
        .severity = Severity::error,
        .message = "{part} is {shortest} at its shortest and {longest} at its longest",
        .why = "an adjuster without a range can not be set, and its take-up would be worked out "
               "backwards",
        .cause = "The shortest length is closed, the longest open to the last thread that may be used. The "
                 "longest must be the greater one. Usually the two were swapped, or one has another unit.",
        .example = "language 1\n"
                   "turnbuckle bottle-12 {\n"
                   "  shortest: 395 mm\n"
                   "  longest: 265 mm\n"
                   "}\n",
        .mend = "Measure both from pin centre to pin centre and look which is which.",
    },
    CatalogueEntry{
        .slug = "screw-not-stated",
        .severity = Severity::error,
        .message = "{part} has a thread and does not say whether it has one stud that turns or a pair",
        .why = "a pair moves two pitches at each turn, a single screw one: the take-up in turns would be "
               "off by half",
        .cause = "A body with a right-handed and a left-handed stud is a `pair`. Where one end swivels and "
                 "only one stud is screwed, it is `single`.",
        .example = "language 1\n"
                   "turnbuckle bottle-12 {\n"
                   "  shortest: 265 mm\n"
                   "  longest: 395 mm\n"
                   "  thread: \"1/2-20 UNF\"\n"
                   "}\n",
        .mend = "Write `screw: pair` or `screw: single`.",
    },
};

} // namespace

std::span<const CatalogueEntry> structure_findings() {
  return entries;
}

} // namespace sheerpole
