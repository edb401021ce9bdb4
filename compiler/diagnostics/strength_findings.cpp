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
    CatalogueEntry{
        .slug = "pair-stretch-differs",
        .severity = Severity::warning,
        .message = "{stay}: {words}; at most {most}",
        .why = "the softer side gives more on its tack, and the mast leans or bends to that side",
        .cause =
            "The lines of port and starboard differ in EA by more than the limit `stiffness-apart`, or "
            "one side is rope and the other wire, rod or chain.",
        .example = "stay shroud.port {\n"
                   "  line: hmpe-9\n"
                   "}\n"
                   "stay shroud.starboard {\n"
                   "  line: wire-6\n"
                   "}\n",
        .mend = "Renew both sides of a pair, with the same line.",
    },
    CatalogueEntry{
        .slug = "creep-load-high",
        .severity = Severity::warning,
        .message = "{stay}: {words}",
        .why = "a rope of HMPE under a steady load goes on getting longer until it breaks, the faster the "
               "higher the "
               "load and the warmer it is",
        .cause =
            "The dock tension is more than 15 % of the break load of an HMPE rope; 20 % is the most in "
            "use (common practice for the general grade, no source).",
        .example = "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  dock-tension: 16 kN\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "A thicker rope or less tension. State the limit `creep-load` with its source for a grade "
                "that creeps less.",
    },
    CatalogueEntry{
        .slug = "rope-hot",
        .severity = Severity::warning,
        .message = "{stay}: {words}",
        .why = "a rope of HMPE loses strength and creeps fast when it is hot",
        .cause =
            "The stay states a `hottest` of more than 50 degC, by an exhaust or a dark spar in the sun; "
            "70 degC is the most in use (common practice, no source).",
        .example = "stay backstay {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  hottest: 60 degC\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Lead it clear of the heat, shield it, or take wire there.",
    },
    CatalogueEntry{
        .slug = "cold-slack",
        .severity = Severity::warning,
        .message = "{stay}: {words}; at most {most}",
        .why = "what is set up in summer hangs loose in the cold; a mast that is not held works and may "
               "pump",
        .cause =
            "At the `coldest` of the record `take-up` the line has got longer against its path, and that "
            "takes more than the limit `cold-loss` of its dock tension. HMPE grows in the cold and an "
            "aluminium mast shrinks. Mast and hull are taken as stiff: one that gives loses less.",
        .example = "take-up {\n"
                   "  coldest: -10 degC\n"
                   "}\n"
                   "stay shroud {\n"
                   "  path: hounds > plate\n"
                   "  line: hmpe-9\n"
                   "  dock-tension: 3 kN\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Set it up again for the winter, or at the temperature at which it is sailed.",
    },
    CatalogueEntry{
        .slug = "modulus-on-wrong-area",
        .severity = Severity::warning,
        .message = "{line}: {words}; at most {most}",
        .why = "a wire that is taken for twice as stiff stretches twice as far as its cut allows for",
        .cause = "EA over the full circle of the wire is more than laid-up wire can have. A modulus of the "
                 "solid metal (about 193 GPa) belongs with no stranded wire; that of the trade, 107.5 GPa "
                 "for 1x19, belongs with the full circle, and about 141 GPa with the metal alone.",
        .example = "wire wire-6 {\n"
                   "  construction: \"1x19\"\n"
                   "  size: \"6 mm\"\n"
                   "  modulus: 193 GPa\n"
                   "  metallic-area: 28.3 mm2\n"
                   "}\n",
        .mend = "Look up which area the modulus belongs to, or state the `stiffness` that the maker gives.",
    },
    CatalogueEntry{
        .slug = "break-load-unlikely",
        .severity = Severity::warning,
        .message = "{line}: {words}",
        .why = "a slip of a unit here makes every comparison of strength wrong by it",
        .cause =
            "Break load over the square of the diameter is outside of what lines have. A number in lbf "
            "or kgf that is written as N, a decimal point, or the size of another line do this.",
        .example = "wire wire-6 {\n"
                   "  construction: \"1x19\"\n"
                   "  size: \"6 mm\"\n"
                   "  break-load: 7_000 N\n"
                   "}\n",
        .mend = "Look the number up again with its unit. A rope of a weak fibre may lie below: then state "
                "the limit `break-load-low`.",
    },
    CatalogueEntry{
        .slug = "pretension-low",
        .severity = Severity::warning,
        .message = "{stay}: {words}",
        .why = "a slack shroud lets the mast fall to leeward and then brings it up with a jerk",
        .cause = "The dock tension of a wire or a rod is less than 5 % of its break load (common practice, "
                 "no source, weak).",
        .example = "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  dock-tension: 1 kN\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Set it up, or state the limit `pretension-least` that this rig is sailed with.",
    },
    CatalogueEntry{
        .slug = "pretension-high",
        .severity = Severity::warning,
        .message = "{stay}: {words}",
        .why = "the mast step, the chainplates and the hull carry it day and night",
        .cause =
            "The dock tension of a wire or a rod is more than 25 % of its break load (common practice, "
            "no source; some take it for a moderate figure).",
        .example = "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  dock-tension: 9 kN\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Ease it, or state the limit `pretension-most` that the builder allows.",
    },
    CatalogueEntry{
        .slug = "panel-overloaded",
        .severity = Severity::warning,
        .message = "{mast}: {words}; at least {least}",
        .why = "a panel of the mast that bends out sideways takes the whole rig with it",
        .cause =
            "The compression that a load-screening by joint-equilibrium gives for a panel of the mast, "
            "over the load at which that panel buckles sideways (Euler, pinned ends, from "
            "`bending-stiffness-across`), leaves less than the limit `buckling-factor`: 1.5, common "
            "practice, no source. The screening counts the side force alone; stays, halyards and sheets "
            "press the mast besides. Ends that are held fast carry more.",
        .example = "spar mast {\n"
                   "  sort: mast\n"
                   "  heel: (0, 0, 1.2) m\n"
                   "  bending-stiffness-across: 90 kNm2\n"
                   "}\n"
                   "load-screening of cap-shroud {\n"
                   "  method: joint-equilibrium\n"
                   "  side-force: 3_200 N\n"
                   "}\n",
        .mend =
            "Look the stiffness and the side force up again. A shorter panel or a stiffer section is for a "
            "designer to choose.",
    },
};

} // namespace

std::span<const CatalogueEntry> strength_findings() {
  return entries;
}

} // namespace sheerpole
