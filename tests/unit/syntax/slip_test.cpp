#include "unit/syntax/parsed_text.hpp"

#include <gmock/gmock.h>

namespace sheerpole::slip_test {

using sheerpole::syntax_test::ParsedText;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

/// The one finding of a text: `line:column slug: message`, the text that it marks, and the text with its
/// edit made, which must be free of slips. Empty when there is no edit.
void expect_slip(const std::string& text, const std::string& line, const std::string& marked,
                 const std::string& mended) {
  const ParsedText parsed(text);
  ASSERT_THAT(parsed.lines(), ElementsAre(line)) << text;
  EXPECT_EQ(parsed.source.text(parsed.findings[0].primary->span), marked) << text;
  ASSERT_EQ(parsed.findings[0].edit.has_value(), !mended.empty()) << text;
  if (mended.empty())
    return;
  EXPECT_EQ(parsed.mended(), mended);
  EXPECT_THAT(ParsedText(mended).lines(), IsEmpty()) << mended;
}

std::string in_block(const std::string& line) {
  return "boat {\n" + line + "\n}\n";
}
std::string in_stack(const std::string& line) {
  return "stay { stack {\n" + line + "\n} }\n";
}

void expect_slip_in_block(const std::string& line, const std::string& finding, const std::string& marked,
                          const std::string& mended) {
  expect_slip(in_block(line), finding, marked, mended.empty() ? "" : in_block(mended));
}

void expect_slip_in_stack(const std::string& line, const std::string& finding, const std::string& marked,
                          const std::string& mended) {
  expect_slip(in_stack(line), finding, marked, mended.empty() ? "" : in_stack(mended));
}

} // namespace

TEST(SyntaxSlip, ColonAndEquals) {
  expect_slip_in_block("beam 3.2 m",
                       "2:5 missing-colon: between beam and the number 3.2 a colon is missing", "",
                       "beam: 3.2 m");
  expect_slip_in_block("line hmpe-9",
                       "2:5 missing-colon: between line and the word hmpe-9 a colon is missing", "",
                       "line: hmpe-9");
  expect_slip_in_block("by \"A rigger\"",
                       "2:3 missing-colon: between by and the text \"A rigger\" a colon is missing", "",
                       "by: \"A rigger\"");
  expect_slip_in_block("tang \"Tang\" (0, 0, 1) m",
                       "2:12 missing-colon: between tang \"Tang\" and the sign ( a colon is missing", "",
                       "tang \"Tang\": (0, 0, 1) m");
  expect_slip_in_block("plate.port (0, 0, 1) m",
                       "2:11 missing-colon: between plate.port and the sign ( a colon is missing", "",
                       "plate.port: (0, 0, 1) m");
  expect_slip_in_block("beam = 3.2 m",
                       "2:6 equals-for-colon: beam is given with =; a property takes a colon", "=",
                       "beam: 3.2 m");
  expect_slip("let sheer: 1 m\n",
              "1:10 colon-for-equals: let sheer is given with a colon; let takes =", ":",
              "let sheer = 1 m\n");
  expect_slip("let sheer 1 m\n", "1:10 missing-equals: behind let sheer an = is missing", "",
              "let sheer = 1 m\n");
  expect_slip("sheer = 1 m\n", "1:1 missing-let: before sheer the word let is missing", "sheer",
              "let sheer = 1 m\n");
  expect_slip_in_block(
      "spare bury: 1 m",
      "2:1 blank-in-name: a name has no blank in it: spare bury is two words, spare-bury is one name",
      "spare bury", "spare-bury: 1 m");
}

TEST(SyntaxSlip, ValuesThatAreMissing) {
  expect_slip_in_block(
      "beam:", "2:6 missing-value: behind beam: a value is missing; there is the end of the line", "", "");
  expect_slip("boat { beam: }\n",
              "1:14 missing-value: behind beam: a value is missing; there is the closing brace }", "}", "");
  expect_slip("let a =\n", "1:8 missing-value: behind = a value is missing; there is the end of the line",
              "", "");
  expect_slip("let a =", "1:8 missing-value: behind = a value is missing; there is the end of the file", "",
              "");
  expect_slip_in_block(
      "path: a >", "2:10 missing-value: behind > a value is missing; there is the end of the line", "", "");
  expect_slip_in_block("sides: a, , b",
                       "2:11 missing-value: behind the comma a value is missing; there is the sign ,", ",",
                       "");
  expect_slip_in_block(
      "v: 3 m ±", "2:9 missing-value: behind ± a value is missing; there is the end of the line", "", "");
  expect_slip_in_block(
      "v: a * ", "2:7 missing-value: behind * a value is missing; there is the end of the line", "", "");
  expect_slip_in_stack("a (b: , c: 1)",
                       "2:7 missing-value: behind b: a value is missing; there is the sign ,", ",", "");
  expect_slip_in_block(
      "v: hoist/reefs",
      "2:4 division-without-blanks: hoist/reefs is where a value belongs; a division has blanks "
      "round its stroke",
      "hoist/reefs", "v: hoist / reefs");
}

