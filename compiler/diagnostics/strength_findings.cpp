#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "weakest-part",
        .severity = Severity::warning,
        .message = "{stay}: {part}, less than the line: {line}{others}",
        .why = "a stay breaks at its weakest part, and that is not the line here",
        .cause =
            "A part, a pin, a hole or the cord of a lashing holds less than the line of the stay as it "
            "is spliced. What is not stated is not counted as strong. Of a lashing one leg is counted "
            "for each pass, because friction keeps the two from sharing alike (common practice, no "
            "source; limit `lashing-legs`).",
        .example = "rope cord-4 {\n"
                   "  construction: \"HMPE\"\n"
                   "  size: \"4 mm\"\n"
                   "  break-load: 15 kN\n"
                   "}\n"
                   "lashing lashing-260 {\n"
                   "  shortest: 60 mm\n"
                   "  longest: 260 mm\n"
                   "  cord: cord-4\n"
                   "  knot-factor: 50 %\n"
                   "}\n"
                   "rope hmpe-9 {\n"
                   "  construction: \"12-strand HMPE heat-set\"\n"
                   "  size: \"9 mm\"\n"
                   "  break-load: 92 kN\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    line\n"
                   "    deadeye-38 (splice: long-bury)\n"
                   "    lashing-260 (gap: 160 mm, passes: 6)\n"
                   "    plate-10\n"
                   "  }\n"
                   "}\n",
        .mend = "Take a stronger part, or more passes or a stronger cord. A part that is meant to go first "
                "says so: `weak-link: \"why\"`.",
    },
    CatalogueEntry{
        .slug = "factor-low",
        .severity = Severity::warning,
        .message = "{stay}: {words}; at least {least}",
        .why = "gusts, age and what nobody has thought of come out of what is left between the two",
        .cause =
            "The weakest link that is known, over the load that the file states for the stay, is below "
            "the limit `break-factor`. That is 2.5 unless the file says otherwise: worked examples of "
            "the rigger's handbook method use 2.25 to 2.75, other advice goes from 2 inshore to 4 "
            "offshore (common practice, no source). It is a ratio of two stated numbers and says "
            "nothing about the load itself.",
        .example = "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  load: 18 kN \"designer's sheet\"\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "    eye-62\n"
                   "  }\n"
                   "}\n",
        .mend =
            "Look both numbers up again and ask who worked out the load. If the load already has a factor "
            "in it, state the limit `break-factor` that belongs to it.",
    },
    CatalogueEntry{
        .slug = "pin-bearing-high",
        .severity = Severity::warning,
        .message = "{stay}: {words}; at least {least}",
        .why = "a pin that presses too hard on the edge of its hole works the hole long",
        .cause =
            "Diameter of the pin times thickness of the plate times the bearing-stress stated for it, "
            "over the load of the stay, is below the limit `pin-bearing` (2, a choice of the project).",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 6 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 5 mm)\n"
                   "  bearing-stress: 400 MPa\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  load: 18 kN\n"
                   "  stack {\n"
                   "    line\n"
                   "    toggle-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "A thicker plate, cheeks welded to it, or a thicker pin; ask who made the plate.",
    },
    CatalogueEntry{
        .slug = "shared-pin-weak",
        .severity = Severity::warning,
        .message = "{point}: {words}; at least {least}",
        .why = "one pin that was chosen for one shroud carries all that end on it",
        .cause = "Several stays end at one point on one chainplate. The sum of their loads times the limit "
                 "`break-factor` is more than their pin holds in double shear. The loads are added as if "
                 "they pulled one way.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 14 mm, pin: \"10 mm\")\n"
                   "  pin-stress: 300 MPa\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  path: masthead > plate\n"
                   "  line: wire-6\n"
                   "  load: 12 kN\n"
                   "  stack {\n"
                   "    line\n"
                   "    toggle-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n"
                   "stay lower-shroud {\n"
                   "  path: hounds > plate\n"
                   "  line: wire-6\n"
                   "  load: 10 kN\n"
                   "  stack {\n"
                   "    line\n"
                   "    toggle-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Give each its own hole and pin, and state it as a point of its own; or a pin that carries "
                "both.",
    },
};

} // namespace

std::span<const CatalogueEntry> strength_findings() {
  return entries;
}

} // namespace sheerpole
