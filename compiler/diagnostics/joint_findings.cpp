#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "pin-too-big",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why =
            "it does not go in, and a hole that is drilled out on the boat is near the edge of its plate",
        .cause = "The pin of the jaw is thicker than the hole of the eye or plate.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 14 mm, pin: \"1/2 in\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.0 mm, thickness: 12 mm)\n"
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
        .mend = "Look both dimensions up again; a pin or a fitting of another size is wanted. Do not drill "
                "out what holds the rig without asking who made it.",
    },
    CatalogueEntry{
        .slug = "pin-loose",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "a pin that plays bears on a line and not on half the hole, and works the hole long",
        .cause = "The hole is larger than the pin by more than half a millimetre and more than a twentieth "
                 "of the pin (common practice, no source). Inch and metric sizes that look alike do this: "
                 "a 12 mm pin in a hole for 1/2 in.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 14 mm, pin: \"10 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.0 mm, thickness: 12 mm)\n"
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
        .mend = "Put in the pin that the hole is made for, or a bush, as a `bush` in the stack between the "
                "two with its own hole.",
    },
    CatalogueEntry{
        .slug = "jaw-too-narrow",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why = "it does not go over the plate",
        .cause = "The plate or eye is thicker than the jaw is wide.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 10 mm, pin: \"12 mm\")\n"
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
        .mend = "Look both dimensions up again; another jaw is wanted. Do not spread a jaw.",
    },
    CatalogueEntry{
        .slug = "jaw-too-wide",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "the pin is bent between cheeks that stand far apart, and the stay pulls to one side of its "
               "plate",
        .cause = "The plate plays sideways in the jaw by more than 3 mm, both sides together (common "
                 "practice, no source).",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 18 mm, pin: \"12 mm\")\n"
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
        .mend = "Fill the jaw with washers alike on both sides, or take a narrower one.",
    },
    CatalogueEntry{
        .slug = "jaw-too-shallow",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why = "the end of the plate meets the bottom of the jaw before the pin goes in, or the jaw can "
               "not swing",
        .cause = "From the hole to its end the plate is longer than the jaw is deep.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 14 mm, depth: 15 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm, edge: 20 mm)\n"
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
        .mend = "Take a deeper jaw or a toggle; do not cut the plate.",
    },
    CatalogueEntry{
        .slug = "hole-near-edge",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "the pin tears out through the end of the plate before the wire breaks",
        .cause = "From the centre of the hole to the end of the plate is less than one and a half "
                 "diameters of the hole; one and a quarter is the least (common practice, no source).",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm, edge: 15 mm)\n"
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
        .mend = "Ask who made the plate. A hole that was drilled out is nearer to the edge than it was.",
    },
    CatalogueEntry{
        .slug = "thread-differs",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why = "it goes in for a turn or two and strips, or does not go in",
        .cause = "The two threads are not of one designation. Inch and metric threads can look alike.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: stud (thread: \"M12\", hand: right)\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: socket (thread: \"1/2-20 UNF\", hand: right)\n"
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
        .mend = "Look both threads up again; a pitch gauge tells them apart.",
    },
    CatalogueEntry{
        .slug = "hand-differs",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why = "it can not be screwed in",
        .cause = "One thread is right-handed and the other left-handed.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: stud (thread: \"M12\", hand: right)\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: socket (thread: \"M12\", hand: left)\n"
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
        .mend = "Turn the body round, or take the stud of the other hand.",
    },
    CatalogueEntry{
        .slug = "stud-engaged-short",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "too few turns carry the load, and the thread strips",
        .cause = "Less of the stud is in the body than `thread-engaged` in the limits asks for: one "
                 "diameter of the "
                 "thread is common practice, three turns is the other rule in use (no source).",
        .example = "terminal stud-62 {\n"
                   "  length: 62 mm\n"
                   "  lower: stud (thread: \"M12\", hand: right, engaged: 8 mm)\n"
                   "}\n"
                   "link body-80 {\n"
                   "  length: 80 mm\n"
                   "  upper: socket (thread: \"M12\", hand: right, depth: 40 mm)\n"
                   "}\n",
        .mend = "Screw it further in, or take a longer stud.",
    },
    CatalogueEntry{
        .slug = "stud-too-long",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "it meets the end of the thread before it is home, and what was tight there comes loose",
        .cause = "More of the stud is to be in the body than the body has thread.",
        .example = "terminal stud-62 {\n"
                   "  length: 62 mm\n"
                   "  lower: stud (thread: \"M12\", hand: right, engaged: 46 mm)\n"
                   "}\n"
                   "link body-80 {\n"
                   "  length: 80 mm\n"
                   "  upper: socket (thread: \"M12\", hand: right, depth: 40 mm)\n"
                   "}\n",
        .mend = "Look both lengths up again; a shorter stud or a deeper body is wanted.",
    },
    CatalogueEntry{
        .slug = "wire-size-differs",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "the cone of a terminal holds one size of wire: 5/16 in and 8 mm differ by 0.06 mm and are "
               "two products",
        .cause = "The terminal is made for another size of wire than the one that goes into it. Sizes are "
                 "compared as names.",
        .example = "terminal eye-62 {\n"
                   "  length: 62 mm\n"
                   "  lower: wire-socket (construction: \"1x19\", size: \"8 mm\", inserted: 50 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the terminal that is made for this wire.",
    },
    CatalogueEntry{
        .slug = "wire-construction-differs",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "a terminal for round strand does not hold a compacted one or a softer rope",
        .cause = "The terminal is made for another construction of wire.",
        .example = "terminal eye-62 {\n"
                   "  length: 62 mm\n"
                   "  lower: wire-socket (construction: \"7x19\", size: \"6 mm\", inserted: 50 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    eye-62\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the terminal that is made for this construction.",
    },
    CatalogueEntry{
        .slug = "seat-too-narrow",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "the rope does not lie in the groove and is cut by its edges",
        .cause = "The groove of the seat is narrower than the rope.",
        .example = "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 28 mm, width: 8 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the thimble or dead-eye that is made for this rope.",
    },
    CatalogueEntry{
        .slug = "seat-too-small",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "a rope bent sharply over a small seat breaks well below its strength",
        .cause = "The seat is less than twice as thick as the rope; once is the least, and three times is "
                 "better (common practice, no source; it matters most for HMPE).",
        .example = "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 12 mm, width: 10 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take a larger thimble, or a smaller rope where its strength allows.",
    },
    CatalogueEntry{
        .slug = "ends-do-not-join",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words} do not join",
        .why = "nothing can be put through both that holds them together",
        .cause = "Two ends that meet are of sorts that can not be joined, whichever way round the parts "
                 "are used: two eyes, two studs, a stud and an eye.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  upper: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "  lower: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "tang tang-a {\n"
                   "  lower: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "}\n"
                   "terminal eye-62 {\n"
                   "  length: 62 mm\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n"
                   "  lower: wire-socket (inserted: 50 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    tang-a\n"
                   "    eye-62\n"
                   "    line\n"
                   "    eye-62\n"
                   "    toggle-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Look for the part that is missing between the two: a toggle, a link, a shackle. If there "
                "is none, one of the two ends is stated as it is not.",
    },
    CatalogueEntry{
        .slug = "pin-too-short",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why = "the hole for the split pin is inside the cheek and the pin can not be secured",
        .cause = "From under the head of the pin to its hole for the split pin is less than the jaw is "
                 "wide over both cheeks.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\", outside: 26 mm, grip: 24 mm)\n"
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
        .mend = "Take a longer pin. Do not drill a second hole through a pin.",
    },
    CatalogueEntry{
        .slug = "split-pin-small",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words}",
        .why = "a thin split pin is sheared by the pin that turns and works, and the pin comes out",
        .cause =
            "The split pin is thinner than the one that a standard gives to a pin of this size: ISO 1234 "
            "for pins in millimetres, ASME B18.8.1 for pins in inches. Where the load works from side to "
            "side, as in a stay, the next larger one is asked for by IS 549, which is equal to ISO 1234.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\", split-pin: \"2 mm\")\n"
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
        .mend = "Put in the split pin that the hole is drilled for, its ends spread and taped over.",
    },
    CatalogueEntry{
        .slug = "hook-too-small",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why = "it does not go over the eye",
        .cause = "The eye or plate is thicker than the hook is open.",
        .example = "hook hook-60 {\n"
                   "  length: 60 mm\n"
                   "  lower: hook (opening: 8 mm)\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: eye (hole: 20 mm, thickness: 12 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    hook-60\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend =
            "Look both dimensions up again; a larger hook or a shackle is wanted. Do not bend a hook open.",
    },
    CatalogueEntry{
        .slug = "tee-too-big",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why = "it does not go into the slot",
        .cause = "The neck of the tee is thicker than the slot is wide, or its bar is longer than the slot "
                 "is long.",
        .example = "terminal tee-20 {\n"
                   "  length: 60 mm\n"
                   "  lower: tee (neck: 8 mm, head: 15 mm)\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: slot (width: 7 mm, length: 17 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    tee-20\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend =
            "Look both dimensions up again; take the tee that is made for this slot. Do not file the slot.",
    },
    CatalogueEntry{
        .slug = "tee-pulls-through",
        .severity = Severity::error,
        .message = "{stay}, {joint}: {words}",
        .why = "the bar does not bear behind the plate when it is turned: the stay pulls out of the mast",
        .cause = "The bar of the tee is no longer than the slot is wide.",
        .example = "terminal tee-20 {\n"
                   "  length: 60 mm\n"
                   "  lower: tee (neck: 6 mm, head: 7 mm)\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: slot (width: 7 mm, length: 17 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    tee-20\n"
                   "    plate-a\n"
                   "  }\n"
                   "}\n",
        .mend = "Look both dimensions up again; take the tee that is made for this slot.",
    },
    CatalogueEntry{
        .slug = "seat-too-wide",
        .severity = Severity::note,
        .message = "{stay}, {joint}: {words}",
        .why = "the rope lies flat in a wide groove, and its strands do not carry alike",
        .cause = "The groove of the seat is more than one and a half times as wide as the rope (a choice "
                 "of this program, no source).",
        .example = "thimble thimble-16 {\n"
                   "  length: 16 mm\n"
                   "  wrap: 159 mm\n"
                   "  lower: rope-seat (diameter: 28 mm, width: 15 mm)\n"
                   "}\n"
                   "stay shroud {\n"
                   "  pin-to-pin: 10 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the thimble or dead-eye that is made for this rope, or serve the eye until it fills "
                "the groove.",
    },
    CatalogueEntry{
        .slug = "jaws-meet",
        .severity = Severity::warning,
        .message = "{stay}, {joint}: {words} meet with nothing between them",
        .why = "a jaw takes a plate or an eye; the part that goes between the two is not in the stack, and "
               "the stay comes out longer by it",
        .cause = "Two jaws meet, whichever way round the parts are used. A small jaw can go inside a large "
                 "one on the same pin, which is seldom meant.",
        .example = "toggle toggle-60 {\n"
                   "  length: 60 mm\n"
                   "  upper: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n"
                   "}\n"
                   "chainplate plate-a {\n"
                   "  upper: jaw (gap: 14 mm, pin: \"12 mm\")\n"
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
        .mend = "Look for the part between the two, an eye, a link, a plate, and put it into the stack; or "
                "state the end as it is.",
    },
};

} // namespace

std::span<const CatalogueEntry> joint_findings() {
  return entries;
}

} // namespace sheerpole
