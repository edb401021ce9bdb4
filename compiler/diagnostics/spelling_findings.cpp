#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    // ---- numbers
    CatalogueEntry{
        .slug = "decimal-comma",
        .severity = Severity::error,
        .message = "{text} has a comma in the number; is {readings} meant?",
        .why = "the readings differ by a factor of a thousand, and nothing in the text tells which one is "
               "meant",
        .cause =
            "Half the world writes 11,815 for eleven and a bit, the other half for eleven thousand. A rig "
            "file uses a point for decimals and an underscore, or nothing, between thousands.",
        .example = "wire wire-6 {\n"
                   "  length: 11,815 m\n"
                   "}\n",
        .mend = "Write 11.815 for the decimal, 11_815 for the thousands. Two numbers in a row have a blank "
                "behind "
                "the comma: 11, 815.",
    },
    CatalogueEntry{
        .slug = "comma-without-blank",
        .severity = Severity::error,
        .message = "{text} needs a blank behind each comma: {list}",
        .why = "without the blank a comma can not be told from a decimal comma, and the place would be "
               "another",
        .cause = "The numbers of a place are parted by a comma and a blank. 1,200 could be one number as "
                 "well as "
                 "two.",
        .example = "points {\n"
                   "  cap-tang: (-0.050,0.070,12.620) m\n"
                   "}\n",
        .mend = "Put a blank behind each comma: (-0.050, 0.070, 12.620) m.",
    },
    CatalogueEntry{
        .slug = "spaced-number",
        .severity = Severity::error,
        .message = "{text} has a blank inside the number; is {readings} meant?",
        .why = "a blank may as well part two numbers of which one has lost its sign or its unit",
        .cause =
            "Thousands set off by a blank, as tables and spreadsheets have them, or two numbers that were "
            "meant to stand apart.",
        .example = "reading of forestay {\n"
                   "  runs: 11 642 mm\n"
                   "}\n",
        .mend = "Write 11_642 or 11642.",
    },
    CatalogueEntry{
        .slug = "malformed-number",
        .severity = Severity::error,
        .message = "{text} is no number as it stands; is {readings} meant?",
        .why = "a number that has to be guessed must not become a length",
        .cause =
            "The digits go with signs that do not make a number: a point without a digit on each side, two "
            "underscores, hyphens for feet and inches, a minus without blanks round it.",
        .example = "stay forestay {\n"
                   "  drawn-length: 38-7-3/8\n"
                   "}\n",
        .mend = "Write 0.5 and 5.0, 1_200, 38' 7 3/8\", 2026-05-02, and a minus with a blank on each side.",
    },
    CatalogueEntry{
        .slug = "unreadable-number",
        .severity = Severity::error,
        .message = "{text} is not a number that can be read",
        .why = "a number that has to be guessed must not become a length",
        .cause =
            "The digits go with points, commas, hyphens or strokes in an order that makes no number, no "
            "fraction and no date.",
        .example = "boat \"Demo\" {\n"
                   "  beam: 1/2/3 m\n"
                   "}\n",
        .mend = "Write a decimal (3.20), a fraction (3/8), a whole and a fraction (7 3/8 or 7-3/8), or "
                "feet and "
                "inches (38' 7 3/8\").",
    },
    CatalogueEntry{
        .slug = "division-without-blanks",
        .severity = Severity::error,
        .message = "{text} stands where a value belongs; a division has blanks round its stroke",
        .why = "",
        .cause = "kg/m without blanks is a unit and 3/8 is a fraction, so a stroke that divides has a "
                 "blank on each "
                 "side.",
        .example = "let half = hoist/reefs\n",
        .mend = "Write hoist / reefs.",
    },

    // ---- texts and signs
    CatalogueEntry{
        .slug = "unclosed-text",
        .severity = Severity::error,
        .message = "the text that begins here is not closed on its line",
        .why = "everything behind it is taken for words, dimensions too",
        .cause =
            "A text stands in double quotes and ends on the line on which it begins. The second quote is "
            "missing.",
        .example = "stay forestay \"Forestay {\n"
                   "}\n",
        .mend = "Put in the closing quote. An inch mark inside a text is written \\\".",
    },
    CatalogueEntry{
        .slug = "quote-in-text",
        .severity = Severity::error,
        .message = "a quote inside a text needs a backslash before it",
        .why = "the text would end at the inch mark",
        .cause = "The first quote inside the text closes it, so that the real one is left over.",
        .example = "turnbuckle turnbuckle-58 {\n"
                   "  pin: \"5/8\"\"\n"
                   "}\n",
        .mend = "Write \"5/8\\\"\", or \"5/8 in\".",
    },
    CatalogueEntry{
        .slug = "other-quotes",
        .severity = Severity::error,
        .message = "{text} stands in quotes of another kind; a text stands in straight double quotes",
        .why = "",
        .cause = "A word processor or a mail program has turned the quotes, or single quotes were used.",
        .example = "boat \xE2\x80\x9C"
                   "Demo\xE2\x80\x9D {\n"
                   "}\n",
        .mend = "Write \"Demo\".",
    },
    CatalogueEntry{
        .slug = "stray-backslash",
        .severity = Severity::error,
        .message = "a backslash in a text stands only before a quote or another backslash",
        .why = "",
        .cause = "A backslash says that the next sign belongs to the text: \\\" is a quote, \\\\ is one "
                 "backslash. "
                 "Before anything else it has no meaning; a path with backslashes is where it is met.",
        .example = "use \"parts\\demo.rig\"\n",
        .mend = "Write paths with a stroke, \"parts/demo.rig\", or double the backslash.",
    },
    CatalogueEntry{
        .slug = "slash-comment",
        .severity = Severity::error,
        .message = "a remark begins with #, not with //",
        .why = "",
        .cause = "Two strokes begin a remark in other languages. In a rig file it is the number sign.",
        .example = "// measured afloat\n",
        .mend = "Write # measured afloat.",
    },
    CatalogueEntry{
        .slug = "semicolon",
        .severity = Severity::error,
        .message = "a line needs no ; and settings are parted by commas",
        .why = "",
        .cause = "Each property stands on a line of its own and ends with it.",
        .example = "boat \"Demo\" {\n"
                   "  beam: 3.20 m;\n"
                   "}\n",
        .mend = "Leave the ; out, or begin a new line.",
    },
    CatalogueEntry{
        .slug = "arrow-in-path",
        .severity = Severity::error,
        .message = "the points of a path are parted by >, not by {text}",
        .why = "",
        .cause = "An arrow of another kind stands in the path.",
        .example = "stay cap-shroud {\n"
                   "  path: cap-tang -> tip-2 -> plate-a\n"
                   "}\n",
        .mend = "Write cap-tang > tip-2 > plate-a.",
    },
    CatalogueEntry{
        .slug = "odd-character",
        .severity = Severity::error,
        .message = "the character {character} has no meaning here",
        .why = "",
        .cause = "A sign that looks like another (a dash for a minus, a cross for an x), a blank that is "
                 "not plain, "
                 "an invisible character that came with copied text, or a sign that a rig file does not "
                 "use. In texts "
                 "and remarks every character is welcome.",
        .example = "let rake = 2 m \xE2\x80\x93 sheer\n",
        .mend = "Replace it: - for a dash, x for a cross, deg for the degree sign. Invisible ones are best "
                "removed "
                "by typing the line again.",
    },
    CatalogueEntry{
        .slug = "malformed-name",
        .severity = Severity::error,
        .message = "{name} is not a name: names are made of the letters a to z, digits, and single hyphens "
                   "between "
                   "them",
        .why = "",
        .cause = "An underscore, two hyphens in a row, a hyphen at the end, or a letter with an accent.",
        .example = "points {\n"
                   "  cap_tang: (0 m, 0 m, 12 m)\n"
                   "}\n",
        .mend = "Write cap-tang. The title behind the name may be written in any letters: cap-tang "
                "\"Wanttang\".",
    },
    CatalogueEntry{
        .slug = "blank-in-name",
        .severity = Severity::error,
        .message = "a name has no blank in it: {first} {second} is two words, {joined} is one name",
        .why = "",
        .cause = "Two words stand before the colon. The words of a name are joined by hyphens.",
        .example = "stay forestay {\n"
                   "  spare bury: 1.2 m\n"
                   "}\n",
        .mend = "Write spare-bury.",
    },
    CatalogueEntry{
        .slug = "sign-not-drawn",
        .severity = Severity::warning,
        .message = "no font of the papers has the sign {code}; the PDFs show a question mark on a dark "
                   "rhombus for it: {papers}",
        .why = "a name on a paper that cannot be read may stand for two things",
        .cause = "A text holds a sign for which the fonts of the papers have no shape, for example a small "
                 "picture. The fonts are always the same, so that a paper looks alike wherever it is made; "
                 "they have the letters of Europe, Hebrew, Arabic, Chinese, Japanese and Korean.",
        .example = "boat crab \"Crab \xF0\x9F\xA6\x80\" {\n"
                   "}\n",
        .mend = "Write a word instead of the sign. It comes about only when PDFs are drawn (--pdf); the "
                "other papers hold the sign as it was written.",
    },
};

} // namespace

std::span<const CatalogueEntry> spelling_findings() {
  return entries;
}

} // namespace sheerpole
