#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "reading-bare",
        .severity = Severity::note,
        .message = "{stay}: its length rests on a reading by {method} that states {not} {what}",
        .why = "a slack tape hangs and a warm one is long: how much can be worked out only from what "
               "stands beside the reading",
        .cause = "A length as read is that of one day: the pull on the tape, or the tension of the old "
                 "stay, and the temperature belong to it (common practice, no source). A messenger cord "
                 "carries no number and is not looked at; light has no pull.",
        .example = "reading of forestay {\n"
                   "  method: tape\n"
                   "  runs: 11_640 mm, 11_642 mm\n"
                   "}\n",
        .mend = "State `pull` and `temperature` in the reading. What nobody wrote down at the time stays "
                "open: measure again before you cut to it.",
    },
    CatalogueEntry{
        .slug = "tape-sags",
        .severity = Severity::warning,
        .message = "{stay}: the tape sagged by {amount} of length as it was read; at most {most}",
        .why = "the correction is worked out from pull and mass, and is no better known than the pull of a "
               "hand",
        .cause = "The tape hung free over its spans and was pulled so lightly that its sag lengthened the "
                 "reading by more than the limit `tape-sag`. The sag is that of the tape correction in the "
                 "surveying texts.",
        .example = "reading of forestay {\n"
                   "  method: tape\n"
                   "  runs: 14_500 mm\n"
                   "  with: steel-tape\n"
                   "  pull: 20 N\n"
                   "  spans: 14.5 m\n"
                   "  slope: 0 deg\n"
                   "}\n",
        .mend = "Pull harder, 50 N or more, or support the tape, and read again.",
    },
    CatalogueEntry{
        .slug = "reading-old",
        .severity = Severity::note,
        .message =
            "{stay}: its length rests on a reading of {date}, {age} before the report; the limit is {most}",
        .why = "masts are moved, plates are renewed and hulls settle: what was true then is not known to "
               "be true now",
        .cause = "The reading is older than the limit `reading-age` of the file allows, counted to the "
                 "boat's `report-date`.",
        .example = "limits {\n"
                   "  reading-age: 2 years\n"
                   "}\n",
        .mend = "Measure again, or raise the limit and say why.",
    },
    CatalogueEntry{
        .slug = "made-differs",
        .severity = Severity::note,
        .message = "{what}: {is} as {origin}, {was} as designed, {apart} apart; {most} is the limit",
        .why = "what is on the boat is not what was drawn: the next piece has to be made to the one or to "
               "the other",
        .cause = "A layer states a length that differs from the one outside it by more than the limit "
                 "`made-apart`.",
        .example = "layer made {\n"
                   "  stay forestay {\n"
                   "    pin-to-pin: 11_020 mm measured\n"
                   "  }\n"
                   "}\n",
        .mend = "Nothing, when it is meant. Else look which of the two was written down wrong.",
    },
    CatalogueEntry{
        .slug = "number-without-source",
        .severity = Severity::note,
        .message = "{count}: {names}; the limit is {most}",
        .why = "nobody who reads the sheets can tell what was measured from what was guessed",
        .cause = "A number that a cut length rests on says neither measured, drawn, maker, standard nor "
                 "practice, and the file asks for sources with `untraced-numbers` in its `limits`.",
        .example = "limits {\n"
                   "  untraced-numbers: 0\n"
                   "}\n",
        .mend = "Put a source behind each: `82 mm measured`, `82 mm drawn \"sheet 3\"`. `sheerpole show "
                "sources FILE` lists them all.",
    },
    CatalogueEntry{
        .slug = "installed-without-evidence",
        .severity = Severity::note,
        .message = "{thing} was installed on {date}, and nothing says how that is known",
        .why = "age is what surveyors and insurers ask for, and rigging carries no mark of it: the paper "
               "is the proof",
        .cause = "The file states `installed` and no `evidence`.",
        .example = "stay forestay {\n"
                   "  installed: 2019-04-12\n"
                   "  # evidence: \"invoice of 2019\"\n"
                   "}\n",
        .mend = "State `evidence`: an invoice, a photograph with its date, a survey, a label; or \"owner's "
                "word\".",
    },
    CatalogueEntry{
        .slug = "line-old",
        .severity = Severity::warning,
        .message =
            "{stay}: {line} was {what} on {date}, {age} before the report; the owner's limit is {most}",
        .why = "age is no measure of strength, and old lines break without a sign: somebody set this limit "
               "to be asked",
        .cause = "The line has been in service longer than the limit `wire-age` or `rope-age` that the "
                 "file states. Sheerpole has none of its own: 10 and 15 years are published ages for wire "
                 "at which to take note and to ask for a survey.",
        .example = "limits {\n"
                   "  wire-age: 10 years\n"
                   "}\n",
        .mend = "Have it surveyed or replace it; or waive the finding with a reason and a day.",
    },
    CatalogueEntry{
        .slug = "hardware-old",
        .severity = Severity::warning,
        .message = "{part} was installed on {date}, {age} before the report; the owner's limit is {most}",
        .why = "fatigue and corrosion in a crevice are not seen from outside",
        .cause = "The part has been in service longer than the limit `hardware-age` that the file states. "
                 "Sheerpole has none of its own.",
        .example = "limits {\n"
                   "  hardware-age: 15 years\n"
                   "}\n",
        .mend = "Take it apart and look, replace it, or waive the finding with a reason and a day.",
    },
    CatalogueEntry{
        .slug = "marked-renew",
        .severity = Severity::warning,
        .message = "{stay}, {thing}: to be renewed, by {by} on {date}{note}",
        .why = "somebody who had it in hand said that it has to go",
        .cause = "The last entry of the inspection log about it says `renew`.",
        .example = "finding of forestay {\n"
                   "  date: 2026-04-01\n"
                   "  by: \"owner\"\n"
                   "  condition: renew\n"
                   "  note: \"a strand stands out at the lower terminal\"\n"
                   "}\n",
        .mend = "Renew it, and log that: the last entry counts.",
    },
    CatalogueEntry{
        .slug = "marked-watch",
        .severity = Severity::note,
        .message = "{stay}, {thing}: {condition}, by {by} on {date}{note}",
        .why = "it was not good enough to be forgotten, or nobody could see it",
        .cause = "The last entry of the inspection log about it says `watch` or `not-accessible`.",
        .example = "finding of forestay {\n"
                   "  date: 2026-04-01\n"
                   "  by: \"owner\"\n"
                   "  condition: watch\n"
                   "}\n",
        .mend = "Look again, and log what you find: the last entry counts.",
    },
    CatalogueEntry{
        .slug = "inspection-old",
        .severity = Severity::note,
        .message = "{stay}: last looked at on {date}, {age} before the report; the owner's limit is {most}",
        .why = "cracks grow between two looks",
        .cause = "The last entry of the inspection log about the stay is older than the limit "
                 "`inspection-age` of the file allows, counted to the boat's `report-date`.",
        .example = "limits {\n"
                   "  inspection-age: 1 year\n"
                   "}\n",
        .mend = "Look at it, and log what you find.",
    },
};

} // namespace

std::span<const CatalogueEntry> evidence_findings() {
  return entries;
}

} // namespace sheerpole