TEST(SyntaxSlip, SettingsAndItems) {
  expect_slip_in_stack("a (b: 1 mm c: 2)", "2:11 missing-comma: before the word c a comma is missing", "",
                       "a (b: 1 mm, c: 2)");
  // Behind a number without a unit, the name of the next setting stands where a unit does.
  expect_slip_in_stack("a (b: 3 c: 2)", "2:8 missing-comma: before the word c a comma is missing", "",
                       "a (b: 3, c: 2)");
  expect_slip_in_stack("a (b c)", "2:5 missing-colon: between b and the word c a colon is missing", "",
                       "a (b: c)");
  expect_slip_in_stack("a (b = c)", "2:6 equals-for-colon: b is given with =; a property takes a colon",
                       "=", "a (b: c)");
  expect_slip_in_stack("a (b: c,)", "2:8 comma-too-many: nothing follows this comma", ",", "a (b: c)");
  expect_slip_in_stack(
      "a (bury)",
      "2:4 setting-without-name: the parentheses hold the word bury where the name of a setting "
      "and its value belong",
      "bury", "");
  expect_slip_in_block(
      "end: jaw (17 mm)",
      "2:11 setting-without-name: the parentheses hold the number 17 where the name of a setting "
      "and its value belong",
      "17", "");
  expect_slip_in_stack("a (b: 1 2 mm, c: 3)", "2:7 unreadable-number: 1 2 is not a number that can be read",
                       "1 2 mm", "");
  expect_slip_in_stack("a (b: 1 mm 2 mm, c: 3)",
                       "2:12 left-over: the number 2 is left over: the words before it are complete", "2",
                       "");
  expect_slip_in_stack("2 toggle", "2:2 missing-times: between 2 and toggle an x is missing", "",
                       "2 x toggle");
  expect_slip_in_stack(
      "2 x", "2:4 missing-name: the name of the part is missing; there is the end of the line", "", "");
}

TEST(SyntaxSlip, LinesThatGoOnTooLongOrBeginWrong) {
  expect_slip_in_block("beam: 3 m on deck",
                       "2:11 left-over: the word on is left over: the words before it are complete", "on",
                       "");
  // Two properties on one line: the second begins a line.
  expect_slip_in_block("beam: 3 m draft: 2 m",
                       "2:11 left-over: the word draft is left over: the words before it are complete",
                       "draft", "beam: 3 m\n  draft: 2 m");
  expect_slip_in_block("a: (1, 2, 3) m b.port: (1, 2, 3) m",
                       "2:16 left-over: the word b is left over: the words before it are complete", "b",
                       "a: (1, 2, 3) m\n  b.port: (1, 2, 3) m");
  expect_slip_in_block("a: (1, 2, 3) m 4",
                       "2:16 left-over: the number 4 is left over: the words before it are complete", "4",
                       "");
  expect_slip("let a = 1 m oops\n",
              "1:13 left-over: the word oops is left over: the words before it are complete", "oops", "");
  expect_slip_in_block("p: a > b, c", "2:9 path-and-list: > and commas are mixed in one value", ",", "");
  expect_slip_in_block("p: [a, b > c]", "2:10 path-and-list: > and commas are mixed in one value", ">", "");
  expect_slip_in_block("> a", "2:1 unreadable-entry: a line in a block cannot begin with the sign >", ">",
                       "");
  expect_slip_in_block("a: 1 m\n\"x\"",
                       "3:1 unreadable-entry: a line in a block cannot begin with the text \"x\"", "\"x\"",
                       "");
  expect_slip("12 m\n",
              "1:1 unreadable-statement: a line outside of any block cannot begin with the number 12", "12",
              "");
  expect_slip("boat { }\n± 2 mm\n",
              "2:1 unreadable-statement: a line outside of any block cannot begin with the sign ±", "±",
              "");
}

