#include "unit/syntax/parsed_text.hpp"

#include <gmock/gmock.h>

namespace sheerpole::bracket_test {

using sheerpole::Diagnostic;
using sheerpole::syntax_test::ParsedText;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

/// Where a finding points besides its own place: `line:column text`.
std::vector<std::string> other_places(const ParsedText& parsed) {
  std::vector<std::string> result;
  for (const Diagnostic& finding : parsed.findings)
    for (const auto& label : finding.others)
      result.push_back(parsed.place(label.span) + " " + label.text);
  return result;
}

} // namespace

TEST(SyntaxBrackets, AMissingClosingBraceIsFoundByTheIndentation) {
  const ParsedText parsed("boat \"A\" {\n  beam: 3 m\n\npoints {\n  a: (1, 2, 3) m\n}\n");
  EXPECT_THAT(parsed.lines(),
              ElementsAre("2:12 missing-closing-brace: the block of boat \"A\" is not closed: the "
                          "closing brace is missing"));
  EXPECT_THAT(other_places(parsed), ElementsAre("1:10 opened here"));
  EXPECT_EQ(parsed.mended(), "boat \"A\" {\n  beam: 3 m\n}\n\npoints {\n  a: (1, 2, 3) m\n}\n");
  EXPECT_THAT(ParsedText(parsed.mended()).lines(), IsEmpty());
  EXPECT_EQ(parsed.printed(), ParsedText(parsed.mended()).printed());
}

TEST(SyntaxBrackets, AMissingInnerBraceIsNotTakenForTheOuterOne) {
  const ParsedText parsed("stay a {\n  stack {\n    line\n  path: a > b\n}\nboat { }\n");
  EXPECT_THAT(parsed.lines(),
              ElementsAre("3:9 missing-closing-brace: the block of stack is not closed: the closing "
                          "brace is missing"));
  EXPECT_THAT(other_places(parsed), ElementsAre("2:9 opened here"));
  EXPECT_EQ(parsed.mended(), "stay a {\n  stack {\n    line\n  }\n  path: a > b\n}\nboat { }\n");
  EXPECT_THAT(ParsedText(parsed.mended()).lines(), IsEmpty());
}

TEST(SyntaxBrackets, AMissingBraceOfABlockWithNothingInItIsFoundByTheIndentationOfTheOthers) {
  const std::string others = "\nboat \"A\" {\n  beam: 3 m\n}\n";
  const ParsedText parsed("tang eye {\n" + others);
  EXPECT_THAT(parsed.lines(),
              ElementsAre("1:11 missing-closing-brace: the block of tang eye is not closed: "
                          "the closing brace is missing"));
  EXPECT_EQ(parsed.mended(), "tang eye { }\n" + others);
}

TEST(SyntaxBrackets, AMissingOpeningParenthesisStandsBeforeTheFirstSetting) {
  const ParsedText parsed("stay a {\n  stack {\n    eye splice: bury, wrap: 40 mm)\n    line\n  }\n}\n");
  EXPECT_THAT(parsed.lines(),
              ElementsAre("3:9 missing-opening-parenthesis: between eye and its setting splice "
                          "a ( is missing"));
  EXPECT_EQ(parsed.mended(),
            "stay a {\n  stack {\n    eye (splice: bury, wrap: 40 mm)\n    line\n  }\n}\n");
  EXPECT_THAT(ParsedText(parsed.mended()).lines(), IsEmpty());
  EXPECT_THAT(
      ParsedText("tang a {\n  lower: jaw gap: 12 mm)\n}\n").lines(),
      ElementsAre("2:14 missing-opening-parenthesis: between jaw and its setting gap a ( is missing"));
}

TEST(SyntaxBrackets, WithoutIndentationTheEndOfTheFileHasToDo) {
  const ParsedText parsed("boat \"A\" {\nbeam: 3 m\npoints {\na: (1, 2, 3) m\n}\n");
  EXPECT_THAT(parsed.lines(),
              ElementsAre("5:2 missing-closing-brace: the block of boat \"A\" is not closed: the "
                          "closing brace is missing"));
  EXPECT_THAT(ParsedText(parsed.mended()).lines(), IsEmpty());
}

