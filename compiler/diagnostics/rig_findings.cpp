#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "negative-body",
        .severity = Severity::error,
        .message =
            "{stay}: the stack takes {hardware} of a pin-to-pin length of {pin-to-pin}; {amount} too "
            "much, nothing is left for the line",
        .why = "there is no rope or wire to cut; either the hardware or the pin-to-pin length is wrong",
        .cause = "The body is what is left of the pin-to-pin length when every part above and below the "
                 "line, and every "
                 "line with a length of its own, has been taken off. Here they take more than there is. "
                 "The usual slips: "
                 "a part counted twice, centimetres written for millimetres or the other way round, a path "
                 "that misses a "
                 "point, a reading of another stay.",
        .example = "stay lower-shroud {\n"
                   "  pin-to-pin: 445 mm        # 4_453 mm was meant\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-9   (splice: long-bury)\n"
                   "    line\n"
                   "    deadeye-9   (splice: long-bury)\n"
                   "    lashing-9   (gap: 400 mm)\n"
                   "  }\n"
                   "}\n",
        .mend = "Look at the longest part of the stack first, then at the pin-to-pin length and its unit. "
                "Print the "
                "body as its sum: one line a part shows which of them is out of place.",
    },
    CatalogueEntry{
        .slug = "adjuster-out-of-range",
        .severity = Severity::error,
        .message = "{stay}: {part} is set to {set}, {amount} {beyond} than its {which} of {end}",
        .why = "it can not be brought to that length: the line would be made to a body that does not fit",
        .cause = "Every adjuster has a shortest length, closed, and a longest, at the last thread or the "
                 "last turn "
                 "that may be used. The setting lies outside. Often the part is the next size of the same "
                 "family, or "
                 "the gap was measured to another bearing than the range was.",
        .example = "turnbuckle bottle-58 {\n"
                   "  shortest: 320 mm\n"
                   "  longest: 470 mm\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  pin-to-pin: 15_443 mm\n"
                   "  line: wire-38\n"
                   "  stack {\n"
                   "    line\n"
                   "    bottle-58   (length: 495 mm)\n"
                   "  }\n"
                   "}\n",
        .mend = "Set the adjuster inside its range and let the body take the difference, put a toggle or a "
                "link in, "
                "or choose the adjuster with the longer range.",
    },
    CatalogueEntry{
        .slug = "thread-engagement-low",
        .severity = Severity::warning,
        .message = "{stay}: {part} has {engaged} of thread in the body, {amount} less than {bound} of its "
                   "{thread} thread ({least})",
        .why = "a stud that holds by a few threads strips or bends, and in a closed body nobody sees it",
        .cause = "Opening an adjuster takes thread out of its body. At this setting each stud has less "
                 "left in it than "
                 "one diameter. One diameter is common practice, without a published source; some riggers "
                 "ask for "
                 "three turns instead.",
        .example = "turnbuckle bottle-12 {\n"
                   "  shortest: 265 mm\n"
                   "  longest: 395 mm\n"
                   "  thread: \"1/2-20 UNF\"\n"
                   "  screw: pair\n"
                   "  engaged-at-longest: 8 mm\n"
                   "}\n"
                   "stay aft-lower {\n"
                   "  pin-to-pin: 5_278 mm\n"
                   "  line: wire-516\n"
                   "  stack {\n"
                   "    line\n"
                   "    bottle-12   (open: 97 %)\n"
                   "  }\n"
                   "}\n",
        .mend = "Close the adjuster and take the difference up elsewhere: a toggle or a link more, or a "
                "longer body. "
                "If the longest was measured to the very last thread, measure it again to the last one "
                "that may be "
                "used.",
    },
    CatalogueEntry{
        .slug = "adjuster-near-end",
        .severity = Severity::warning,
        .message = "{stay}: {part} has {amount} left {way} of a range of {range}; less than {share}",
        .why = "bedding in, stretch and a body a little off its length all come out of this reserve",
        .cause = "The setting lies close to one end of the adjuster. New rope beds in and new wire "
                 "stretches, so a stay "
                 "that begins near closed can soon not be tightened any more; one that begins near open "
                 "can not be "
                 "let go. The share is a choice of this project, without a source. A lever, which belongs "
                 "at its end, "
                 "is not looked at.",
        .example = "turnbuckle bottle-58 {\n"
                   "  shortest: 320 mm\n"
                   "  longest: 470 mm\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  pin-to-pin: 15_443 mm\n"
                   "  line: wire-38\n"
                   "  stack {\n"
                   "    line\n"
                   "    bottle-58   (length: 325 mm)\n"
                   "  }\n"
                   "}\n",
        .mend = "Set the adjuster where it has room both ways and let the body take the difference. If the "
                "line is "
                "made already, a toggle or a link in or out moves the adjuster by its length.",
    },
    CatalogueEntry{
        .slug = "take-up-spent",
        .severity = Severity::warning,
        .message = "{stay}: the adjuster is {short} short of {direction} after {after}",
        .why =
            "what is drawn from it is more than it has, and a stay that can not be set again is to be made "
            "anew",
        .cause =
            "Bedding-in, creep, the coldest and the warmest day and the uncertainty of the length draw on "
            "one account: what the adjuster can still take up, and what it can give out. What is not "
            "known is not counted, so the account may be worse than it says.",
        .example = "rope hmpe-9 {\n"
                   "  construction: \"12-strand HMPE heat-set\"\n"
                   "  size: \"9 mm\"\n"
                   "  bedding: 2 %\n"
                   "}\n"
                   "stay runner {\n"
                   "  pin-to-pin: 12 m\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    line\n"
                   "    cord-4 (gap: 160 mm, passes: 6)   # 100 mm to tighten, and 237 mm will come\n"
                   "  }\n"
                   "}\n",
        .mend = "Set the adjuster further open and cut the line shorter, pre-tension the rope before it is "
                "marked, or state bedding-from: cut.",
    },
    CatalogueEntry{
        .slug = "no-fit",
        .severity = Severity::warning,
        .message = "{stay}: with the parts in hand the line of {line} does not fit; the nearest is {off} "
                   "{direction}",
        .why = "the adjuster can not be set within the band that is wanted",
        .cause =
            "A fit asks which of the parts in hand, added to the stack, and which setting of the adjuster "
            "make a line of known length fit. None of them comes into the band. Too short: more length "
            "is wanted; too long: there is too much already.",
        .example = "turnbuckle bottle-58 {\n"
                   "  shortest: 320 mm\n"
                   "  longest: 470 mm\n"
                   "}\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 12_000 mm\n"
                   "  line: wire-38\n"
                   "  stack {\n"
                   "    line\n"
                   "    bottle-58 (open: 50 %)\n"
                   "  }\n"
                   "}\n"
                   "fit of forestay {\n"
                   "  line-length: 11_500 mm     # 500 mm are left, and 470 mm are the most\n"
                   "}\n",
        .mend = "Find other parts, widen the band, or make the line anew.",
    },
    CatalogueEntry{
        .slug = "test-splice-reversed",
        .severity = Severity::error,
        .message = "the test splice of {rope} is {what}, than {against}",
        .why =
            "a bury shortens a rope and setting gives part of that back; read the other way round it would "
            "make the stay too short",
        .cause =
            "Between the two marks the rope is longest before the weave is opened, shortest when it is "
            "spliced, and between the two when it is set.",
        .example = "test-splice of hmpe-9 {\n"
                   "  bury: 648 mm\n"
                   "  before: 1_950 mm\n"
                   "  after: 2_000 mm      # the two are the wrong way round\n"
                   "}\n",
        .mend = "Look the three lengths up again; before and after may have changed places.",
    },
    CatalogueEntry{
        .slug = "routes-differ",
        .severity = Severity::warning,
        .message = "{stay}: pin-to-pin is {taken} and {other}, {difference} apart",
        .why = "one of the two is wrong, and the line is cut to the first",
        .cause = "The same length is known in two ways and they disagree by more than 5 mm (a choice of "
                 "this project, "
                 "without a source). A reading counts before a stated length, and that before the points. "
                 "Slips that "
                 "explain it: the tape hooked to another bearing, a hook or hoist offset forgotten, a "
                 "toggle counted "
                 "twice, the next hole of a chainplate, feet and inches read as decimal feet, the other "
                 "side of the "
                 "boat.",
        .example = "points {\n"
                   "  tang:   (-0.040 m, 0.065 m, 5.380 m)\n"
                   "  plate:  (-0.580 m, 1.280 m, 1.130 m)\n"
                   "}\n"
                   "stay lower-shroud {\n"
                   "  path: tang > plate\n"
                   "  pin-to-pin: 4_543 mm      # 4_453 mm was meant\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Compare the difference with the lengths of the parts and with the offset of the reading; "
                "measure once "
                "more what is easiest to reach. Then mend the point, or the reading, or leave the stated "
                "length out.",
    },
    CatalogueEntry{
        .slug = "pair-differs",
        .severity = Severity::note,
        .message =
            "{stay}: the {longer} body is {difference} longer than the {shorter} one ({longer-body} and "
            "{shorter-body}); they may differ by {tolerance}",
        .why = "these are two pieces of different length: cut and tag each for its side",
        .cause =
            "Port and starboard come from a mirrored declaration and something on one side was stated "
            "apart: a "
            "chainplate as measured, a reading of one side. The bodies then differ by more than the boat's "
            "pair tolerance. That is how boats are; it is said so that nobody cuts two off.",
        .example = "boat \"Example\" {\n"
                   "  pair-tolerance: 2 mm\n"
                   "}\n"
                   "points {\n"
                   "  tang:            (-0.040 m, 0.065 m, 5.380 m) mirrored\n"
                   "  plate:           (-0.580 m, 1.280 m, 1.130 m) mirrored\n"
                   "  plate.starboard: (-0.580 m, 1.291 m, 1.122 m) measured\n"
                   "}\n"
                   "stay lower-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: tang > plate\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Nothing, when the boat is like that. When it surprises, measure both chainplates again "
                "from the same "
                "zero.",
    },
    CatalogueEntry{
        .slug = "cut-is-draft",
        .severity = Severity::note,
        .message = "the cut length of {piece} is a DRAFT: {what} not stated",
        .why = "what is not stated was left out of the sum, so that the piece would come out too short",
        .cause = "A cut length is the body and what each end uses: eye, bury, tail and contraction of a "
                 "splice, the "
                 "depth in a wire terminal. One of these is nowhere in the file. It is not filled in with "
                 "a usual "
                 "value, because usual values differ by rope and by maker, and a rope is cut once.",
        .example = "splice long-bury {\n"
                   "  bury: 72 d\n"
                   "  eye-allowance: 12 d\n"
                   "}\n"
                   "rope hmpe-9 {\n"
                   "  construction: \"12-strand HMPE heat-set\"\n"
                   "  size: \"9 mm\"\n"
                   "}\n"
                   "thimble thimble-9 {\n"
                   "  length: 16 mm\n"
                   "}\n"
                   "stay lower-shroud {\n"
                   "  pin-to-pin: 4_453 mm\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-9   (splice: long-bury)\n"
                   "    line\n"
                   "    thimble-9   (splice: long-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Measure or ask for what is named: contraction from a test splice on the same rope, the "
                "eye from a "
                "test wrap round the same thimble, the insertion depth from the maker of the terminal. "
                "Where it is "
                "known to be nothing, state 0.",
    },
    CatalogueEntry{
        .slug = "assumed-input",
        .severity = Severity::note,
        .message = "{value} is assumed, and the cut of {pieces} rests on it",
        .why = "these pieces stay a DRAFT until somebody has measured it or has it in writing",
        .cause = "A value is marked `assumed`. It was carried through every sum that uses it, and these "
                 "are the pieces "
                 "that it moves.",
        .example = "splice long-bury {\n"
                   "  bury: 72 d practice\n"
                   "  eye-allowance: 12 d practice\n"
                   "  contraction: 8 % assumed\n"
                   "}\n"
                   "rope hmpe-9 {\n"
                   "  construction: \"12-strand HMPE heat-set\"\n"
                   "  size: \"9 mm\"\n"
                   "}\n"
                   "thimble thimble-9 {\n"
                   "  length: 16 mm\n"
                   "}\n"
                   "stay lower-shroud {\n"
                   "  pin-to-pin: 4_453 mm\n"
                   "  line: hmpe-9\n"
                   "  stack {\n"
                   "    thimble-9   (splice: long-bury)\n"
                   "    line\n"
                   "    thimble-9   (splice: long-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Measure it, write the number and say `measured` in place of `assumed`; or name the maker, "
                "the standard "
                "or the drawing that it is from.",
    },
    CatalogueEntry{
        .slug = "splice-on-wire",
        .severity = Severity::error,
        .message = "{stay}: {splice} at {part} is a splice of a rope, and {line} is a {kind}",
        .why = "a wire, a rod or a chain is not buried in itself: the cut would be made for an end that "
               "can not be",
        .cause = "The setting `splice` belongs to the part that takes a rope. The line beside it is none: "
                 "the line was changed, or the part taken from a rope stay.",
        .example = "stay forestay {\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    thimble-16 (splice: long-bury)\n"
                   "    line\n"
                   "    screw-12 (open: 50 %)\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the splice out and name a terminal with a wire-socket, or make the line a rope.",
    },
    CatalogueEntry{
        .slug = "path-runs-upwards",
        .severity = Severity::warning,
        .message = "{stay}: its path ends at {last}, {amount} higher than it begins, at {first}",
        .why = "path and stack are read from aloft to deck; turned round, the upper hardware would be at "
               "the lower end",
        .cause = "The path is written from aloft to deck, as the stack is. Here the last point is higher "
                 "than the first: the path stands the other way round, or a height has a slip, such as "
                 "0.91 m for 9.1 m.",
        .example = "stay cap-shroud {\n"
                   "  path: plate-a > tip free > cap-tang\n"
                   "}\n",
        .mend = "Turn the path round, or put the height right. Where a stay does run upwards, waive it "
                "with the reason.",
    },
};

} // namespace

std::span<const CatalogueEntry> rig_findings() {
  return entries;
}

} // namespace sheerpole
