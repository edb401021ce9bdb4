#include "source/file_reader.hpp"
#include "unit/syntax/parsed_text.hpp"

#include <gmock/gmock.h>

namespace sheerpole::robustness_test {

using sheerpole::syntax_test::ParsedText;
using sheerpole::syntax_test::sample;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

namespace {

/// Walks over a tree and looks at every span.
class SpanCheck {
public:
  explicit SpanCheck(const ParsedText& parsed) : size_(parsed.source.bytes().size()) {
    for (const Statement& each : parsed.tree.statements)
      std::visit([this](const auto& inner) { check(inner); }, each);
    for (const Comment& each : parsed.tree.comments)
      check(each.span);
    for (const Diagnostic& each : parsed.findings) {
      EXPECT_TRUE(each.primary.has_value());
      if (each.primary)
        check(each.primary->span);
      for (const Label& other : each.others)
        check(other.span);
      if (each.edit)
        check(each.edit->span);
    }
  }

private:
  void check(Span span) {
    EXPECT_LE(span.begin, span.end);
    EXPECT_LE(span.end, size_);
  }
  void check(const Name& name) {
    if (!name.missing())
      check(name.span);
  }
  void check(const LanguageLine& each) { check(each.span); }
  void check(const Use& each) { check(each.span); }
  void check(const Let& each) {
    check(each.name);
    check(each.value);
  }
  void check(const Expect& each) {
    for (const Name* name : {&each.stay, &each.side, &each.quantity})
      check(*name);
    check(each.span);
    check(each.value);
  }
  void check(const ErrorEntry& each) { check(each.span); }
  void check(const Declaration& each) {
    for (const Name* name :
         {&each.kind, &each.name, &each.side, &each.from, &each.of, &each.of_side, &each.on})
      check(*name);
    check(each.block.span);
    check(each.span);
    for (const Entry& entry : each.block.entries)
      std::visit([this](const auto& inner) { check(inner); }, entry);
  }
  void check(const Property& each) {
    check(each.name);
    check(each.side);
    check(each.value);
    check(each.span);
  }
  void check(const Item& each) {
    check(each.name);
    check(each.span);
    for (const Setting& setting : each.settings)
      check(setting);
  }
  void check(const Setting& each) {
    check(each.name);
    check(each.value);
    check(each.span);
  }
  void check(const Value& each) {
    ASSERT_FALSE(each.stops.empty());
    check(each.span);
    for (const Stop& stop : each.stops)
      check(stop.expression);
    if (each.tolerance)
      check(each.tolerance->amount);
    if (each.source)
      check(each.source->span);
  }
  void check(const Expression& each) {
    check(each.span);
    check(each.unit);
    for (const Expression& operand : each.operands)
      check(operand);
    for (const Setting& setting : each.settings)
      check(setting);
  }