TEST(SyntaxSlip, FirstLines) {
  expect_slip("use parts/demo.rig\n", "1:5 quotes-missing: the name of the file belongs in quotes",
              "parts/demo.rig", "use \"parts/demo.rig\"\n");
  expect_slip("use\n", "1:4 missing-name: the file in quotes is missing; there is the end of the line", "",
              "");
  expect_slip(
      "language one\n",
      "1:10 language-number: language is followed by its number, as in language 1; there is the word one",
      "one", "");
  expect_slip("beam: 3 m\n", "1:1 property-outside-block: the property beam is outside any block", "beam",
              "");
  expect_slip("stay a \"A\"\n",
              "1:1 missing-block: stay a \"A\" has no block: what it is made of follows it in braces",
              "stay a \"A\"", "stay a \"A\" {\n}\n");
  expect_slip("boat: \"A\" {\n  beam: 3 m\n}\n",
              "1:5 heading-unreadable: the sign : does not belong in the first line of a block", ":", "");
  expect_slip("boat \"A\" 5 {\n  beam: 3 m\n}\n",
              "1:10 heading-unreadable: the number 5 does not belong in the first line of a block", "5",
              "");
  expect_slip("stay a from { }\n",
              "1:13 missing-name: the name behind from is missing; there is the opening brace {", "{", "");
  expect_slip("reading of a. { }\n", "1:15 missing-name: the side is missing; there is the opening brace {",
              "{", "");
  expect_slip("let = 3\n", "1:5 missing-name: the name behind let is missing; there is the sign =", "=",
              "");
}

TEST(SyntaxSlip, SignsOfOtherLanguages) {
  expect_slip_in_block("p: a -> b", "2:6 arrow-in-path: the points of a path are parted by >, not by ->",
                       "->", "p: a > b");
  expect_slip_in_block("p: a → b", "2:6 arrow-in-path: the points of a path are parted by >, not by →", "→",
                       "p: a > b");
  expect_slip_in_block("beam: 3 m;", "2:10 semicolon: a line needs no ; and settings are parted by commas",
                       ";", "beam: 3 m");
  expect_slip("boat { a: 3 m; b: 2 m }\n",
              "1:14 semicolon: a line needs no ; and settings are parted by commas", ";",
              "boat { a: 3 m\n b: 2 m }\n");
  expect_slip_in_stack("a (b: 1; c: 2)",
                       "2:8 semicolon: a line needs no ; and settings are parted by commas", ";",
                       "a (b: 1, c: 2)");
  expect_slip_in_block("beam: 3 m // afloat", "2:11 slash-comment: a remark begins with #, not with //",
                       "// afloat", "beam: 3 m # afloat");
  expect_slip_in_block("a: 3 m \u2013 2 m",
                       "2:8 odd-character: the character \u2013 (U+2013) has no meaning here", "\u2013",
                       "a: 3 m - 2 m");
  expect_slip_in_stack("2 \u00D7 toggle",
                       "2:3 odd-character: the character \u00D7 (U+00D7) has no meaning here", "\u00D7",
                       "2 x toggle");
  expect_slip_in_block("a: 30\u00B0",
                       "2:6 odd-character: the character \u00B0 (U+00B0) has no meaning here", "\u00B0",
                       "a: 30 deg");
  expect_slip_in_block("a:\u200B 3 m", "2:3 odd-character: the character U+200B has no meaning here",
                       "\u200B", "a: 3 m");
  expect_slip_in_block("a: 3 m @@!", "2:8 odd-character: the character @ (U+0040) has no meaning here",
                       "@@!", "");
  expect_slip_in_block(
      "cap_tang: 3 m",
      "2:1 malformed-name: cap_tang is not a name: names are made of the letters a to z, digits, and "
      "single hyphens between them",
      "cap_tang", "cap-tang: 3 m");
}

TEST(SyntaxSlip, Texts) {
  expect_slip_in_block("a: \"open",
                       "2:4 unclosed-text: the text that begins here is not closed on its line", "\"open",
                       "a: \"open\"");
  expect_slip("boat \"Demo {\n  beam: 3 m\n}\n",
              "1:6 unclosed-text: the text that begins here is not closed on its line", "\"Demo {",
              "boat \"Demo\" {\n  beam: 3 m\n}\n");
  expect_slip_in_stack("a (pin: \"5/8 in)",
                       "2:9 unclosed-text: the text that begins here is not closed on its line",
                       "\"5/8 in)", "a (pin: \"5/8 in\")");
  expect_slip_in_block("a: \"5/8\"\"",
                       "2:4 quote-in-text: a quote inside a text needs a backslash before it", "\"5/8\"\"",
                       "a: \"5/8\\\"\"");
  expect_slip_in_block(
      "a: “b”",
      "2:4 other-quotes: “b” is in quotes of another kind; a text is written in straight double quotes",
      "“b”", "a: \"b\"");
  expect_slip_in_block(
      "a: 'b'",
      "2:4 other-quotes: 'b' is in quotes of another kind; a text is written in straight double quotes",
      "'b'", "a: \"b\"");
  expect_slip(
      "use \"a\\b.rig\"\n",
      "1:7 stray-backslash: a backslash in a text is allowed only before a quote or another backslash",
      "\\", "use \"a\\\\b.rig\"\n");
}

