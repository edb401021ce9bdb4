#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

// About spars, stacked eyes, layers, sister ships, the command line.
constexpr std::array entries{
    CatalogueEntry{
        .slug = "setting-not-taken",
        .severity = Severity::error,
        .message = "`{setting}` can not be set: {reason}",
        .why = "nothing is worked out with a setting that may have meant something else",
        .cause =
            "A value set on the command line is written as name=value. The name is that of a `let` or a "
            "point, of a declaration and its property (toggle-12.length), of a side (plate-a.port), of a "
            "part in a stack and its setting (forestay.turnbuckle-12.open), or boat and a particular.",
        .example = "--set mast-stepp=25 mm\n",
        .mend = "Look up the name in the file, and put the whole setting in quotes for the shell: --set "
                "\"mast-step=25 mm\".",
    },
    CatalogueEntry{
        .slug = "set-on-command-line",
        .severity = Severity::note,
        .message = "{count} {values} set on the command line: {names}",
        .why = "this is a trial: every cut that rests on it is a DRAFT, whatever source it states",
        .cause = "Values were set from outside with --set. They take the place of those in the files for "
                 "this one run, and count as tried out, not as known.",
        .example = "--set \"mast-step=25 mm\"\n",
        .mend = "Write the value into the file with its source when it is to stay.",
    },
    CatalogueEntry{
        .slug = "layer-replaces",
        .severity = Severity::note,
        .message = "layer {name} replaces {count} {values}: {names}",
        .why = "the lengths rest on what the layer says, no longer on what it replaces",
        .cause = "A later layer states what differs from the design as it was ordered, made or fitted. "
                 "What it states takes the place of the earlier value everywhere.",
        .example = "layer fitted {\n"
                   "  points {\n"
                   "    plate-a.port: (-0.622, -1.431, 1.100) m measured\n"
                   "  }\n"
                   "}\n",
        .mend =
            "Nothing, if that is how she is. `show differences` lists each value as it was and as it is.",
    },
    CatalogueEntry{
        .slug = "sister-differs",
        .severity = Severity::note,
        .message = "{name} differs from the boat she is made from in {count} {values}: {names}",
        .why = "every other number is that of the other boat; nobody has measured it on this one",
        .cause = "The boat of this file is made `from` another. What this file states takes the place of "
                 "what the other file states; the rest is inherited.",
        .example = "use \"smidgeon.rig\"\n"
                   "boat fieldfare \"Fieldfare\" from smidgeon { }\n"
                   "points {\n"
                   "  plate-upper.port: (-0.309, -0.921, 0.657) m measured\n"
                   "}\n",
        .mend = "Measure what decides a cut on this boat; sister ships differ. `show differences` lists "
                "each value as it was and as it is.",
    },
    CatalogueEntry{
        .slug = "measured-wins",
        .severity = Severity::warning,
        .message = "layer {layer} states {what} anew without having measured it; the measured value stays",
        .why = "a number taken from the boat is not given up for one that was not",
        .cause = "A layer states a value over one that is marked `measured`, and does not say that it was "
                 "measured again.",
        .example = "layer made {\n"
                   "  toggle toggle-12 {\n"
                   "    length: 60 mm drawn\n"
                   "  }\n"
                   "}\n",
        .mend = "Mark the new value `measured` if it was, or take the line out of the layer.",
    },
    CatalogueEntry{
        .slug = "unknown-finding",
        .severity = Severity::error,
        .message = "{written} is not the name of a finding or of a rule",
        .why = "nothing would be waived, and the finding that was meant would go on counting",
        .cause = "`waive` is followed by the name of the finding that is to be left standing, as it is "
                 "printed in brackets behind the place.",
        .example = "waive adjuster-near-the-end {\n"
                   "  reason: \"checked\"\n"
                   "  by: \"owner\"\n"
                   "  until: 2027-05-01\n"
                   "}\n",
        .mend = "Copy the name from the finding; `list findings` shows all.",
    },
    CatalogueEntry{
        .slug = "on-not-here",
        .severity = Severity::error,
        .message = "{kind} can not stand on a spar",
        .why = "only points have a place on a spar",
        .cause = "The word `on` and the name of a spar belong to `points`: these are then measured from "
                 "the heel of the spar and move with it.",
        .example = "stay forestay on mast {\n"
                   "}\n",
        .mend = "Take out `on` and the name behind it.",
    },
    CatalogueEntry{
        .slug = "axis-along-boat",
        .severity = Severity::error,
        .message = "the axis of {spar} lies along the boat, as if the spar lay down",
        .why = "it does not say which way is up, so points on it would have no height; a bowsprit or a "
               "boomkin states its `steeve` instead",
        .cause = "The axis of a mast is its direction from the heel, upwards. A bowsprit or a boomkin has "
                 "no axis but a steeve.",
        .example = "spar mast {\n"
                   "  sort: mast\n"
                   "  heel: (0, 0, 1.4) m\n"
                   "  axis: (1, 0, 0) m\n"
                   "}\n",
        .mend = "State the direction from heel to masthead, or for a bowsprit its `steeve`.",
    },
    CatalogueEntry{
        .slug = "shop-not-usable",
        .severity = Severity::error,
        .message = "lengths can not be restated for the shop {shop}: {fault}",
        .why =
            "a line cut to another convention than the one that was meant comes out too long or too short",
        .cause = "`--shop NAME` restates the lengths for how far open that shop delivers its screws. The "
                 "shop is declared in the file and states delivered-open.",
        .example = "shop loft {\n"
                   "  round-to: 1 mm      # and with --shop loft: how far open does it deliver?\n"
                   "}\n",
        .mend = "Declare the shop, with delivered-open, or name another one.",
    },
    CatalogueEntry{
        .slug = "point-on-two-spars",
        .severity = Severity::error,
        .message = "{point} stands on {other}, and {spar} carries it as well",
        .why = "it would move with one of the two when they grow, and nobody could say with which",
        .cause = "A point is stated in the frame of one spar, or carried by one.",
        .example = "spar mast {\n"
                   "  sort: mast\n"
                   "  heel: (0, 0, 1.4) m\n"
                   "  carries: masthead\n"
                   "}\n"
                   "spar topmast {\n"
                   "  sort: topmast\n"
                   "  heel: (0, 0, 9) m\n"
                   "  carries: masthead\n"
                   "}\n"
                   "points {\n"
                   "  masthead: (0, 0, 14) m\n"
                   "}\n",
        .mend = "Leave it with the spar that it is made fast to.",
    },
    CatalogueEntry{
        .slug = "axis-and-lean",
        .severity = Severity::error,
        .message = "{spar} states both its {first} and its {lean}",
        .why = "two statements of how it leans could disagree",
        .cause = "An axis, a rake and a steeve each say how a spar leans. Two of them say it twice.",
        .example = "spar mast {\n"
                   "  sort: mast\n"
                   "  heel: (0, 0, 1.4) m\n"
                   "  axis: (-0.05, 0, 1) m\n"
                   "  rake: 3 deg\n"
                   "}\n",
        .mend = "Keep one of the two.",
    },
    CatalogueEntry{
        .slug = "eye-needs-side",
        .severity = Severity::error,
        .message = "{stay} has two sides, and the eyes of {stack} are stacked one by one",
        .why = "which of the two sits lower decides both lengths",
        .cause = "Soft eyes sit one above the other, so the starboard eye of a pair is lower or higher "
                 "than the port one.",
        .example = "eye-stack gang {\n"
                   "  seat: hounds\n"
                   "  rise: 30 mm\n"
                   "  order: shroud\n"
                   "}\n",
        .mend = "Name each side: shroud.starboard, shroud.port.",
    },
    CatalogueEntry{
        .slug = "eye-twice",
        .severity = Severity::error,
        .message = "{stay} is named twice in the order of {stack}",
        .why = "one eye can not sit in two places",
        .cause = "A stay has one eye in the stack.",
        .example = "eye-stack gang {\n"
                   "  seat: hounds\n"
                   "  rise: 30 mm\n"
                   "  order: shroud.port, shroud.port\n"
                   "}\n",
        .mend = "Take one of the two out.",
    },
    CatalogueEntry{
        .slug = "eye-not-at-seat",
        .severity = Severity::error,
        .message = "{stay} does not begin at {seat}, where {stack} sits",
        .why = "its length would be worked out from another place than where its eye is",
        .cause = "The stays of a stack of eyes have the seat as the first point of their path; each eye "
                 "above the lowest is lifted from there.",
        .example = "eye-stack gang {\n"
                   "  seat: hounds\n"
                   "  rise: 30 mm\n"
                   "  order: forestay\n"
                   "}\n",
        .mend = "Begin the path of the stay at the seat, or take the stay out of the order.",
    },
    CatalogueEntry{
        .slug = "change-not-in-stack",
        .severity = Severity::error,
        .message = "{part} is not in the stack of {stay}",
        .why = "a setting of something that is not there would change nothing",
        .cause = "Changes, positions and inspections speak of parts that stand in the stack of the stay.",
        .example = "stay forestay.port {\n"
                   "  changes {\n"
                   "    turnbuckle-16 (open: 60 %)\n"
                   "  }\n"
                   "}\n",
        .mend = "Name a part of the stack, or put the part into the stack first.",
    },
    CatalogueEntry{
        .slug = "change-not-one",
        .severity = Severity::error,
        .message = "{part} is in the stack of {stay} more than once",
        .why = "it is not known which of them is meant",
        .cause = "Changes and positions name a part; where the stack holds it twice, the name does not say "
                 "which one.",
        .example = "stay forestay {\n"
                   "  stack {\n"
                   "    link-80\n"
                   "    line\n"
                   "    link-80\n"
                   "  }\n"
                   "  changes {\n"
                   "    link-80 (spare-bury: 1 m)\n"
                   "  }\n"
                   "}\n",
        .mend = "State the whole stack anew, or give one of the two a name of its own with `from`.",
    },
    CatalogueEntry{
        .slug = "sides-of-one-side",
        .severity = Severity::error,
        .message = "{stay}.{side} is one side already, and can not have sides",
        .why = "a stay that exists on one side only is not stated by the other",
        .cause = "The block states one side of a stay apart. Which sides there are is said where the stay "
                 "is declared.",
        .example = "stay cap-shroud.port {\n"
                   "  sides: starboard\n"
                   "}\n",
        .mend = "State `sides` in the declaration of the stay itself.",
    },
};

} // namespace

std::span<const CatalogueEntry> overlay_findings() {
  return entries;
}

} // namespace sheerpole
