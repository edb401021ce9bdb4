#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "unknown-name",
        .severity = Severity::error,
        .message = "{wanted} called {name} is not declared anywhere",
        .why = "the place where it is used stays empty: a part, a point or a length is missing",
        .cause = "The name was not found in this file or in the files that it uses. Usually it is a typing "
                 "slip, the declaration has another name by now, or the `use` line of the library is "
                 "missing. Capital and small letters are different letters.",
        .example = "language 1\n"
                   "points {\n"
                   "  cap-tang: (0 m, 0.3 m, 10 m)\n"
                   "}\n"
                   "let drop = cap-tnag\n",
        .mend = "Correct the spelling, declare what is missing, or bring in the file that declares it "
                "with `use`.",
    },
    CatalogueEntry{
        .slug = "wrong-kind-of-name",
        .severity = Severity::error,
        .message = "{name} is {is}; {wanted} belongs here",
        .why = "the value would say something that it can not mean",
        .cause = "The name exists, but stands for another kind of thing: a part where a splice belongs, a "
                 "stay where a point belongs.",
        .example = "language 1\n"
                   "points {\n"
                   "  root: (0 m, 0.1 m, 6 m) mirrored\n"
                   "}\n"
                   "spreader upper {\n"
                   "  root: root\n"
                   "  tip: upper\n"
                   "}\n",
        .mend = "Write the name of the thing that belongs here. All names of a rig are in one list, so a "
                "part and a point can not share a name: `cap-tang` the point and `tang-10` the part.",
    },
    CatalogueEntry{
        .slug = "duplicate-name",
        .severity = Severity::error,
        .message = "{name} is declared twice: as {first} and again as {kind}",
        .why = "one of the two would be taken, and nobody could say which",
        .cause = "A name stands for one thing in all files of a rig together. Two libraries may both have "
                 "a part of this name, or a block was copied and its name not changed.",
        .example = "language 1\n"
                   "let drop = 12 mm\n"
                   "let drop = 15 mm\n",
        .mend = "Give one of the two another name, or take one out. If both should say the same, keep the "
                "one whose numbers have a source.",
    },
    CatalogueEntry{
        .slug = "minus-needs-blanks",
        .severity = Severity::error,
        .message = "{name} is read as one name, not as {left} less {right}",
        .why = "without the blanks a length would be taken for the name of something else",
        .cause = "Names may hold a hyphen, as `cap-shroud` does, so a minus sign needs a blank on each "
                 "side. Both halves are known here: a difference was meant.",
        .example = "language 1\n"
                   "let a = 30 mm\n"
                   "let b = 12 mm\n"
                   "let c = a-b\n",
        .mend = "Write a blank on each side of the minus sign: `a - b`.",
    },
    CatalogueEntry{
        .slug = "capital-in-name",
        .severity = Severity::error,
        .message = "the name {name} has a sign other than small letters, figures and hyphens",
        .why = "on a card or over the telephone nobody hears a capital letter: Tang-10 and tang-10 would "
               "be two parts",
        .cause = "Names are written in small letters, with figures and hyphens. What should be read by "
                 "people, with capitals and blanks, goes into the title in quotes behind the name.",
        .example = "language 1\n"
                   "let Sheer = 1.120 m\n",
        .mend = "Write the name in small letters, here and where it is used. A title keeps the capitals: "
                "`tang tang-10 \"Tang 10 mm\"`.",
    },
    CatalogueEntry{
        .slug = "name-missing",
        .severity = Severity::error,
        .message = "this {kind} has no name",
        .why = "without a name no stay can use it and no card can show it",
        .cause = "Every declaration of this kind has a name behind the word: `toggle toggle-12`. The title "
                 "in quotes is not the name.",
        .example = "language 1\n"
                   "toggle {\n"
                   "  length: 82 mm\n"
                   "}\n",
        .mend = "Put a name behind the word, in small letters with hyphens: `toggle toggle-12`.",
    },
    CatalogueEntry{
        .slug = "unknown-kind",
        .severity = Severity::error,
        .message = "{kind} is not a kind of thing that a rig is made of",
        .why = "all that stands in this block would be left out of the rig",
        .cause = "The first word of a declaration says what is declared: `points`, `rope`, `wire`, "
                 "`splice`, `turnbuckle`, `stay` and so on. This word is none of them.",
        .example = "language 1\n"
                   "turnbukle bottle-12 {\n"
                   "  shortest: 265 mm\n"
                   "  longest: 395 mm\n"
                   "}\n",
        .mend = "Correct the spelling. A fitting without a word of its own can be declared as what it "
                "does: a fixed piece between two pins is a `link`, one that swings is a `toggle`.",
    },
    CatalogueEntry{
        .slug = "block-not-here",
        .severity = Severity::error,
        .message = "a {kind} can not stand here",
        .why = "what it says would belong to nothing",
        .cause = "A `stack` belongs inside the braces of a stay, and everything else stands by itself, "
                 "outside all braces. Usually a closing brace is missing above, or one too many closed the "
                 "stay early.",
        .example = "language 1\n"
                   "stack {\n"
                   "  line\n"
                   "}\n",
        .mend = "Look at the braces above, or move the block to where it belongs.",
    },
    CatalogueEntry{
        .slug = "block-twice",
        .severity = Severity::error,
        .message = "a second {kind} in the same block",
        .why = "only one of the two could be built",
        .cause = "A stay has one stack, from aloft to deck. A second one often is the stack of another "
                 "stay whose braces went missing.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take one of them out, or give the second one a stay of its own.",
    },
    CatalogueEntry{
        .slug = "item-not-here",
        .severity = Severity::error,
        .message = "{name} stands alone in a {kind}, without a colon and a value",
        .why = "it is read as nothing, and what it should say is missing",
        .cause = "Outside a stack every line says what it is about, a colon, and the value: `length: 82 "
                 "mm`. A name alone is a line of a stack.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm\n"
                   "  wrap\n"
                   "}\n",
        .mend = "Write the colon and the value, or move the line into a `stack`.",
    },
    CatalogueEntry{
        .slug = "of-missing",
        .severity = Severity::error,
        .message = "this {kind} does not say what it is of; {wanted} belongs behind `of`",
        .why = "a measurement that belongs to no stay can not be used",
        .cause = "A reading names the stay that was measured, and its side where there are two.",
        .example = "language 1\n"
                   "reading {\n"
                   "  method: tape\n"
                   "  runs: 11_640 mm\n"
                   "}\n",
        .mend = "Name it: `reading of cap-shroud.port { … }`.",
    },
    CatalogueEntry{
        .slug = "of-not-here",
        .severity = Severity::error,
        .message = "a {kind} is not of anything",
        .why = "the words behind `of` would be lost",
        .cause = "Only a reading is of something: of a stay. Which stay a part belongs to is said in the "
                 "stack of that stay.",
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
                   "toggle toggle-12 of forestay {\n"
                   "  length: 82 mm\n"
                   "}\n",
        .mend = "Take `of` and the name behind it out, and write the part into the stack where it sits.",
    },
    CatalogueEntry{
        .slug = "unknown-side",
        .severity = Severity::error,
        .message = "{side} is not a side; the sides are port and starboard",
        .why = "it could not be said which of the two stays or points is meant",
        .cause = "Behind the point in a name stands a side of the boat, looking forward: `plate-a.port` or "
                 "`plate-a.starboard`, written out. Only points and stays have sides.",
        .example = "language 1\n"
                   "points {\n"
                   "  plate-a: (0.1 m, 1.4 m, 1.1 m) mirrored\n"
                   "  plate-a.stbd: (0.1 m, 1.41 m, 1.1 m)\n"
                   "}\n",
        .mend = "Write `port` or `starboard`, or leave the side out where the thing has none.",
    },
    CatalogueEntry{
        .slug = "side-not-here",
        .severity = Severity::error,
        .message = "{name} is {wanted} and has no sides",
        .why = "port and starboard use the same one, so nothing else could be meant",
        .cause = "Points and stays have sides. Parts, lines and splices are described once and used on "
                 "both sides.",
        .example = "language 1\n"
                   "rope cord { construction: \"12-strand HMPE\"\n"
                   "  size: \"9 mm\" }\n"
                   "stay forestay {\n"
                   "  pin-to-pin: 11_642 mm\n"
                   "  line: cord.port\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Take the side out.",
    },
    CatalogueEntry{
        .slug = "base-of-other-kind",
        .severity = Severity::error,
        .message = "{base} is a {is}, so a {kind} can not be made from it",
        .why = "the two do not have the same dimensions",
        .cause = "`from` copies a declaration of the same kind and changes what the block states. The "
                 "thing named here is of another kind.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm\n"
                   "}\n"
                   "shackle long from toggle-12 {\n"
                   "  length: 90 mm\n"
                   "}\n",
        .mend = "Name a declaration of the same kind, or write the properties out.",
    },
    CatalogueEntry{
        .slug = "copies-too-large",
        .severity = Severity::error,
        .message =
            "with {name}, what this rig copies by `from` comes to more than {limit} properties, blocks "
            "and items",
        .why = "a rig of this size is more likely a slip than a boat",
        .cause = "A declaration with `from` takes over all properties and blocks of its base, stacks with "
                 "their items too. Many copies of something long, or copies of copies that each add "
                 "something, grow beyond every boat.",
        .example =
            "# twenty thousand stays like this one, made from a stay with a stack of a hundred items\n"
            "stay shroud-2 from shroud-1 { }\n",
        .mend =
            "Copy from the first one instead of from the last, and declare only the stays that the boat "
            "has.",
    },
    CatalogueEntry{
        .slug = "base-cycle",
        .severity = Severity::error,
        .message = "{name} is made from itself, by way of the declarations behind `from`",
        .why = "none of them states the dimensions that the others should copy",
        .cause = "`from` copies what another declaration states. Here the chain of copies comes back to "
                 "where it began.",
        .example = "language 1\n"
                   "toggle one from two {\n"
                   "  length: 82 mm\n"
                   "}\n"
                   "toggle two from one {\n"
                   "  length: 90 mm\n"
                   "}\n",
        .mend = "Take `from` off the one that has its own numbers, and state them there.",
    },
    CatalogueEntry{
        .slug = "unknown-property",
        .severity = Severity::error,
        .message = "{name} is not a property of a {owner}",
        .why = "what it says would be left out of every length and every check",
        .cause = "Each kind has its own properties. They are listed on its reference page, and the word "
                 "written here is none of them.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  lenght: 82 mm\n"
                   "}\n",
        .mend = "Correct the spelling, or look up the properties of the kind on its reference page. What "
                "has no property yet can be kept as a comment behind `#`.",
    },
    CatalogueEntry{
        .slug = "unknown-setting",
        .severity = Severity::error,
        .message = "{name} can not be stated here for a {owner}; what can: {known}",
        .why = "what it says would be left out of the lengths and the checks",
        .cause = "Inside the parentheses stand the dimensions of an end, or how a part is set in this "
                 "stack: a turnbuckle `open`, a lashing `gap` and `passes`, a part that takes a rope its "
                 "`splice`. This word is none that belongs to it.",
        .example = "language 1\n"
                   "turnbuckle bottle-12 {\n"
                   "  shortest: 265 mm\n"
                   "  longest: 395 mm\n"
                   "  lower: jaw (width: 12 mm)\n"
                   "}\n",
        .mend = "Correct the spelling, or state the dimension where the part is declared if it belongs to "
                "the part itself.",
    },
    CatalogueEntry{
        .slug = "property-twice",
        .severity = Severity::error,
        .message = "{name} is stated twice",
        .why = "the two could differ, and one of them would be wrong",
        .cause = "One fact is written in one place. Often a line was copied to be changed and the old one "
                 "stayed.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm\n"
                   "  length: 85 mm\n"
                   "}\n",
        .mend = "Keep the one with the better source and take the other out. Two measurements of one stay "
                "are two runs of a reading.",
    },
    CatalogueEntry{
        .slug = "unknown-choice",
        .severity = Severity::error,
        .message = "{written} is not one of the words for {name}: {known}",
        .why = "what it should say is not known",
        .cause = "This property takes one of a few words, without quotes. The word written here is none of "
                 "them.",
        .example = "language 1\n"
                   "turnbuckle bottle-12 {\n"
                   "  shortest: 265 mm\n"
                   "  longest: 395 mm\n"
                   "  thread: \"1/2-20 UNF\"\n"
                   "  screw: double\n"
                   "}\n",
        .mend = "Write one of the words that the message lists.",
    },
    CatalogueEntry{
        .slug = "name-wanted",
        .severity = Severity::error,
        .message = "{name} takes a name: {wanted} that is declared somewhere",
        .why = "a value written out here could not be compared with the other places that use the same "
               "thing",
        .cause = "This property points to something that has a declaration of its own, and a number, a "
                 "text or an expression stands here.",
        .example = "language 1\n"
                   "stay forestay {\n"
                   "  line: \"9 mm\"\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Write the name without quotes, and declare the thing if it is not declared yet.",
    },
    CatalogueEntry{
        .slug = "unknown-end",
        .severity = Severity::error,
        .message = "{written} is not a kind of end for {name}: {known}",
        .why = "which pin, jaw or seat meets the next part can not be checked",
        .cause = "The end of a part is one of a few types, with its dimensions in parentheses: `jaw (gap: "
                 "12 mm, pin: \"10 mm\")`.",
        .example = "language 1\n"
                   "toggle toggle-12 {\n"
                   "  length: 82 mm\n"
                   "  upper: fork (gap: 12 mm)\n"
                   "}\n",
        .mend = "Write one of the types that the message lists: a fork is a `jaw`, a plate with a hole is "
                "an `eye`. What is neither can be left out: it is then reported as not checked.",
    },
};

} // namespace

std::span<const CatalogueEntry> name_findings() {
  return entries;
}

} // namespace sheerpole