TEST(SyntaxSlip, Numbers) {
  expect_slip_in_block(
      "a: 11,815 m",
      "2:4 decimal-comma: 11,815 has a comma in the number; is 11.815 m, 11_815 m or 11, 815 m meant?",
      "11,815 m", "a: 11.815 m");
  expect_slip_in_block("a: 0,5 m",
                       "2:4 decimal-comma: 0,5 has a comma in the number; is 0.5 m or 0, 5 m meant?",
                       "0,5 m", "a: 0.5 m");
  expect_slip_in_block("a: (1,2,3) m",
                       "2:5 comma-without-blank: 1,2,3 needs a blank behind each comma: 1, 2, 3", "1,2,3",
                       "a: (1, 2, 3) m");
  expect_slip_in_block("a: (-0.05,-1,3) m",
                       "2:6 comma-without-blank: 0.05,-1,3 needs a blank behind each comma: 0.05, -1, 3",
                       "0.05,-1,3", "a: (-0.05, -1, 3) m");
  expect_slip_in_block("a: 11 642 mm",
                       "2:4 spaced-number: 11 642 has a blank inside the number; is 11_642 mm meant?",
                       "11 642 mm", "a: 11_642 mm");
  expect_slip_in_block("a: 11\u00A0642 mm",
                       "2:4 spaced-number: 11\u00A0642 has a blank inside the number; is 11_642 mm meant?",
                       "11\u00A0642 mm", "a: 11_642 mm");
  expect_slip_in_block("a: .5 m", "2:4 malformed-number: .5 is not a number; is 0.5 m meant?", ".5 m",
                       "a: 0.5 m");
  expect_slip_in_block("a: 5. m", "2:4 malformed-number: 5. is not a number; is 5 m meant?", "5. m",
                       "a: 5 m");
  expect_slip_in_block("a: 1__2 m", "2:4 malformed-number: 1__2 is not a number; is 12 m meant?", "1__2 m",
                       "a: 12 m");
  expect_slip_in_block("a: 38-7-3/8",
                       "2:4 malformed-number: 38-7-3/8 is not a number; is 38' 7-3/8\" meant?", "38-7-3/8",
                       "a: 38' 7-3/8\"");
  expect_slip_in_block("a: 2026-5-2",
                       "2:4 malformed-number: 2026-5-2 is not a number; is 2026-05-02 meant?", "2026-5-2",
                       "a: 2026-05-02");
  expect_slip_in_block("a: 1/2/3 m", "2:4 unreadable-number: 1/2/3 is not a number that can be read",
                       "1/2/3 m", "");
  expect_slip_in_block("a: (1, 2) m", "2:4 place-needs-three-numbers: a place has three numbers, not 2",
                       "(1, 2) m", "");
  expect_slip_in_block(
      "a: (1 m + 2) m",
      "2:14 unit-behind-parenthesis: the unit m is behind a sum in parentheses; each number has "
      "its own",
      "m", "");
}

TEST(SyntaxSlip, OneOnALineDoesNotHideTheNext) {
  const ParsedText parsed("language 1\nboat \"A\" {\n  beam 3.2 m\n  draft:\n  mast: 11,8 m\n  ok: 1 m\n}\n"
                          "stay { stack {\n  2 toggle\n  line (length 3 m)\n} }\n");
  EXPECT_THAT(
      parsed.lines(),
      ElementsAre("3:7 missing-colon: between beam and the number 3.2 a colon is missing",
                  "4:9 missing-value: behind draft: a value is missing; there is the end of the line",
                  "5:9 decimal-comma: 11,8 has a comma in the number; is 11.8 m or 11, 8 m meant?",
                  "9:4 missing-times: between 2 and toggle an x is missing",
                  "10:15 missing-colon: between length and the number 3 a colon is missing"));
  // What could be read is in the tree.
  EXPECT_EQ(parsed.printed(), R"(language 1
declaration boat "A"
  property beam
    value
      number 3.2 in m
  property draft
    value
      error
  property mast
    value
      error
  property ok
    value
      number 1 in m
declaration stay
  declaration stack
    item 2 x toggle
    item line
      setting length
        value
          number 3 in m
)");
}

} // namespace sheerpole::slip_test