  std::size_t size_;
};

/// Parses a damaged text: no crash, places inside the file, words for people, and nothing in the tree that
/// says "could not be read" without a finding that says why.
void expect_survives(const std::string& text) {
  if (first_invalid_utf8(text) != std::string::npos)
    return; // refused before it is parsed
  const ParsedText parsed(text);
  SpanCheck{parsed};
  for (const Diagnostic& each : parsed.findings)
    for (const std::string word :
         {"token", "mismatch", "extraneous", "viable", "input", "expecting", "EOF"})
      EXPECT_THAT(each.message, Not(HasSubstr(word)));
  const std::string printed = parsed.printed();
  if (printed.find("unreadable\n") != std::string::npos || printed.find(" error\n") != std::string::npos) {
    EXPECT_THAT(parsed.findings, Not(IsEmpty())) << text;
  }
  if (::testing::Test::HasFailure())
    FAIL() << "in this text:\n" << text;
}

std::string repeated(const std::string& text, int count) {
  std::string result;
  for (int i = 0; i < count; ++i)
    result += text;
  return result;
}

} // namespace

TEST(SyntaxRobustness, EveryPrefixOfAFile) {
  for (std::size_t size = 0; size <= sample.size(); ++size)
    ASSERT_NO_FATAL_FAILURE(expect_survives(sample.substr(0, size)));
}

TEST(SyntaxRobustness, EveryFileThatLacksOneByte) {
  for (std::size_t i = 0; i < sample.size(); ++i)
    ASSERT_NO_FATAL_FAILURE(expect_survives(sample.substr(0, i) + sample.substr(i + 1)));
}

TEST(SyntaxRobustness, EveryFileThatLacksOneLine) {
  for (std::size_t i = 0; i < sample.size();) {
    const std::size_t end = sample.find('\n', i) + 1;
    ASSERT_NO_FATAL_FAILURE(expect_survives(sample.substr(0, i) + sample.substr(end)));
    i = end;
  }
}

TEST(SyntaxRobustness, ASignTooManyAnywhere) {
  // Each sign at other places than the one before, so that all kinds of places have their turn.
  std::size_t first = 0;
  for (const std::string sign :
       {"{", "}", "(", ")", "[", "]", ":", ",", "\"", "\n", "=", ";", "x", "±", "-", "#"}) {
    for (std::size_t i = first % 7; i < sample.size(); i += 7)
      ASSERT_NO_FATAL_FAILURE(expect_survives(sample.substr(0, i) + sign + sample.substr(i)));
    ++first;
  }
}

TEST(SyntaxRobustness, OneDeletedByteIsAFewFindingsAtMost) {
  std::size_t most = 0;
  for (std::size_t i = 0; i < sample.size(); ++i) {
    const std::string text = sample.substr(0, i) + sample.substr(i + 1);
    if (first_invalid_utf8(text) == std::string::npos)
      most = std::max(most, ParsedText(text).findings.size());
  }
  EXPECT_LE(most, 4U);
}

TEST(SyntaxRobustness, NestingIsReadToItsLimitAndRefusedBeyond) {
  const auto nested = [](int levels) {
    return "let a = " + repeated("(", levels) + "1 m" + repeated(")", levels) + "\n";
  };
  EXPECT_THAT(ParsedText(nested(deepest_nesting)).lines(), IsEmpty());
  const ParsedText beyond(nested(deepest_nesting + 1));
  EXPECT_THAT(beyond.lines(),
              ::testing::ElementsAre(
                  "1:73 too-deep: braces or parentheses are nested deeper than 64 levels, or a sum "
                  "has more parts than that"));
  EXPECT_EQ(beyond.printed(), "unreadable\n");
  for (const std::string sign : {"(", "[", "{", "a {", "a (b: c ", "-", "- ", "((((-"})
    ASSERT_NO_FATAL_FAILURE(expect_survives("let a = " + repeated(sign, 100000)));
}

TEST(SyntaxRobustness, LongSumsAreRefused) {
  EXPECT_THAT(ParsedText("let a = 1" + repeated(" + 1", 63) + "\n").lines(), IsEmpty());
  EXPECT_EQ(ParsedText("let a = 1" + repeated(" + 1", 64) + "\n").findings.at(0).slug, "too-deep");
  EXPECT_EQ(ParsedText("let a = 1" + repeated(" * 1", 900) + "\n").findings.at(0).slug, "too-deep");
}

TEST(SyntaxRobustness, FindingsAreCappedInAFileOfNothingButSlips) {
  for (const std::string slip :
       {";", "@ ", "@", "1,5 ", "}", ")", "= \n", "\"\n", "a 1\n", "'x' ", "a {\n", "-> "}) {
    const ParsedText parsed(repeated(slip, 20000));
    EXPECT_LE(parsed.findings.size(), 101U) << slip;
    EXPECT_THAT(parsed.findings, Not(IsEmpty())) << slip;
  }
}

TEST(SyntaxRobustness, ManySlipsInOneBlockAreCappedToo) {
  for (const std::string slip :
       {"a 1\n", "a = 1\n", "a b\n", "2 a\n", "a (b 1 c: 1)\n", "a:\n", "a: b c\n"}) {
    const ParsedText parsed("boat {\n" + repeated(slip, 20000) + "}\n");
    EXPECT_EQ(parsed.findings.size(), 101U) << slip;
  }
}

} // namespace sheerpole::robustness_test
