#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "pin-not-secured",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: nothing secures the pin of {part}",
        .why = "a pin that nothing holds works its way out, and the mast comes down",
        .cause = "The part with the jaw states that its pin is not secured.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  secured: \"none\"\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    toggle-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Put a split pin or a ring through the pin, spread its ends, tape it over, and state it in "
                "`secured`.",
    },
    CatalogueEntry{
        .slug = "thread-not-locked",
        .severity = Severity::warning,
        .message = "{stay}: nothing locks the threads of {part}",
        .why = "a stay that works turns its screw, and the threads run out of the body",
        .cause = "The turnbuckle states that nothing keeps its threads from turning.",
        .example = "turnbuckle screw-12 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "  locked: \"none\"\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    screw-12 (open: 50 %)\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Lock the studs with split pins, rings or wire, and state it in `locked`. Lock nuts alone "
                "may damage the threads and hide whether they have moved.",
    },
    CatalogueEntry{
        .slug = "no-toggle-aloft",
        .severity = Severity::warning,
        .message = "{stay}: it carries a sail, and nothing aloft lets {line} swing both ways",
        .why = "the sail pulls the stay sideways, and the wire breaks where it goes into its terminal",
        .cause = "A wire or a rod that carries a sail is made fast aloft without a toggle, a shackle, a "
                 "hook, a thimble or anything else that lets it swing in two planes (common practice, no "
                 "source). A jaw on an eye swings in one.",
        .example = "stay forestay {\n"
                   "  pin-to-pin: 12 m\n"
                   "  line: wire-6\n"
                   "  duty: carries-sail\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "    eye-62\n"
                   "  }\n"
                   "}\n",
        .mend = "Put a toggle between the terminal and the mast, and cut the wire shorter by its length. "
                "Of a part that swings both ways by its own pins, state `pins: crossed`.",
    },
    CatalogueEntry{
        .slug = "no-toggle-below",
        .severity = Severity::warning,
        .message = "{stay}: nothing between {line} and the deck swings both ways",
        .why = "a screw that can not follow its stay is bent each time the stay moves, and breaks at its "
               "thread",
        .cause = "A wire or a rod comes down on its chainplate with a screw or a terminal, without a "
                 "toggle or anything else that lets it swing in two planes (common practice, no source).",
        .example = "turnbuckle screw-12 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    screw-12 (open: 50 %)\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Put a toggle between the screw and the chainplate, and cut the wire shorter by its "
                "length. Of a screw that has a toggle of its own, state which end: `toggle: lower`. Of a "
                "link that swings both ways, state `pins: crossed`.",
    },
    CatalogueEntry{
        .slug = "pins-parallel",
        .severity = Severity::warning,
        .message = "{stay}: the pins of {part} are parallel, and nothing else {where} swings the other way",
        .why = "the stay can swing one way and is bent the other way",
        .cause = "A part with two pins states that they are parallel, and no other part at that end of the "
                 "stay lets it swing across them (common practice, no source).",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  pins: parallel\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    toggle-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Put in a toggle with crossed pins, or another part that swings across.",
    },
    CatalogueEntry{
        .slug = "metals-differ",
        .severity = Severity::warning,
        .message = "{stay}: {words}, with nothing between them",
        .why = "in salt water the one metal eats the other where they touch, out of sight",
        .cause = "Two parts that touch are of metals that are a galvanic pair: stainless steel, bronze or "
                 "titanium on aluminium, stainless steel or bronze on galvanised steel (common practice, "
                 "no source). Neither states a barrier.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  metal: stainless\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  metal: aluminium\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    toggle-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Put a plastic sleeve and washers, or a sealing paste, between the two and state it in "
                "`barrier` of one of them, or take a part of the same metal.",
    },
    CatalogueEntry{
        .slug = "no-witness-hole",
        .severity = Severity::note,
        .message = "{stay}: {part} has a closed body without a witness hole",
        .why = "how much thread is left in the body can not be seen",
        .cause = "The turnbuckle states a closed body and no hole that shows the ends of its studs.",
        .example = "turnbuckle screw-12 {\n"
                   "  shortest: 240 mm\n"
                   "  longest: 360 mm\n"
                   "  body: closed\n"
                   "  witness-hole: no\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    screw-12 (open: 50 %)\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Mark the studs where they are just deep enough, and look at the marks at every check of "
                "the rig.",
    },
    CatalogueEntry{
        .slug = "not-accessible",
        .severity = Severity::note,
        .message = "{stay}: the pin of {part} can not be looked at as the rig stands",
        .why = "a split pin that nobody sees is not missed until the pin is out",
        .cause = "The part states that its pin and what secures it can not be looked at. That is usual "
                 "inside a furler's drum.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  accessible: no\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    toggle-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Look at it whenever the drum is off, and put the day in an inspection.",
    },
    CatalogueEntry{
        .slug = "edge-sharp",
        .severity = Severity::warning,
        .message = "{stay}: {words}; at least {least}",
        .why = "a rope breaks where it is bent over a sharp edge, and chafes there before",
        .cause = "Rope bears on an edge whose radius is less than half the rope's diameter (common "
                 "practice, no source).",
        .example = "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 28 mm, edge-radius: 2 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Round the edge, or put a part with a rounder one under the rope.",
    },
    CatalogueEntry{
        .slug = "thimble-for-wire",
        .severity = Severity::warning,
        .message = "{stay}: {line} is {kind}, and {part} is made for {made-for}",
        .why =
            "the groove of a thimble for wire is narrow and hard on rope; one for rope is crushed by wire",
        .cause = "A part is made for another sort of line than the one that bears on it.",
        .example = "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  made-for: wire\n"
                   "  lower: rope-seat (diameter: 28 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the thimble that is made for this line.",
    },
    CatalogueEntry{
        .slug = "no-chafe-gear",
        .severity = Severity::warning,
        .message = "{stay}: {line} has nothing against chafe {where}",
        .why = "a rope that works on a spreader tip is worn through there first, where nobody looks",
        .cause = "Rope goes over the tip of a spreader that states that it has no chafe gear, and no cover "
                 "is in the stack.",
        .example = "spreader lower-spreader {\n"
                   "  root: root\n"
                   "  tip: tip\n"
                   "  chafe-gear: \"none\"\n"
                   "}\n"
                   "stay shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: tang > tip clamped > plate\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Put a sleeve over the rope, or leather round the tip, and state it in `chafe-gear`, or a "
                "`cover` in the stack.",
    },
    CatalogueEntry{
        .slug = "bearing-offset-zero",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {part} has no length, but {words}: its crown lies {offset} from the "
                   "centre of the pin",
        .why = "the stay comes out longer by it, at every end where it was forgotten",
        .cause = "A thimble that is larger inside than its pin hangs on the pin with its crown, half the "
                 "difference away from the centre of the pin; its length is stated as 0 mm.",
        .example = "tang tang-12 {\n"
                   "  lower: jaw (gap: 20 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "thimble thimble-0 {\n"
                   "  length: 0 mm\n"
                   "  wrap: 159 mm\n"
                   "  upper: eye (hole: 12.5 mm)\n"
                   "  lower: rope-seat (diameter: 28 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    tang-12\n"
                   "    thimble-0 (splice: long-bury)\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "State the length of the thimble from the centre of its pin to where the rope bears.",
    },
};

} // namespace

std::span<const CatalogueEntry> securing_findings() {
  return entries;
}

} // namespace sheerpole
