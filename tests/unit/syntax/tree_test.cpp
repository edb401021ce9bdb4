#include "unit/syntax/parsed_text.hpp"

#include <gmock/gmock.h>

namespace sheerpole::tree_test {

using sheerpole::syntax_test::ParsedText;
using sheerpole::syntax_test::sample;
using ::testing::IsEmpty;

namespace {

/// The value of the only property of the only block.
const Value& only_value(const ParsedText& parsed) {
  const auto& declaration = std::get<Declaration>(parsed.tree.statements.at(0));
  return std::get<Property>(declaration.block.entries.at(0)).value;
}

std::string tree_of_value(const std::string& value) {
  const ParsedText parsed("let a = " + value + "\n");
  EXPECT_THAT(parsed.lines(), IsEmpty()) << value;
  return parsed.printed();
}

} // namespace

TEST(SyntaxTree, EveryConstructOfTheSample) {
  const ParsedText parsed(sample);
  EXPECT_THAT(parsed.lines(), IsEmpty());
  EXPECT_EQ(parsed.printed(), R"(language 1
use "parts/demo.rig"
let sheer
  value drawn
    number 1.120 in m
declaration boat "Demo"
  property beam
    value drawn
      number 3.20 in m
declaration points
  property cap-tang "Cap shroud tang"
    value mirrored drawn "sail plan"
      vector in m
        negate
          number 0.050
        number 0.070
        number 12.620
  property plate-a.port
    value measured "tape"
      vector in m
        negate
          number 0.622
        negate
          number 1.431
        number 1.100
declaration turnbuckle turnbuckle-58 "Turnbuckle, 5/8 in" from turnbuckle-12
  property shortest
    value maker "sheet 4"
      number 320 in mm
      tolerance
        number 1 in mm
  property upper
    value
      construct jaw
        setting gap
          value maker
            number 17.0 in mm
            tolerance
              number 0.1 in mm
        setting pin
          value
            text "5/8 in"
  property opened
    value
      length 38' 7 3/8"
  property checked
    value
      date 2026-05-02
  property rest
    value
      subtract
        divide
          negate
            add
              name shortest
              multiply
                number 2
                number 3 in mm
          number 4
        number 24e-6 in ppm/K
declaration stay cap-shroud "Cap shroud"
  property sides
    list
      name port
      name starboard
  property path
    path
      name cap-tang
      name tip-2 free
      name tip-1 clamped
      name plate-a
  property line
    value
      name hmpe-9
  declaration stack
    item 2 x toggle-12
    item thimble-9
      setting splice
        value
          name long-bury
      setting spare-bury
        value
          number 1.2 in m
    item line
    item turnbuckle-58
      setting open
        value
          number 50 in %
declaration reading of cap-shroud.port
  property runs
    list
      number 11_640 in mm
      number 11_642 in mm
declaration points
)");
}

TEST(SyntaxTree, AFileMayBeEmptyOrEndWithoutALineEnd) {
  for (const std::string text : {"", "\n", "   ", "# only a remark", "\r\n\r\n", "\xC2\xA0\n"}) {
    const ParsedText parsed(text);
    EXPECT_THAT(parsed.lines(), IsEmpty()) << text;
    EXPECT_THAT(parsed.tree.statements, IsEmpty()) << text;
  }
  EXPECT_EQ(ParsedText("language 1").printed(), "language 1\n");
  EXPECT_EQ(ParsedText("points { }").printed(), "declaration points\n");
}

TEST(SyntaxTree, ABlockMayStandOnOneLineAndItsBraceOnTheNext) {
  const std::string expected = "declaration boat \"A\"\n  property beam\n    value\n      number 3 in m\n";
  EXPECT_EQ(ParsedText("boat \"A\" { beam: 3 m }").printed(), expected);
  EXPECT_EQ(ParsedText("boat \"A\"\n{\n\n  beam: 3 m\n\n}\n").printed(), expected);
  EXPECT_EQ(ParsedText("\r\nboat \"A\" {\r\n  beam: 3 m\r\n}\r\n").printed(), expected);
  EXPECT_EQ(ParsedText("boat\t\"A\" { # remark\n\tbeam: 3\xC2\xA0m # remark\n# remark\n}").printed(),
            expected);
}

TEST(SyntaxTree, WordsWithAMeaningStayNames) {
  // Every word that means something in one place may be a name in another.
  for (const std::string word :
       {"language", "use", "let", "x", "mirrored", "free", "clamped", "ends", "measured", "drawn", "maker",
        "standard", "practice", "assumed", "computed", "from", "of"}) {
    const ParsedText property("boat { " + word + ": " + word + " }");
    EXPECT_THAT(property.lines(), IsEmpty()) << word;
    EXPECT_EQ(property.printed(),
              "declaration boat\n  property " + word + "\n    value\n      name " + word + "\n");
    const ParsedText item("stay { stack { 2 x " + word + "\n" + word + " (" + word + ": " + word + ") } }");
    EXPECT_THAT(item.lines(), IsEmpty()) << word;
    EXPECT_THAT(ParsedText("let " + word + " = a." + word).lines(), IsEmpty()) << word;
    EXPECT_THAT(ParsedText("boat a from " + word + " of " + word + " { }").lines(), IsEmpty()) << word;
    if (word != "from" && word != "of") {
      EXPECT_EQ(ParsedText("state " + word + " { }").printed(), "declaration state " + word + "\n");
    }
  }
}

TEST(SyntaxTree, UnitAndSourceAreToldApart) {
  EXPECT_EQ(tree_of_value("1.450 m measured"), "let a\n  value measured\n    number 1.450 in m\n");
  EXPECT_EQ(tree_of_value("1.450 measured"), "let a\n  value measured\n    number 1.450\n");
  EXPECT_EQ(tree_of_value("b measured \"by tape\""), "let a\n  value measured \"by tape\"\n    name b\n");
  EXPECT_EQ(tree_of_value("0.54 kg/m"), "let a\n  value\n    number 0.54 in kg/m\n");
  EXPECT_EQ(tree_of_value("7 lbf-ft"), "let a\n  value\n    number 7 in lbf-ft\n");
  EXPECT_EQ(tree_of_value("12mm"), "let a\n  value\n    number 12 in mm\n");
  EXPECT_EQ(tree_of_value("50%"), "let a\n  value\n    number 50 in %\n");
  EXPECT_EQ(tree_of_value("20 degC"), "let a\n  value\n    number 20 in degC\n");
}

TEST(SyntaxTree, NumbersKeepTheirSpelling) {
  for (const std::string number : {"12", "0.5", "11_642", "24e-6", "2.5E3", "3/8", "7 3/8", "7-3/8",
                                   "7\xC2\xA0"
                                   "3/8",
                                   "7\u00BD", "\u00BE", "7 \u215C"})
    EXPECT_EQ(tree_of_value(number + " in"), "let a\n  value\n    number " + number + " in in\n");
}

TEST(SyntaxTree, LengthsInFeetAndInchesAreOneValue) {
  for (const std::string length :
       {"38' 7 3/8\"", "38'7\"", "38'-7 3/8\"", "38ft 7-3/8in", "38 ft 7 in", "38' 7.375\"", "38'",
        "7 3/8\"", "7-3/8\"", "7\u00BD\"", "38\u2032 7 3/8\u2033", "38\u2019 7 3/8\u201D",
        "38'\u202F"
        "7\u2009"
        "3/8\""})
    EXPECT_EQ(tree_of_value(length), "let a\n  value\n    length " + length + "\n");
  EXPECT_EQ(tree_of_value("7\" maker \"x\""), "let a\n  value maker \"x\"\n    length 7\"\n");
  EXPECT_EQ(tree_of_value("38ft"), "let a\n  value\n    number 38 in ft\n");
}

TEST(SyntaxTree, AMinusWithBlanksSubtractsAndAHyphenDoesNot) {
  EXPECT_EQ(tree_of_value("b - c"), "let a\n  value\n    subtract\n      name b\n      name c\n");
  EXPECT_EQ(tree_of_value("b-c"), "let a\n  value\n    name b-c\n");
  EXPECT_EQ(tree_of_value("-b"), "let a\n  value\n    negate\n      name b\n");
  EXPECT_EQ(tree_of_value("2 m - 1 m - 3 m"),
            "let a\n  value\n    subtract\n      subtract\n        number 2 in m\n        number 1 in m\n"
            "      number 3 in m\n");
}

TEST(SyntaxTree, ToleranceInEitherSpelling) {
  const std::string expected = "let a\n  value\n    number 65 in mm\n    tolerance\n      number 2 in mm\n";
  EXPECT_EQ(tree_of_value("65 mm \u00B1 2 mm"), expected);
  EXPECT_EQ(tree_of_value("65 mm +- 2 mm"), expected);
  EXPECT_EQ(tree_of_value("65 mm +/- 2 mm"), expected);
}

TEST(SyntaxTree, TextsWithEscapes) {
  EXPECT_EQ(tree_of_value(R"("5/8\" and a \\ \"")"),
            "let a\n  value\n    text \"5/8\\\" and a \\\\ \\\"\"\n");
  const ParsedText parsed(R"(boat "Oak \"and\" ash" { })");
  EXPECT_EQ(std::get<Declaration>(parsed.tree.statements.at(0)).title->text, "Oak \"and\" ash");
}

TEST(SyntaxTree, MembersOfAProperty) {
  const ParsedText parsed(
      "points {\n  plate-a.port \"Plate\": (1, b, -3 mm) m ± 2 mm measured \"tape\"\n}\n");
  ASSERT_THAT(parsed.lines(), IsEmpty());
  const auto& declaration = std::get<Declaration>(parsed.tree.statements.at(0));
  EXPECT_EQ(declaration.kind.text, "points");
  EXPECT_TRUE(declaration.name.missing());
  const auto& property = std::get<Property>(declaration.block.entries.at(0));
  EXPECT_EQ(property.name.text, "plate-a");
  EXPECT_EQ(property.side.text, "port");
  EXPECT_EQ(property.title->text, "Plate");
  const Value& value = property.value;
  EXPECT_EQ(value.shape, ValueShape::single);
  EXPECT_FALSE(value.mirrored);
  EXPECT_EQ(value.source->word, "measured");
  EXPECT_EQ(value.source->note->text, "tape");
  EXPECT_EQ(value.tolerance->amount.text, "2");
  EXPECT_EQ(value.tolerance->amount.unit.text, "mm");
  const Expression& vector = value.expression();
  EXPECT_EQ(vector.kind, ExpressionKind::vector);
  EXPECT_EQ(vector.unit.text, "m");
  ASSERT_EQ(vector.operands.size(), 3U);
  EXPECT_EQ(vector.operands[1].kind, ExpressionKind::name);
  EXPECT_EQ(vector.operands[2].kind, ExpressionKind::negate);
  EXPECT_EQ(vector.operands[2].operands.at(0).unit.text, "mm");
}

TEST(SyntaxTree, SpansAreBytesOfTheFileBehindCharactersOfSeveralBytes) {
  const ParsedText parsed("# Große Höhe\nboat \"Ödland ½\" {\n  höhe-text: \"°\"\n}\n");
  // The letter in the property's name is refused; everything round it has its place.
  ASSERT_EQ(parsed.findings.size(), 1U);
  EXPECT_EQ(parsed.source.text(parsed.findings[0].primary->span), "höhe-text");
  ASSERT_EQ(parsed.tree.comments.size(), 1U);
  EXPECT_EQ(parsed.source.text(parsed.tree.comments[0].span), "# Große Höhe");
  const auto& declaration = std::get<Declaration>(parsed.tree.statements.at(0));
  EXPECT_EQ(parsed.source.text(declaration.title->span), "\"Ödland ½\"");
  EXPECT_EQ(declaration.title->text, "Ödland ½");
  EXPECT_EQ(parsed.source.text(declaration.kind.span), "boat");
  EXPECT_EQ(parsed.source.text(declaration.block.span), "{\n  höhe-text: \"°\"\n}");
  EXPECT_EQ(parsed.source.text(only_value(parsed).span), "\"°\"");
  EXPECT_EQ(declaration.span.source, parsed.source.id());
}

TEST(SyntaxTree, SpansOfTheParts) {
  const ParsedText parsed("stay a of b.port {\n  v: 65 mm ± 2 mm maker \"x\"\n  p: a free > (b + -c)\n}\n");
  ASSERT_THAT(parsed.lines(), IsEmpty());
  const auto text = [&](Span span) { return std::string(parsed.source.text(span)); };
  const auto& declaration = std::get<Declaration>(parsed.tree.statements.at(0));
  EXPECT_EQ(text(declaration.of.span), "b");
  EXPECT_EQ(text(declaration.of_side.span), "port");
  const auto& first = std::get<Property>(declaration.block.entries.at(0));
  EXPECT_EQ(text(first.span), "v: 65 mm ± 2 mm maker \"x\"");
  EXPECT_EQ(text(first.value.span), "65 mm ± 2 mm maker \"x\"");
  EXPECT_EQ(text(first.value.expression().span), "65 mm");
  EXPECT_EQ(text(first.value.expression().unit.span), "mm");
  EXPECT_EQ(text(first.value.tolerance->span), "± 2 mm");
  EXPECT_EQ(text(first.value.source->span), "maker \"x\"");
  EXPECT_EQ(text(first.value.source->note->span), "\"x\"");
  const auto& second = std::get<Property>(declaration.block.entries.at(1));
  EXPECT_EQ(text(second.value.stops.at(0).passage.span), "free");
  const Expression& sum = second.value.stops.at(1).expression;
  EXPECT_EQ(text(sum.span), "(b + -c)");
  EXPECT_EQ(text(sum.operands.at(1).span), "-c");
  EXPECT_EQ(text(sum.operands.at(1).operands.at(0).span), "c");
}

TEST(SyntaxTree, CommentsAreKeptInOrder) {
  const ParsedText parsed("# one\nboat \"#\" { # two\n  a: (1, # three\n 2, 3) m\n}\n# four");
  ASSERT_THAT(parsed.lines(), IsEmpty());
  std::vector<std::string> comments;
  for (const Comment& each : parsed.tree.comments)
    comments.emplace_back(parsed.source.text(each.span));
  EXPECT_THAT(comments, ::testing::ElementsAre("# one", "# two", "# three", "# four"));
}

} // namespace sheerpole::tree_test