TEST(SyntaxBrackets, ABlockThatIsNeverClosed) {
  EXPECT_EQ(ParsedText("points {").mended(), "points { }");
  EXPECT_EQ(ParsedText("boat { beam: 3 m").mended(), "boat { beam: 3 m }");
  const ParsedText parsed("stay a {\n  stack {\n    line\n");
  EXPECT_THAT(
      parsed.lines(),
      ElementsAre(
          "3:9 missing-closing-brace: the block of stack is not closed: the closing brace is missing",
          "3:9 missing-closing-brace: the block of stay a is not closed: the closing brace is "
          "missing"));
}

TEST(SyntaxBrackets, AnExtraClosingBrace) {
  const ParsedText last("boat {\n  beam: 3 m\n}\n}\npoints { }\n");
  EXPECT_THAT(last.lines(), ElementsAre("4:1 extra-closing-brace: this } closes nothing"));
  EXPECT_EQ(last.mended(), "boat {\n  beam: 3 m\n}\n\npoints { }\n");
  EXPECT_EQ(last.printed(), ParsedText(last.mended()).printed());
  // The one in the middle is too far in to close the block.
  const ParsedText middle("stay a {\n  stack {\n    line\n  }\n  }\n  path: a > b\n}\n");
  EXPECT_THAT(middle.lines(), ElementsAre("5:3 extra-closing-brace: this } closes nothing"));
  EXPECT_THAT(ParsedText(middle.mended()).lines(), IsEmpty());
}

TEST(SyntaxBrackets, AMissingOpeningBrace) {
  const ParsedText parsed("stay a \"A\"\n  path: a > b\n  stack\n    line\n  }\n}\n");
  EXPECT_THAT(
      parsed.lines(),
      ElementsAre(
          "1:11 missing-opening-brace: the block of stay a \"A\" is not opened: the opening brace is "
          "missing",
          "3:8 missing-opening-brace: the block of stack is not opened: the opening brace is missing"));
  EXPECT_THAT(other_places(parsed),
              ElementsAre("2:3 this belongs to the block", "4:5 this belongs to the block"));
  EXPECT_EQ(parsed.mended(), "stay a \"A\" {\n  path: a > b\n  stack {\n    line\n  }\n}\n");
  EXPECT_THAT(ParsedText(parsed.mended()).lines(), IsEmpty());
}

TEST(SyntaxBrackets, BothBracesMissing) {
  const ParsedText parsed("points\n  a: (1, 2, 3) m\nboat { }\n");
  EXPECT_THAT(
      parsed.lines(),
      ElementsAre(
          "1:7 missing-opening-brace: the block of points is not opened: the opening brace is missing",
          "2:17 missing-closing-brace: the block of points is not closed: the closing brace is "
          "missing"));
  EXPECT_THAT(ParsedText(parsed.mended()).lines(), IsEmpty());
}

TEST(SyntaxBrackets, AnUnclosedParenthesisEndsWithItsLine) {
  const ParsedText parsed(
      "stay { stack {\n  thimble (splice: bury\n  line\n  tang (a: 1,\n    b: 2\n} }\n");
  EXPECT_THAT(parsed.lines(),
              ElementsAre("2:24 missing-closing-parenthesis: the ( is not closed: a ) is missing",
                          "5:9 missing-closing-parenthesis: the ( is not closed: a ) is missing"));
  EXPECT_THAT(other_places(parsed), ElementsAre("2:11 opened here", "4:8 opened here"));
  EXPECT_THAT(ParsedText(parsed.mended()).lines(), IsEmpty());
  const ParsedText last("let a = [b, (c + d");
  EXPECT_EQ(last.mended(), "let a = [b, (c + d)]");
}

TEST(SyntaxBrackets, ClosingSignsThatDoNotFit) {
  const ParsedText wrong("boat { a: (1, 2, 3] m }\n");
  EXPECT_THAT(wrong.lines(),
              ElementsAre("1:19 wrong-closing-parenthesis: what ( opens is closed by ), not by ]"));
  EXPECT_THAT(other_places(wrong), ElementsAre("1:11 opened here"));
  EXPECT_THAT(ParsedText(wrong.mended()).lines(), IsEmpty());
  const ParsedText extra("boat { a: (1, 2, 3)) m }\n");
  EXPECT_THAT(extra.lines(), ElementsAre("1:20 extra-closing-parenthesis: this ) closes nothing"));
  EXPECT_THAT(ParsedText(extra.mended()).lines(), IsEmpty());
}

TEST(SyntaxBrackets, SoundFilesMayBeIndentedAsTheyLike) {
  EXPECT_THAT(ParsedText("      stay a {\n stack {\n line\n        }\n  path: a\n}\n").lines(), IsEmpty());
}

} // namespace sheerpole::bracket_test
