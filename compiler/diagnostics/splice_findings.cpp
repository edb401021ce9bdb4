#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "bury-short",
        .severity = Severity::warning,
        .message = "{stay}: {words}; at least {bound}",
        .why = "a buried tail holds by its length alone, and a short one pulls out",
        .cause = "The tail of a splice that holds by its bury is shorter than three fids, 63 diameters of "
                 "the rope: a splicing sheet of a 12-strand rope asks for that. Other rules that were "
                 "found lie between 31 and 100 diameters, because ropes differ.",
        .example = "splice short-bury {\n"
                   "  bury: 55 d\n"
                   "  contraction: 8 %\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 28 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Bury more, by the sheet of this rope. A splice that is tucked or sewn states its `sort` "
                "and is not looked at.",
    },
    CatalogueEntry{
        .slug = "bury-below-usual",
        .severity = Severity::note,
        .message = "{stay}: {words}; {usual} are usual",
        .why = "in slippery rope a longer bury costs little and is looked for when the rig is surveyed",
        .cause = "The bury is not short, but less than the 72 diameters that are usual (common practice, "
                 "no source; 50, 60 and 63 are in use as well).",
        .example = "splice short-bury {\n"
                   "  bury: 65 d\n"
                   "  contraction: 8 %\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 28 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Bury 72 diameters, or what the sheet of this rope asks for, and write which in the source "
                "of `bury`.",
    },
    CatalogueEntry{
        .slug = "taper-short",
        .severity = Severity::warning,
        .message = "{stay}: {words}; at least {least}, {share}",
        .why = "where the tail ends bluntly the rope over it is bent sharply, and breaks there",
        .cause = "Less of the buried tail is tapered than 15 % of the bury (common practice, no source; "
                 "rules that were found ask for 20 to 33 %).",
        .example = "splice short-bury {\n"
                   "  bury: 72 d\n"
                   "  contraction: 8 %\n"
                   "  taper-over: 5 d\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 28 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Taper the last third of the bury, a few strands at a time.",
    },
    CatalogueEntry{
        .slug = "burys-overlap",
        .severity = Severity::error,
        .message = "{stay}: {words}; {over} too much",
        .why = "the two tails meet inside the rope, and neither can be buried to its length",
        .cause = "The tails that are buried from both ends of one piece of rope are longer together than "
                 "what lies between its eyes.",
        .example = "splice short-bury {\n"
                   "  bury: 72 d\n"
                   "  contraction: 8 %\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 28 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 1 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Make the piece longer and the hardware shorter, take a thinner rope, or another sort of "
                "splice that the sheet of this rope knows.",
    },
    CatalogueEntry{
        .slug = "splice-not-locked",
        .severity = Severity::warning,
        .message = "{stay}: nothing locks {splice}",
        .why = "a bury that is not locked walks out when the stay hangs slack, without a sign",
        .cause =
            "The splice states that nothing keeps its tail from working out (common practice, no source).",
        .example = "splice short-bury {\n"
                   "  bury: 72 d\n"
                   "  contraction: 8 %\n"
                   "  locking: \"none\"\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 28 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Lock it at the throat with a stitch or by passing the parts through each other, and state "
                "it in `locking`. A lock adds nothing to its strength; the bury stays as long.",
    },
    CatalogueEntry{
        .slug = "eye-short",
        .severity = Severity::warning,
        .message = "{stay}, {words}; at least {bound}",
        .why = "a short eye pulls its two legs apart at the throat, and the splice opens from there",
        .cause = "From its bearing to its throat the eye is less than three times as long as what it bears "
                 "on is thick (common practice, no source).",
        .example = "splice short-bury {\n"
                   "  bury: 72 d\n"
                   "  contraction: 8 %\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Make the eye longer and state its `throat`, or take a smaller seat where the rope allows. "
                "The cut grows by it. A pear-shaped thimble carries both legs to the throat and is not "
                "looked at: state `shape: pear`.",
    },
    CatalogueEntry{
        .slug = "eye-below-usual",
        .severity = Severity::note,
        .message = "{stay}, {words}; {bound} are usual",
        .why = "the longer the eye, the straighter the pull on its throat",
        .cause = "The eye is not short, but less than five times as long as what it bears on is thick "
                 "(common practice, no source).",
        .example = "splice short-bury {\n"
                   "  bury: 72 d\n"
                   "  contraction: 8 %\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  lower: rope-seat (diameter: 28 mm, throat: 90 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Make the eye longer where there is room for it, or leave it.",
    },
    CatalogueEntry{
        .slug = "eye-angle-wide",
        .severity = Severity::warning,
        .message = "{stay}, {words}; at most {most}",
        .why = "legs that leave the throat at a wide angle pull the splice open and load the rope sideways",
        .cause = "Half the angle between the two legs of the eye is more than 15 degrees (common practice, "
                 "no source). It comes of the seat, the rope's thickness and the place of the throat.",
        .example = "splice short-bury {\n"
                   "  bury: 72 d\n"
                   "  contraction: 8 %\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  lower: rope-seat (diameter: 18 mm, throat: 50 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Make the eye longer and state its `throat`. Of a pear-shaped thimble, which carries both "
                "legs to the throat, state `shape: pear`.",
    },
    CatalogueEntry{
        .slug = "eye-ways-differ",
        .severity = Severity::warning,
        .message = "{stay}, {words}; {difference} apart, at most {most}",
        .why = "every eye comes out wrong by it, and the stay by the sum of its eyes",
        .cause = "The rope that a test wrap used round the part is not what its seat and its throat come "
                 "to. One of them was read wrongly, or belongs to another rope.",
        .example = "splice short-bury {\n"
                   "  bury: 72 d\n"
                   "  contraction: 8 %\n"
                   "}\n"
                   "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 120 mm\n"
                   "  lower: rope-seat (diameter: 28 mm, throat: 130 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: short-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Wrap the rope round the part again and measure to the same throat. The wrap is what "
                "counts for the cut.",
    },
};

} // namespace

std::span<const CatalogueEntry> splice_findings() {
  return entries;
}

} // namespace sheerpole
