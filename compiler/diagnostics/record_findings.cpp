#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

// About states, expectations, rules, waivers.
constexpr std::array entries{
    CatalogueEntry{
        .slug = "adjuster-between-holes",
        .severity = Severity::warning,
        .message =
            "{stay}: {part} is set to {set}, between its holes; hole {hole} makes it {there}, {off} {way}",
        .why = "it can only be pinned in a hole, so the stay will be that much off",
        .cause =
            "A hole-adjuster has steps. The length that is stated for it is not that of one of its holes.",
        .example = "hole-adjuster plate-12-holes {\n"
                   "  shortest: 60 mm\n"
                   "  longest: 170 mm\n"
                   "  step: 10 mm\n"
                   "}\n",
        .mend = "State the hole (`hole: 6`), or make the line longer or shorter by the difference.",
    },
    CatalogueEntry{
        .slug = "state-out-of-range",
        .severity = Severity::error,
        .message =
            "{stay} in the state {state}: {part} is set to {set}, {amount} beyond its {which} of {end}",
        .why = "it can not be brought there, so the rig never stands like this",
        .cause = "A state moves adjusters. Here one is moved beyond the range that its part states.",
        .example = "state runner-off {\n"
                   "  position of runner {\n"
                   "    runner-tackle (length: 9 m)\n"
                   "  }\n"
                   "}\n",
        .mend = "Correct the setting, or the range of the part.",
    },
    CatalogueEntry{
        .slug = "expectation-missed",
        .severity = Severity::error,
        .message = "{stay}: {quantity} is {found}, not {expected} ± {bound}; it is off by {off}",
        .why = "somebody wrote down what should come out, and it does not",
        .cause =
            "An `expect` line holds a calculated value against a number from outside: a hand calculation, "
            "an old stay, an invoice. An edit has moved the result, or the number was never right.",
        .example = "expect forestay.body = 10_888 mm ± 1 mm\n",
        .mend = "Find out which of the two is right before anything is cut. `check --print lengths` shows "
                "the sum.",
    },
    CatalogueEntry{
        .slug = "expectation-not-checked",
        .severity = Severity::note,
        .message = "{stay}: {quantity} is expected but not checked: {reason}",
        .why = "not checked is not the same as right",
        .cause = "The quantity has no number, because the length is X or an input is missing, or there are "
                 "several of it in this stay.",
        .example = "expect backstay-upper.cut = 11_000 mm ± 1 mm\n",
        .mend = "State the missing input, or expect a quantity of which the stay has one.",
    },
    CatalogueEntry{
        .slug = "expect-without-tolerance",
        .severity = Severity::error,
        .message = "what is expected of {stay} has no tolerance",
        .why = "equal to the last digit is never true of a length",
        .cause = "A calculated length is compared within a bound, and the bound is a choice of whoever "
                 "writes the line.",
        .example = "expect forestay.body = 10_888 mm\n",
        .mend = "Put the bound behind the value: 10_888 mm ± 1 mm.",
    },
    CatalogueEntry{
        .slug = "rule-without-bound",
        .severity = Severity::error,
        .message = "the rule {rule} states {words}",
        .why = "it could never find anything",
        .cause = "A rule holds what it looks at against one or two bounds, a word, or asks that it is "
                 "stated at all.",
        .example = "rule short-body {\n"
                   "  quantity: body\n"
                   "  severity: warning\n"
                   "  message: \"too short for our bench\"\n"
                   "}\n",
        .mend =
            "State `at-least` or `at-most` for a number, `is` or `is-not` for a word, or `stated: yes`.",
    },
    CatalogueEntry{
        .slug = "rule-does-not-fit",
        .severity = Severity::error,
        .message = "the rule {rule}: {words}",
        .why = "it could not be looked at, or would say something else than was meant",
        .cause = "A rule looks at one quantity of the stays, or at one property of stays, parts, lines, "
                 "splices or spreaders. A number is held against `at-least` and `at-most`, everything else "
                 "against `is` and `is-not`.",
        .example = "rule locked-our-way {\n"
                   "  looks-at: parts\n"
                   "  sort: turnbuckle\n"
                   "  property: locked\n"
                   "  at-least: 2 mm\n"
                   "  severity: warning\n"
                   "  message: \"we lock screws with split pins\"\n"
                   "}\n",
        .mend = "Take out what does not go with the rest, as the message says.",
    },
    CatalogueEntry{
        .slug = "rule-switched-off",
        .severity = Severity::note,
        .message = "the rule {rule} is switched off",
        .why = "what it would find is not looked for",
        .cause = "The rule states `active: off`.",
        .example = "rule short-body {\n"
                   "  quantity: body\n"
                   "  at-least: 1 m\n"
                   "  severity: warning\n"
                   "  message: \"too short for our bench\"\n"
                   "  active: off\n"
                   "}\n",
        .mend = "Take the line out to have the rule back.",
    },
    CatalogueEntry{
        .slug = "limit-switched-off",
        .severity = Severity::note,
        .message = "the limit {limit} is switched off; it is used by {checks}",
        .why = "what it would find is not looked for",
        .cause = "A block `limits` states `off` for this limit.",
        .example = "limits {\n"
                   "  side-play: off\n"
                   "}\n",
        .mend = "Take the line out to have the check back, or state the amount that you hold to.",
    },
    CatalogueEntry{
        .slug = "waiver-without-finding",
        .severity = Severity::note,
        .message = "{slug} is waived for {stay}, but there is no such finding",
        .why = "either the finding is gone, or it is about something else, such as both sides at once",
        .cause = "The finding is gone, or it is about another stay, or about both sides where the waiver "
                 "names one.",
        .example = "waive adjuster-near-end of forestay {\n"
                   "  reason: \"checked\"\n"
                   "  by: \"owner\"\n"
                   "  until: 2027-05-01\n"
                   "}\n",
        .mend = "Take the waiver out, or name the subject as the finding does.",
    },
    CatalogueEntry{
        .slug = "error-not-waived",
        .severity = Severity::warning,
        .message = "{slug} is an error, and an error can not be waived",
        .why = "with an error there is no length to cut to",
        .cause = "Warnings and notes can be left standing; an error means that a length is not known or "
                 "can not be made.",
        .example = "waive negative-body of forestay {\n"
                   "  reason: \"later\"\n"
                   "  by: \"owner\"\n"
                   "  until: 2027-05-01\n"
                   "}\n",
        .mend = "Put right what the error is about.",
    },
    CatalogueEntry{
        .slug = "waiver-date-not-checked",
        .severity = Severity::note,
        .message = "{slug} is waived until {until}; whether that day is past is not checked, because the "
                   "boat states no report-date",
        .why = "a waiver that is over should no longer hide its finding",
        .cause = "Outputs must be the same on every day, so the day is not taken from the clock.",
        .example = "boat \"Demo\" {\n"
                   "}\n"
                   "waive adjuster-near-end {\n"
                   "  reason: \"checked\"\n"
                   "  by: \"owner\"\n"
                   "  until: 2027-05-01\n"
                   "}\n",
        .mend =
            "State `report-date` in the boat, or set it for one run: --set boat.report-date=2026-11-25.",
    },
    CatalogueEntry{
        .slug = "rule-name-taken",
        .severity = Severity::error,
        .message = "{rule} is the name of a finding of Sheerpole itself",
        .why = "two things under one name could not be told apart, nor waived apart",
        .cause = "A rule is reported under its own name, and this name is taken.",
        .example = "rule adjuster-near-end {\n"
                   "  quantity: to-tighten\n"
                   "  at-least: 20 mm\n"
                   "  severity: warning\n"
                   "  message: \"too little left to tighten\"\n"
                   "}\n",
        .mend = "Give the rule another name, such as one that begins with that of the loft.",
    },
};

} // namespace

std::span<const CatalogueEntry> record_findings() {
  return entries;
}

} // namespace sheerpole
