#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "missing-unit",
        .severity = Severity::error,
        .message = "`{number}` has no unit; {what} needs one",
        .why = "a bare number could be millimetres, centimetres or inches, and a cut made to the wrong "
               "one can not be put back",
        .cause = "A number that stands for a length, a force, a mass or the like carries its unit. Only "
                 "counts are plain numbers, such as the passes of a lashing.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82\n"
                   "}\n",
        .mend = "Write the unit behind the number: `82 mm`, `3 1/4 in`, `50 %`, `72 d`.",
    },
    CatalogueEntry{
        .slug = "unknown-unit",
        .severity = Severity::error,
        .message = "`{unit}` is not a unit that is known here",
        .why = "without its unit the number says nothing",
        .cause = "The word behind a number is its unit, and this one is none of them: mm cm m in ft; N kN "
                 "kgf lbf; kg g lb; deg; degC degF K; % d fids turns; kg/m lb/ft and so on. Capital "
                 "letters count: `mm`, not `MM`.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mmm\n"
                   "}\n",
        .mend = "Correct the unit. Inches can be written `in` or with a double quote, feet `ft` or with a "
                "single one.",
    },
    CatalogueEntry{
        .slug = "number-unreadable",
        .severity = Severity::error,
        .message = "`{number}` can not be read as one number",
        .why = "a number that can be read in two ways is a wrong length in one of them",
        .cause = "The figures do not make one number: two points, a comma, blanks inside, or inches of "
                 "twelve and more behind feet.",
        .example = "language 1\n"
                   "let drop = 5' 14\"\n",
        .mend = "Write it with a point as the decimal sign and `_` between groups of figures: `11_642 "
                "mm`, `7 3/8 in`, `38' 7 3/8\"`.",
    },
    CatalogueEntry{
        .slug = "zero-denominator",
        .severity = Severity::error,
        .message = "`{number}` is a fraction with zero below the line",
        .why = "no length is that many parts of nothing",
        .cause = "A fraction such as `3/8` has the number of parts below its line, and here it is zero. "
                 "Usually a figure was lost.",
        .example = "language 1\n"
                   "let drop = 3/0 in\n",
        .mend = "Write the fraction that was meant: halves, quarters, eighths, sixteenths, thirty-seconds "
                "or sixty-fourths.",
    },
    CatalogueEntry{
        .slug = "number-too-large",
        .severity = Severity::error,
        .message = "this number is too large to work with",
        .why = "nothing on a boat is that long or that heavy; a unit or some figures are wrong",
        .cause = "Numbers beyond a million million are refused, and so are results that run beyond what "
                 "can be held.",
        .example = "language 1\n"
                   "let drop = 11_642_000_000_000_000 mm\n",
        .mend = "Look at the figures and the unit once more.",
    },
    CatalogueEntry{
        .slug = "number-wanted",
        .severity = Severity::error,
        .message = "a number with its unit belongs here",
        .why = "a length can not be worked out from it",
        .cause = "A value that is worked out holds numbers, names of `let` values, points, and the signs + "
                 "- * / with blanks round them. A text, a date, a point in place of a number, or a word "
                 "with parentheses can not be calculated with.",
        .example = "language 1\n"
                   "let drop = \"12 mm\"\n",
        .mend = "Write the number without quotes, with its unit: `12 mm`.",
    },
    CatalogueEntry{
        .slug = "wrong-dimension",
        .severity = Severity::error,
        .message = "{what} is {wanted}, and {found} stands here",
        .why = "the number would be taken for something that it is not",
        .cause = "The unit fits another property: degrees where millimetres belong, or a length where a "
                 "force does. In a longer expression one factor is missing or one too many: a length times "
                 "a length is an area.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 kN\n"
                   "}\n",
        .mend = "Write a value of the right sort, such as the example on the reference page of the kind, "
                "or look at the expression step by step.",
    },
    CatalogueEntry{
        .slug = "mass-for-force",
        .severity = Severity::error,
        .message = "{what} is a force, and a mass stands here; the weight of a mass is written in {force}",
        .why = "a break load in kilograms is read by some as a force and by others as a mass; the "
               "strength of a stay must not depend on the reader",
        .cause = "kg and lb are masses. Makers print break loads in them and mean the weight of that mass, "
                 "which is kgf or lbf: 1 kgf is 9.80665 N.",
        .example = "language 1\n"
                   "rope cord {\n"
                   "  construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\"\n"
                   "  break-load: 9_200 kg\n"
                   "}\n",
        .mend = "Write `kgf` for kilograms and `lbf` for pounds, or the newtons of the maker's sheet: `92 "
                "kN`.",
    },
    CatalogueEntry{
        .slug = "mixed-dimensions",
        .severity = Severity::error,
        .message = "{right} can not be {doing} {left}",
        .why = "the sum would be neither",
        .cause = "Only like goes with like: a length with a length, a force with a force. A bare number "
                 "beside a unit is often a forgotten unit. Two temperatures can be taken from one another, "
                 "but not added: a step is written in K.",
        .example = "language 1\n"
                   "let drop = 12 mm + 3 kN\n",
        .mend = "Give both sides the same sort of unit, or look whether a name stands for something else "
                "than you think.",
    },
    CatalogueEntry{
        .slug = "vector-with-number",
        .severity = Severity::error,
        .message = "a place and a single number can not be put together like this",
        .why = "a place has three numbers, and it is not clear which of them is meant",
        .cause = "Places (x, y, z) can be added to and taken from one another, and multiplied or divided "
                 "by a number. A place plus a length, a place times a place, or a number divided by a "
                 "place has no meaning.",
        .example = "language 1\n"
                   "let tang = (0 m, 0.3 m, 10 m)\n"
                   "let higher = tang + 50 mm\n",
        .mend = "Write all three: `tang + (0 mm, 0 mm, 50 mm)`.",
    },
    CatalogueEntry{
        .slug = "vector-not-here",
        .severity = Severity::error,
        .message = "the {what} is one number, and a place (x, y, z) stands here",
        .why = "a length is wanted, and a place has none",
        .cause = "The name, or the parentheses with two commas, stands for a place on the boat. This "
                 "property is a single number.",
        .example = "language 1\n"
                   "points {\n"
                   "  cap-tang: (0 m, 0.3 m, 10 m)\n"
                   "}\n"
                   "toggle toggle-12 {\n"
                   "  length: cap-tang\n"
                   "}\n",
        .mend = "Write the number. The distance between two points comes from the path of a stay.",
    },
    CatalogueEntry{
        .slug = "temperature-multiplied",
        .severity = Severity::error,
        .message = "a temperature is a point on a scale and can not be multiplied, divided or turned round",
        .why = "twice 20 degC is 40 degC on one scale and 313 degC on another",
        .cause = "degC and degF are readings of a thermometer. Two of them can be taken from one another, "
                 "which gives a step, and a step can be added. Steps are written in K.",
        .example = "language 1\n"
                   "let warm = 20 degC * 2\n",
        .mend = "Work with the step from a reference, as in `20 degC + 2 * 5 K`, or write the temperature "
                "out.",
    },
    CatalogueEntry{
        .slug = "division-by-zero",
        .severity = Severity::error,
        .message = "something is divided by zero here",
        .why = "there is no length that this could be",
        .cause = "The value behind the division sign comes out as zero. If it is a name, look at what it "
                 "stands for.",
        .example = "language 1\n"
                   "let parts = 3 - 3\n"
                   "let each = 900 mm / parts\n",
        .mend = "Correct the value, or take the division out.",
    },
    CatalogueEntry{
        .slug = "value-chain-too-long",
        .severity = Severity::error,
        .message = "this value rests on others through more than {limit} steps",
        .why = "nobody can follow a length through so many steps, and a slip in one of them moves it",
        .cause =
            "A named value or a point is worked out from another one, that one from a third, and so on. "
            "Each sum and sign on the way is a step and each name five, so a chain of eighty names is "
            "read. A longer one was most likely written by a program.",
        .example = "# a thousand lines like these, each resting on the one above\n"
                   "let rise-2 = rise-1 + 30 mm\n"
                   "let rise-3 = rise-2 + 30 mm\n",
        .mend = "State a value in between as a number of its own, or work it out from the first one: "
                "`rise-1 + 40 * 30 mm`.",
    },
    CatalogueEntry{
        .slug = "circular-value",
        .severity = Severity::error,
        .message = "{name} is worked out from itself",
        .why = "none of the values in the ring has a number to begin with",
        .cause = "The value of a `let` or a point leads, perhaps over others, back to its own name.",
        .example = "language 1\n"
                   "let upper = total - lower\n"
                   "let total = upper + lower\n"
                   "let lower = 4_453 mm\n",
        .mend = "State one of them as a number: the one that was measured.",
    },
    CatalogueEntry{
        .slug = "value-out-of-range",
        .severity = Severity::error,
        .message = "the {what} is {written}; it can be {limit} {bound}",
        .why = "a number this far off is a slip, and everything that is worked out from it would be "
               "wrong",
        .cause = "Each property has bounds so wide that no boat reaches them. Beyond them the unit is "
                 "usually wrong, a figure was lost or doubled, or a percentage was written as a plain "
                 "number.",
        .example = "language 1\n"
                   "splice long-bury {\n"
                   "  bury: 72 d\n"
                   "  contraction: 80 %\n"
                   "}\n",
        .mend = "Look at the figures and the unit once more.",
    },
    CatalogueEntry{
        .slug = "tolerance-negative",
        .severity = Severity::error,
        .message = "the tolerance of the {what} is negative",
        .why = "an error has a size and no direction",
        .cause = "Behind ± stands how far the value may be off in either direction. It is zero or more.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm ± -2 mm\n"
                   "}\n",
        .mend = "Write it without the minus sign. If the value can only be off in one direction, state "
                "the middle and half of the range.",
    },
    CatalogueEntry{
        .slug = "tolerance-not-here",
        .severity = Severity::error,
        .message = "the {what} can not carry a tolerance",
        .why = "it would be lost without a sign, and the length would look more certain than it is",
        .cause = "A tolerance belongs to a number: a length, a force, a share. A text, a size, a word, a "
                 "count, a date and the heel or axis of a spar have none.",
        .example = "language 1\n"
                   "spar mast {\n"
                   "  sort: mast\n"
                   "  heel: (0 m, 0 m, 1.4 m) ± 5 mm\n"
                   "}\n",
        .mend = "Put it behind the number that it belongs to, or keep it as a comment behind `#`.",
    },
    CatalogueEntry{
        .slug = "whole-number-wanted",
        .severity = Severity::error,
        .message = "the {what} is a whole number from 1 to {most}",
        .why = "a part can not sit in the stack half a time",
        .cause = "Counts are plain whole numbers without a unit.",
        .example = "language 1\n"
                   "lashing cord-4 {\n"
                   "  shortest: 60 mm\n"
                   "  longest: 260 mm\n"
                   "}\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "    cord-4 (gap: 160 mm, passes: 2.5)\n"
                   "  }\n"
                   "}\n",
        .mend = "Write the count: `passes: 6`.",
    },
    CatalogueEntry{
        .slug = "one-value-wanted",
        .severity = Severity::error,
        .message = "the {what} is one value, and several stand here",
        .why = "one of them would be taken and the others lost",
        .cause = "A comma or a `>` makes a list or a path of it. Lists belong to `sides` and to the `runs` "
                 "of a reading, and `>` to the path of a stay. A comma as the decimal sign reads as a list "
                 "too.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm, 85 mm\n"
                   "}\n",
        .mend = "Keep the one that is meant. The decimal sign is a point.",
    },
    CatalogueEntry{
        .slug = "text-wanted",
        .severity = Severity::error,
        .message = "the {what} is a text in quotes, such as {example}",
        .why = "free text without quotes would be read as names of other things",
        .cause = "This property is plain text. It stands in double quotes, on one line.",
        .example = "language 1\n"
                   "rope cord {\n"
                   "  construction: braided\n"
                   "  size: \"9 mm\"\n"
                   "}\n",
        .mend = "Put the words in double quotes.",
    },
    CatalogueEntry{
        .slug = "date-unreadable",
        .severity = Severity::error,
        .message = "the {what} is not a day of the calendar",
        .why = "a measurement that can not be dated can not be compared with a later one",
        .cause = "Days are written year, month, day: `2026-05-02`. The figures here are another order, or "
                 "the month has no such day.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n"
                   "reading of forestay {\n"
                   "  method: tape\n"
                   "  runs: 11_640 mm\n"
                   "  date: 2026-02-30\n"
                   "}\n",
        .mend = "Write it as year-month-day with four, two and two figures.",
    },
    CatalogueEntry{
        .slug = "size-not-quoted",
        .severity = Severity::error,
        .message = "the {what} is a size by name, in quotes, such as {example}",
        .why = "a named size is compared as a name too: 5/16 in and 8 mm are nearly equal and still not "
               "the same pin",
        .cause = "Pins, ropes and wires are sold by a size that is a name. It stands in double quotes, so "
                 "that nothing works it over into another number.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm\n"
                   "  upper: jaw (pin: 12 mm)\n"
                   "}\n",
        .mend = "Put it in quotes: `\"12 mm\"`. If it was measured with a caliper, name the size that it "
                "is sold by.",
    },
    CatalogueEntry{
        .slug = "size-unreadable",
        .severity = Severity::error,
        .message = "`{size}` is not a size that can be compared",
        .why = "a pin whose size can not be read is not checked against its hole",
        .cause = "A named size is a number with mm or in: `\"9 mm\"`, `\"5/16 in\"`.",
        .example = "language 1\n"
                   "rope cord {\n"
                   "  construction: \"12-strand HMPE\"\n"
                   "  size: \"nine\"\n"
                   "}\n",
        .mend = "Write the number and the unit by which it is sold. The rest of the name can go into the "
                "title.",
    },
    CatalogueEntry{
        .slug = "thread-unknown",
        .severity = Severity::error,
        .message = "the thread `{thread}` is not in the tables of standard threads{near}",
        .why = "the pitch decides how far a turn moves the stay",
        .cause = "A thread is named by its size, its pitch and its series, as in `\"1/2-20 UNF\"` or "
                 "`\"M12\"`, and the pitch is looked up. This name is not among them.",
        .example = "language 1\n"
                   "turnbuckle bottle-12 {\n"
                   "  shortest: 265 mm\n"
                   "  longest: 395 mm\n"
                   "  thread: \"1/2-21 UNF\"\n"
                   "  screw: pair\n"
                   "}\n",
        .mend = "Count the threads over one inch, or over 20 mm, and compare. A thread outside the tables "
                "can not be named yet; leave it out, and the take-up is shown in millimetres only.",
    },
};

} // namespace

std::span<const CatalogueEntry> value_findings() {
  return entries;
}

} // namespace sheerpole
