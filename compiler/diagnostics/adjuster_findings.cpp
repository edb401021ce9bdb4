#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "screw-same-hand",
        .severity = Severity::error,
        .message = "{stay}: both ends of {part} are {hand}",
        .why = "turning the body moves it along the screws and brings nothing nearer: it can not be set",
        .cause =
            "The turnbuckle states a pair of screws, and both of its ends with a thread of the same hand.",
        .example = "turnbuckle screw-12 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "  thread: \"M12\"\n"
                   "  screw: pair\n"
                   "  upper: stud (thread: \"M12\", hand: right)\n"
                   "  lower: stud (thread: \"M12\", hand: right)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    eye-62\n"
                   "    screw-12 (open: 50 %)\n"
                   "  }\n"
                   "}\n",
        .mend = "Look at both studs again: one of them is left-handed. If one end does not turn at all, "
                "state `screw: single`.",
    },
    CatalogueEntry{
        .slug = "adjuster-mostly-closed",
        .severity = Severity::warning,
        .message = "{stay}: {part} is {closed} closed as set, with {left} left to tighten of a range of "
                   "{range}; at most {most}",
        .why = "a new stay gets longer, and then there is nothing left to take it up with",
        .cause = "A screw is closed by more than two thirds at its first fit (common practice, no source).",
        .example = "turnbuckle screw-12 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "  thread: \"M12\"\n"
                   "  screw: pair\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "    screw-12 (open: 25 %)\n"
                   "  }\n"
                   "}\n",
        .mend =
            "Cut the line so much shorter that the screw stands half open when the stay is first set up.",
    },
    CatalogueEntry{
        .slug = "take-up-low",
        .severity = Severity::warning,
        .message = "{stay}: {words}; at least {least}",
        .why = "when the stay has bedded in there is little left for the season after",
        .cause =
            "What the screw can still take up after bedding-in, creep, the worst temperature and the "
            "uncertainty of the length is less than a third of its range (common practice, no source).",
        .example = "wire soft-wire {\n"
                   "  construction: \"7x19\"\n"
                   "  size: \"6 mm\"\n"
                   "  bedding: 0.3 %\n"
                   "}\n"
                   "turnbuckle screw-12 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "  thread: \"M12\"\n"
                   "  screw: pair\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: soft-wire\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "    screw-12 (open: 60 %)\n"
                   "  }\n"
                   "}\n",
        .mend = "Cut the line shorter by what it will stretch (`bedding-from: cut`), set the screw farther "
                "open, or take a longer one.",
    },
    CatalogueEntry{
        .slug = "reach-in-doubt",
        .severity = Severity::warning,
        .message = "{stay}: at worst it comes out {doubt} {way}, and its adjuster can {direction} {room}",
        .why = "it may not go on when it is cut as it stands here",
        .cause = "The bounds that are stated for what the length rests on add up, at worst, to more than "
                 "the adjuster can take up or give out as set.",
        .example = "turnbuckle screw-12 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "  thread: \"M12\"\n"
                   "  screw: pair\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m ± 80 mm\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "    screw-12 (open: 50 %)\n"
                   "  }\n"
                   "}\n",
        .mend = "Measure again what the proof sheet names first, set the adjuster in the middle of its "
                "range, or take one with more range.",
    },
    CatalogueEntry{
        .slug = "adjusters-differ",
        .severity = Severity::warning,
        .message = "{stay}: {port} to port, {starboard} to starboard",
        .why = "the two sides stretch and are set up in unlike ways, and the mast leans with them",
        .cause = "The two sides of a stay have adjusters of unlike kinds.",
        .example = "turnbuckle screw-12 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "  thread: \"M12\"\n"
                   "  screw: pair\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "stay shroud {\n"
                   "  sides: port, starboard\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "    screw-12 (open: 50 %)\n"
                   "  }\n"
                   "}\n"
                   "lever lever-300 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "}\n"
                   "stay shroud.starboard {\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "    lever-300 (length: 300 mm)\n"
                   "  }\n"
                   "}\n",
        .mend = "Fit the same on both sides. While one side waits for its part, waive this until the day "
                "when it is there.",
    },
    CatalogueEntry{
        .slug = "lashing-weak",
        .severity = Severity::warning,
        .message = "{stay}: {sum}, less than {bound}",
        .why = "the lashing parts before the stay does",
        .cause = "Passes times cord times knot is less than one and a half times the load of the stay, or "
                 "where no load is stated the break load of its line (common practice, no source). Of the "
                 "two legs of a pass one is counted, because friction keeps them from sharing alike.",
        .example = "rope cord-4 {\n"
                   "  construction: \"polyester cord\"\n"
                   "  size: \"4 mm\"\n"
                   "  break-load: 15 kN\n"
                   "}\n"
                   "lashing lashing-260 {\n"
                   "  shortest: 60 mm\n"
                   "  longest: 260 mm\n"
                   "  cord: cord-4\n"
                   "  knot-factor: 50 %\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  load: 40 kN\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    lashing-260 (gap: 160 mm, passes: 6)\n"
                   "  }\n"
                   "}\n",
        .mend = "Take more passes or a stronger cord. The factor and the legs counted are "
                "`lashing-strength` and `lashing-legs` in `limits`.",
    },
    CatalogueEntry{
        .slug = "knot-factor-high",
        .severity = Severity::warning,
        .message = "{stay}: the knot of {part} is taken to hold {factor} of its cord; at most {most}",
        .why = "a lashing is no stronger than its knot, and it parts there",
        .cause = "The share of the cord's break load that the knot is taken to hold is more than published "
                 "tests of knots found: half of the cord or less.",
        .example = "rope cord-4 {\n"
                   "  construction: \"polyester cord\"\n"
                   "  size: \"4 mm\"\n"
                   "  break-load: 15 kN\n"
                   "}\n"
                   "lashing lashing-260 {\n"
                   "  shortest: 60 mm\n"
                   "  longest: 260 mm\n"
                   "  cord: cord-4\n"
                   "  knot-factor: 90 %\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  load: 20 kN\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    lashing-260 (gap: 160 mm, passes: 6)\n"
                   "  }\n"
                   "}\n",
        .mend = "State 50 % or less, or the source of a test of this knot in this cord and another "
                "`knot-factor` in `limits`.",
    },
};

} // namespace

std::span<const CatalogueEntry> adjuster_findings() {
  return entries;
}

} // namespace sheerpole
