#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    // ---- braces and parentheses
    CatalogueEntry{
        .slug = "missing-closing-brace",
        .severity = Severity::error,
        .message = "the block of {heading} is not closed: the closing brace is missing",
        .why = "what follows would be taken for a part of it",
        .cause = "Each { has its }. The one for this block was left out or deleted; the indentation tells "
                 "where it "
                 "belongs.",
        .example = "boat \"Demo\" {\n"
                   "  beam: 3.20 m\n"
                   "points {\n"
                   "}\n",
        .mend = "Put in } on a line of its own, below the last line of the block.",
    },
    CatalogueEntry{
        .slug = "missing-opening-brace",
        .severity = Severity::error,
        .message = "the block of {heading} is not opened: the opening brace is missing",
        .why = "",
        .cause = "The lines below are indented as its properties, but the first line does not end with {.",
        .example = "boat \"Demo\"\n"
                   "  beam: 3.20 m\n"
                   "}\n",
        .mend = "Put in { at the end of the line.",
    },
    CatalogueEntry{
        .slug = "extra-closing-brace",
        .severity = Severity::error,
        .message = "this } closes nothing",
        .why = "",
        .cause = "There is one } more than there are {, or a { was deleted above.",
        .example = "points {\n"
                   "}\n"
                   "}\n",
        .mend = "Leave it out, or put in the { that is missing above.",
    },
    CatalogueEntry{
        .slug = "missing-closing-parenthesis",
        .severity = Severity::error,
        .message = "the {opening} is not closed: a {closing} is missing",
        .why = "",
        .cause =
            "Each ( has its ), each [ its ]. Inside them a line may go on below, so the end is not seen.",
        .example = "stay forestay {\n"
                   "  stack {\n"
                   "    thimble-9 (splice: long-bury\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Put in the sign that closes it.",
    },
    CatalogueEntry{
        .slug = "missing-opening-parenthesis",
        .severity = Severity::error,
        .message = "between {owner} and its setting {name} a ( is missing",
        .why = "",
        .cause =
            "Settings stand in parentheses behind the part or the end that they belong to. Here the line "
            "ends with the ) and the ( was left out.",
        .example = "stay cap-shroud {\n"
                   "  stack {\n"
                   "    thimble-9 splice: long-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Put in the (: `thimble-9 (splice: long-bury)`.",
    },
    CatalogueEntry{
        .slug = "extra-closing-parenthesis",
        .severity = Severity::error,
        .message = "this {closing} closes nothing",
        .why = "",
        .cause = "There is one more closing sign than there are opening ones.",
        .example = "let sheer = (1.120 m + 2 mm))\n",
        .mend = "Leave it out, or put in the sign that opens.",
    },
    CatalogueEntry{
        .slug = "wrong-closing-parenthesis",
        .severity = Severity::error,
        .message = "what {opening} opens is closed by {closing}, not by {found}",
        .why = "",
        .cause = "Parentheses and brackets are mixed up.",
        .example = "points {\n"
                   "  cap-tang: (0 m, 0 m, 12 m]\n"
                   "}\n",
        .mend = "Write the closing sign that belongs to the opening one.",
    },
    CatalogueEntry{
        .slug = "too-deep",
        .severity = Severity::error,
        .message = "braces or parentheses are nested deeper than {limit} levels, or a sum has more parts "
                   "than that",
        .why = "",
        .cause = "No rig needs it: a file with such nesting is damaged, or not a rig file at all.",
        .example =
            "let a = "
            "((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((1))))))))))))))))))))))))"
            ")))))))))))))))))))))))))))))))))))))))))))\n",
        .mend = "Break a long sum into several `let` lines.",
    },

    // ---- lines that do not go on as they should
    CatalogueEntry{
        .slug = "missing-colon",
        .severity = Severity::error,
        .message = "between {name} and {value} a colon is missing",
        .why = "",
        .cause = "A property is its name, a colon and its value. Without the colon the line would be a "
                 "part in a "
                 "stack, or the first line of a block.",
        .example = "boat \"Demo\" {\n"
                   "  beam 3.20 m\n"
                   "}\n",
        .mend = "Write beam: 3.20 m.",
    },
    CatalogueEntry{
        .slug = "equals-for-colon",
        .severity = Severity::error,
        .message = "{name} is given with =; a property takes a colon",
        .why = "",
        .cause = "Only `let` takes an equals sign: it names a value. A property states one.",
        .example = "boat \"Demo\" {\n"
                   "  beam = 3.20 m\n"
                   "}\n",
        .mend = "Write beam: 3.20 m.",
    },
    CatalogueEntry{
        .slug = "colon-for-equals",
        .severity = Severity::error,
        .message = "let {name} is given with a colon; let takes =",
        .why = "",
        .cause = "A property takes a colon, `let` takes an equals sign.",
        .example = "let sheer: 1.120 m\n",
        .mend = "Write let sheer = 1.120 m.",
    },
    CatalogueEntry{
        .slug = "missing-equals",
        .severity = Severity::error,
        .message = "behind let {name} an = is missing",
        .why = "",
        .cause = "`let` is a name, an equals sign and a value.",
        .example = "let sheer 1.120 m\n",
        .mend = "Write let sheer = 1.120 m.",
    },
    CatalogueEntry{
        .slug = "missing-let",
        .severity = Severity::error,
        .message = "before {name} the word let is missing",
        .why = "",
        .cause = "A value is given a name by `let name = value`.",
        .example = "sheer = 1.120 m\n",
        .mend = "Write let sheer = 1.120 m.",
    },
    CatalogueEntry{
        .slug = "missing-times",
        .severity = Severity::error,
        .message = "between {count} and {name} an x is missing",
        .why = "",
        .cause = "Several of one part in a stack are written with an x between: 2 x toggle-12.",
        .example = "stay forestay {\n"
                   "  stack {\n"
                   "    2 toggle-12\n"
                   "  }\n"
                   "}\n",
        .mend = "Write 2 x toggle-12.",
    },
    CatalogueEntry{
        .slug = "missing-comma",
        .severity = Severity::error,
        .message = "before {next} a comma is missing",
        .why = "",
        .cause = "Settings in parentheses are parted by commas.",
        .example = "stay forestay {\n"
                   "  stack {\n"
                   "    lashing-4 (gap: 160 mm passes: 6)\n"
                   "  }\n"
                   "}\n",
        .mend = "Write (gap: 160 mm, passes: 6).",
    },
    CatalogueEntry{
        .slug = "setting-without-name",
        .severity = Severity::error,
        .message = "in the parentheses stands {found} where the name of a setting and its value belong",
        .why = "what a number or a word in parentheses is for can not be guessed",
        .cause = "In the parentheses behind a part or an end each setting has a name, a colon and a value.",
        .example = "stay forestay {\n"
                   "  stack {\n"
                   "    thimble-9 (long-bury)\n"
                   "  }\n"
                   "}\n",
        .mend = "Write what it is: thimble-9 (splice: long-bury).",
    },
    CatalogueEntry{
        .slug = "comma-too-many",
        .severity = Severity::error,
        .message = "nothing follows this comma",
        .why = "",
        .cause = "Commas stand between settings, not behind the last one. Or a setting was deleted and its "
                 "comma "
                 "stayed.",
        .example = "stay forestay {\n"
                   "  stack {\n"
                   "    lashing-4 (gap: 160 mm, passes: 6,)\n"
                   "  }\n"
                   "}\n",
        .mend = "Leave the comma out, or put the setting back.",
    },
    CatalogueEntry{
        .slug = "missing-value",
        .severity = Severity::error,
        .message = "behind {before} a value is missing; there is {found}",
        .why = "",
        .cause = "The value was left out, or the line was broken: outside of ( ) and [ ] a value ends with "
                 "its line.",
        .example = "boat \"Demo\" {\n"
                   "  beam:\n"
                   "}\n",
        .mend = "Write the value, or take the line out. What is not known yet is left out, and reported "
                "where it is "
                "needed. A long path or list may be put in [ ] and go on below.",
    },
    CatalogueEntry{
        .slug = "missing-name",
        .severity = Severity::error,
        .message = "{wanted} is missing; there is {found}",
        .why = "",
        .cause = "A name belongs here: behind `from`, `of`, `use`, `let`, behind a point, or behind 2 x.",
        .example = "reading of {\n"
                   "}\n",
        .mend = "Write the name, as in reading of cap-shroud.port.",
    },
    CatalogueEntry{
        .slug = "left-over",
        .severity = Severity::error,
        .message = "{found} is left over: what stands before it is complete",
        .why = "a word that is not understood may change what the line says",
        .cause = "Something follows where the line, or the value in parentheses, is over: a second value "
                 "without a "
                 "comma, a remark without its #, a note that is not in quotes, or a second property on the "
                 "line.",
        .example = "boat \"Demo\" {\n"
                   "  beam: 3.20 m on deck\n"
                   "}\n",
        .mend = "Put # before a remark, a comma between two values, a new line before the next property. "
                "Where a "
                "value is from is said by one of the words measured, drawn, maker, standard, practice, "
                "assumed, "
                "computed, with a note in quotes behind it.",
    },
    CatalogueEntry{
        .slug = "path-and-list",
        .severity = Severity::error,
        .message = "> and commas are mixed in one value",
        .why = "a path has an order that decides its length, a list has not",
        .cause = "The points of a path are parted by >, the members of a list by commas. One of them "
                 "stands among "
                 "the others.",
        .example = "stay cap-shroud {\n"
                   "  path: cap-tang > tip-2, plate-a\n"
                   "}\n",
        .mend = "Write > throughout for a path, commas throughout for a list.",
    },
    CatalogueEntry{
        .slug = "quotes-missing",
        .severity = Severity::error,
        .message = "the name of the file stands in quotes",
        .why = "",
        .cause = "Behind `use` stands the path of a file, as a text in double quotes.",
        .example = "use parts/demo.rig\n",
        .mend = "Write use \"parts/demo.rig\".",
    },
    CatalogueEntry{
        .slug = "language-number",
        .severity = Severity::error,
        .message = "behind language stands its number, as in language 1; there is {found}",
        .why = "the number says by which rules the file is read",
        .cause = "The first statement of a file names the version of the language in which it is written.",
        .example = "language one\n",
        .mend = "Write language 1.",
    },
    CatalogueEntry{
        .slug = "unreadable-statement",
        .severity = Severity::error,
        .message = "a line outside of any block can not begin with {found}",
        .why = "",
        .cause = "Outside of blocks a line begins with language, use, let, or with a kind: boat, points, "
                 "stay, rope "
                 "and so on. Often the block was closed too early.",
        .example = "\"Demo\" {\n"
                   "}\n",
        .mend = "Begin the line with its kind, as in boat \"Demo\" {, or put # before a remark.",
    },
    CatalogueEntry{
        .slug = "unreadable-entry",
        .severity = Severity::error,
        .message = "a line in a block can not begin with {found}",
        .why = "",
        .cause = "In a block a line begins with the name of a property, of a point or of a part, or with a "
                 "number of "
                 "parts as in 2 x toggle-12.",
        .example = "stay forestay {\n"
                   "  > stem\n"
                   "}\n",
        .mend =
            "Begin the line with the name. A path or list that is too long for its line may be put in [ ].",
    },
    CatalogueEntry{
        .slug = "property-outside-block",
        .severity = Severity::error,
        .message = "the property {name} stands outside of any block",
        .why = "it is not known what it belongs to",
        .cause = "Properties belong to a declaration and stand between its { and }. Often the block was "
                 "closed a "
                 "line too early.",
        .example = "beam: 3.20 m\n",
        .mend = "Move it into its block, as in boat \"Demo\" { beam: 3.20 m }.",
    },
    CatalogueEntry{
        .slug = "missing-block",
        .severity = Severity::error,
        .message = "{heading} has no block: what it is made of stands behind it in braces",
        .why = "",
        .cause = "A declaration is its first line and a block, even when there is nothing to say in it.",
        .example = "stay forestay \"Forestay\"\n",
        .mend = "Put a block behind it: stay forestay \"Forestay\" { }.",
    },
    CatalogueEntry{
        .slug = "heading-unreadable",
        .severity = Severity::error,
        .message = "{found} does not belong in the first line of a block",
        .why = "",
        .cause = "The first line of a block is its kind, its name, its title in quotes, `from` another "
                 "one, `of` "
                 "something, in this order, and then {.",
        .example = "boat: \"Demo\" {\n"
                   "}\n",
        .mend = "Write boat \"Demo\" {.",
    },
    CatalogueEntry{
        .slug = "place-needs-three-numbers",
        .severity = Severity::error,
        .message = "a place has three numbers, not {count}",
        .why = "a place is found by how far forward, how far to starboard and how far up",
        .cause =
            "Between the parentheses stand x forward, y to starboard and z up, parted by commas. On the "
            "centreline y is 0, and is written.",
        .example = "points {\n"
                   "  stem: (5.170, 1.750) m\n"
                   "}\n",
        .mend = "Write all three: (5.170, 0, 1.750) m.",
    },
    CatalogueEntry{
        .slug = "unit-behind-parenthesis",
        .severity = Severity::error,
        .message = "the unit {unit} stands behind a sum in parentheses; each number has its own",
        .why = "",
        .cause = "One unit for all is possible for the three numbers of a place, not for a sum.",
        .example = "let sheer = (1.1 + 0.02) m\n",
        .mend = "Write (1.1 m + 0.02 m).",
    },
    CatalogueEntry{
        .slug = "too-many-findings",
        .severity = Severity::note,
        .message = "there are more than {count} findings; the others are not shown",
        .why = "",
        .cause = "A file with so many slips is usually not a rig file, or one slip near the top has put "
                 "everything "
                 "below it out of order.",
        .example = ";;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;;"
                   ";;;;;;;;;;;;;;\n",
        .mend = "Mend the first findings and run again.",
    },
};

} // namespace

std::span<const CatalogueEntry> syntax_findings() {
  return entries;
}

} // namespace sheerpole
