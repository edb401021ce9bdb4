#include "syntax/tidy.hpp"

#include "syntax/written_words.hpp"
#include "unit/syntax/rig_texts.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::tidy_test {

using sheerpole::syntax_test::all_rig_texts;
using sheerpole::syntax_test::ParsedText;
using sheerpole::syntax_test::RigText;
using sheerpole::syntax_test::sample;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

SourceText source_of(const std::string& text) {
  return {SourceId{0}, "test.rig", text};
}

/// The tidy text. Fails when there is none.
std::string tidied(const std::string& text) {
  DiagnosticSink sink;
  const std::optional<std::string> result = tidy(source_of(text), sink);
  EXPECT_TRUE(result.has_value()) << text;
  return result.value_or("");
}

/// The words, signs and comments of a text as written.
std::vector<std::string> words_of(const std::string& text) {
  const SourceText source = source_of(text);
  std::vector<std::string> result;
  for (const WrittenWord& word : written_words(source))
    result.emplace_back(source.text(word.span));
  return result;
}

/// A property of the value given, tidied; without its property.
std::string tidied_value(const std::string& value) {
  const std::string result = tidied("let a = " + value + "\n");
  EXPECT_EQ(result.substr(0, 8), "let a = ");
  return result.substr(8, result.size() - 9);
}

/// What must hold of every text that can be read, laid out in whatever way. Returns what does not, or
/// nothing.
std::string broken_promise(const std::string& text) {
  DiagnosticSink sink;
  const std::optional<std::string> once = tidy(source_of(text), sink);
  if (!once)
    return "it is not tidied";
  if (words_of(*once) != words_of(text))
    return "other words";
  const ParsedText before(text);
  const ParsedText after(*once);
  if (!after.findings.empty())
    return "the result cannot be read";
  if (after.printed() != before.printed())
    return "another tree";
  if (tidy(source_of(*once), sink) != once)
    return "tidying again changes it";
  if (!once->empty() && (once->back() != '\n' || once->ends_with("\n\n") || once->ends_with("\n\r\n")))
    return "it does not end with one line end";
  if (once->find("\n\n\n") != std::string::npos || once->starts_with('\n'))
    return "blank lines too many";
  return {};
}

void expect_promises(const std::string& text, const std::string& where) {
  const std::string broken = broken_promise(text);
  if (!broken.empty()) {
    DiagnosticSink sink;
    ADD_FAILURE() << where << ": " << broken << "\n"
                  << text << "\nis tidied to\n"
                  << tidy(source_of(text), sink).value_or("(nothing)");
  }
}

} // namespace

TEST(Tidy, BlanksRoundSigns) {
  EXPECT_EQ(tidied("let   a=1 m\n"), "let a = 1 m\n");
  EXPECT_EQ(tidied_value("b+c"), "b + c");
  EXPECT_EQ(tidied_value("b  -\tc*2/d"), "b - c * 2 / d");
  EXPECT_EQ(tidied_value("- b"), "-b");
  EXPECT_EQ(tidied_value("( - b , -c,- d )m"), "(-b, -c, -d) m");
  EXPECT_EQ(tidied_value("b - -c"), "b - -c");
  EXPECT_EQ(tidied_value("b*- c"), "b * -c");
  EXPECT_EQ(tidied_value("[b  free>c>- d]"), "[b free > c > -d]");
  EXPECT_EQ(tidied_value("b ,c,  d"), "b, c, d");
  EXPECT_EQ(tidied_value("b . port+c"), "b.port + c");
  EXPECT_EQ(tidied_value("jaw(gap :17 mm,pin:\"5/8 in\")"), "jaw (gap: 17 mm, pin: \"5/8 in\")");
  EXPECT_EQ(tidied_value("eye( )"), "eye ()");
  EXPECT_EQ(tidied_value("65 mm±2 mm   maker\"sheet\""), "65 mm ± 2 mm maker \"sheet\"");
  EXPECT_EQ(tidied_value("65 mm+-2 mm"), "65 mm +- 2 mm");
  EXPECT_EQ(tidied_value("65 mm +/-2 mm"), "65 mm +/- 2 mm");
  EXPECT_EQ(tidied_value("((b+c)*2)/d"), "((b + c) * 2) / d");
  EXPECT_EQ(tidied("reading  of  cap . port{ }\n"), "reading of cap.port { }\n");
  EXPECT_EQ(tidied("points {\n  a . port \"A\" : (1, 2, 3) m\n}\n"),
            "points {\n  a.port \"A\": (1, 2, 3) m\n}\n");
  EXPECT_EQ(tidied("stay { stack { 2x  toggle-12(a : b) } }\n"),
            "stay { stack { 2 x toggle-12 (a: b) } }\n");
}

TEST(Tidy, QuantitiesStayAsWritten) {
  for (const std::string value : {"7 3/8 in",
                                  "7-3/8 in",
                                  "38' 7 3/8\"",
                                  "38'-7 3/8\"",
                                  "38' - 7 3/8\"",
                                  "38'  7\"",
                                  "38ft 7-3/8in",
                                  "38 ft - 7 in",
                                  "11_642 mm",
                                  "12mm",
                                  "50%",
                                  "50 %",
                                  "7\u00BD\"",
                                  "38\u2032 7 3/8\u2033",
                                  "7\xC2\xA0"
                                  "3/8 in",
                                  "24e-6 ppm/K",
                                  "2.50E3 kg/m",
                                  "2026-05-02",
                                  "\"5/16  in\"",
                                  "\"a \\\" b\""})
    EXPECT_EQ(tidied_value(value), value);
  // What parts a number from its unit is a blank, of whatever sort and width, or nothing.
  EXPECT_EQ(tidied_value("12 \t mm"), "12 mm");
  EXPECT_EQ(tidied_value("12\xC2\xA0mm"), "12 mm");
}

TEST(Tidy, BlocksAndIndentation) {
  EXPECT_EQ(tidied("boat \"A\"\n\n{\n\n\n      beam: 3 m\n\tdraft: 2 m\n\n}"),
            "boat \"A\" {\n  beam: 3 m\n  draft: 2 m\n}\n");
  EXPECT_EQ(tidied("stay s {\nsides: port\nstack {\na\nline }\n}\n"),
            "stay s {\n  sides: port\n  stack {\n    a\n    line\n  }\n}\n");
  // A block on one line stays there; one with a line end in it has lines of its own.
  EXPECT_EQ(tidied("boat {beam:3 m}\n"), "boat { beam: 3 m }\n");
  EXPECT_EQ(tidied("boat {}\n"), "boat { }\n");
  EXPECT_EQ(tidied("boat {\n\n}\n"), "boat {\n}\n");
  EXPECT_EQ(tidied("stay {stack {a\nb}}\n"), "stay {\n  stack {\n    a\n    b\n  }\n}\n");
  EXPECT_EQ(tidied("stay {stack {a}\nline:b}\n"), "stay {\n  stack { a }\n  line: b\n}\n");
  EXPECT_EQ(tidied("stay { stack\n{ a } }\n"), "stay {\n  stack { a }\n}\n");
}

TEST(Tidy, BlankLines) {
  EXPECT_EQ(tidied("\n\n\nlanguage 1\n\n\n\nlet a = 1 m\nlet b = 1 m\n\nlet c = 1 m\n\n\n"),
            "language 1\n\nlet a = 1 m\nlet b = 1 m\n\nlet c = 1 m\n");
  EXPECT_EQ(tidied("boat {\n\n  # one\n\n\n  a: 1 m\n \t \n\n  b: 1 m\n\n  # two\n\n}\n"),
            "boat {\n  # one\n\n  a: 1 m\n\n  b: 1 m\n\n  # two\n}\n");
  EXPECT_EQ(tidied("boat { # one\n\n  a: 1 m\n}\n"), "boat {  # one\n  a: 1 m\n}\n");
  EXPECT_EQ(tidied("\n# one\n\n\nlanguage 1"), "# one\n\nlanguage 1\n");
  for (const std::string nothing : {"", "\n", "  \n\n\t", "\r\n"})
    EXPECT_EQ(tidied(nothing), "");
}

TEST(Tidy, TheFirstLineEndIsThatOfTheFile) {
  EXPECT_EQ(tidied("boat {\r\n\r\na: 1 m\r\n\r\n\r\nb: 2 m\r\n}\r\n\r\n"),
            "boat {\r\n  a: 1 m\r\n\r\n  b: 2 m\r\n}\r\n");
  EXPECT_EQ(tidied("let a = 1 m\r\nlet b = 1 m\n"), "let a = 1 m\r\nlet b = 1 m\r\n");
  EXPECT_EQ(tidied("let a = 1 m\nlet b = 1 m\r\n"), "let a = 1 m\nlet b = 1 m\n");
  EXPECT_EQ(tidied("let a = 1 m\rlet b = 1 m"), "let a = 1 m\rlet b = 1 m\r");
}

TEST(Tidy, CommentsStayAsWrittenAndStandInColumns) {
  EXPECT_EQ(tidied("boat {\n#a  b\n   #   c\n a: 1 m\n}\n#\n"),
            "boat {\n  #a  b\n  #   c\n  a: 1 m\n}\n#\n");
  EXPECT_EQ(
      tidied("let a = 1 m # one\nlet long-name = 1 m#two\nlet c = 1 m\nlet d = 1 m          # three\n"),
      "let a = 1 m          # one\nlet long-name = 1 m  #two\nlet c = 1 m\nlet d = 1 m  # three\n");
  // A blank line, or a line without one, parts the columns. Depth does not.
  EXPECT_EQ(tidied("let a = 1 m # one\n\nlet bb = 1 m # two\n# three\nlet ccc = 1 m # four\n"),
            "let a = 1 m  # one\n\nlet bb = 1 m  # two\n# three\nlet ccc = 1 m  # four\n");
  EXPECT_EQ(tidied("boat \"Name\" { # one\na: 1 m # two\n} # three\n"),
            "boat \"Name\" {  # one\n  a: 1 m       # two\n}              # three\n");
  // Columns are those of a screen, not bytes.
  EXPECT_EQ(tidied("let a = \"\u00E4\u00F6\u00FC\" # one\nlet b = \"aou\" # two\n"),
            "let a = \"\u00E4\u00F6\u00FC\"  # one\nlet b = \"aou\"  # two\n");
}

TEST(Tidy, NothingIsMovedPastAComment) {
  EXPECT_EQ(tidied("boat \"A\" # one\n{ a: 1 m # two\n} # three\n"),
            "boat \"A\"  # one\n{\n  a: 1 m  # two\n}         # three\n");
  EXPECT_EQ(tidied("boat \"A\"\n\n# one\n\n{ a: 1 m }\n"), "boat \"A\"\n\n# one\n{ a: 1 m }\n");
  EXPECT_EQ(tidied("let a = (1 m # one\n+ # two\n# three\n2 m)\n"),
            "let a = (1 m  # one\n         +    # two\n         # three\n         2 m)\n");
}

TEST(Tidy, LinesInsideBracketsStayTheAuthors) {
  EXPECT_EQ(tidied("stay {\n path:[a free>\nb clamped >c]\n}\n"),
            "stay {\n  path: [a free >\n         b clamped > c]\n}\n");
  EXPECT_EQ(tidied("stay {\n stack {\n a(b:c,\nd:(1,\n\n\n2, 3) m\n)\n}\n}\n"),
            "stay {\n  stack {\n    a (b: c,\n       d: (1,\n\n           2, 3) m\n      )\n  }\n}\n");
  // A bracket at the end of a line: what is inside stands a step further in, its other half does not.
  EXPECT_EQ(tidied("stay {\n upper: jaw(\n\ngap: 17 mm,\npin: \"5/8 in\"\n\n)\n}\n"),
            "stay {\n  upper: jaw (\n    gap: 17 mm,\n    pin: \"5/8 in\"\n  )\n}\n");
  EXPECT_EQ(tidied("let a = ( # one\n1 m\n)\n"), "let a = (  # one\n  1 m\n)\n");
  EXPECT_EQ(tidied("let a = ((\n1 m\n)\n* 2)\n"), "let a = ((\n  1 m\n)\n         * 2)\n");
}

TEST(Tidy, ATextThatCanNotBeReadIsLeftAlone) {
  for (const std::string text : {"boat {\n  beam 3 m\n}\n", "boat {\n", "let a = 11,815 m\n", "a: 1 m\n"}) {
    DiagnosticSink sink;
    EXPECT_EQ(tidy(source_of(text), sink), std::nullopt) << text;
    EXPECT_TRUE(sink.has_errors()) << text;
  }
  // What is wrong with the rig, and not with its text, is no matter here.
  EXPECT_EQ(tidied("no-such-kind a {\n no-such-property: 12\n}\n"),
            "no-such-kind a {\n  no-such-property: 12\n}\n");
}

TEST(Tidy, WordsOfAText) {
  EXPECT_THAT(
      words_of("a.port \"x\": (-1, 7 3/8) in # c \n\n# d"),
      ElementsAre("a", ".", "port", "\"x\"", ":", "(", "-", "1", ",", "7 3/8", ")", "in", "# c ", "# d"));
  const SourceText source = source_of("\r\na # c\r\n \r\n\r(\n12mm");
  std::vector<std::size_t> line_ends;
  for (const WrittenWord& word : written_words(source))
    line_ends.push_back(word.line_ends);
  EXPECT_THAT(line_ends, ElementsAre(1, 0, 3, 1, 0));
  EXPECT_FALSE(written_words(source).back().blank_before);
  EXPECT_TRUE(written_words(source).front().blank_before);
}

TEST(Tidy, EveryRigTextOfTheProjectKeepsWhatItSays) {
  const std::vector<RigText> texts = all_rig_texts();
  const auto rig_files = std::count_if(texts.begin(), texts.end(),
                                       [](const RigText& each) { return each.file.ends_with(".rig"); });
  EXPECT_GE(rig_files, 60);
  EXPECT_GE(texts.size(), static_cast<std::size_t>(rig_files) + 100);
  for (const RigText& each : texts)
    expect_promises(each.text, each.file);
}

TEST(Tidy, TextsOfManyShapes) {
  // What is left of the sample when a byte or a line is missing, where that can be read.
  std::size_t read = 0;
  const auto attempt = [&](const std::string& text) {
    if (first_invalid_utf8(text) == std::string::npos && ParsedText(text).findings.empty()) {
      ++read;
      expect_promises(text, "a part of the sample");
    }
  };
  // Each change at other places than the one before, so that all kinds of places have their turn.
  for (std::size_t i = 0; i + 5 < sample.size(); i += 6) {
    attempt(sample.substr(0, i) + sample.substr(i + 1));
    attempt(sample.substr(0, i + 1) + "\n" + sample.substr(i + 1));
    attempt(sample.substr(0, i + 2) + "#" + sample.substr(i + 2));
    attempt(sample.substr(0, i + 3) + "-" + sample.substr(i + 3));
    attempt(sample.substr(0, i + 4) + " " + sample.substr(i + 4));
  }
  EXPECT_GE(read, 300U);
}

namespace {

rc::Gen<std::string> any_blanks() {
  return rc::gen::map(
      rc::gen::resize(3, rc::gen::nonEmpty(rc::gen::container<std::vector<std::string>>(
                             rc::gen::element<std::string>(" ", "\t", "\u00A0", "\u202F")))),
      [](const std::vector<std::string>& blanks) {
        std::string result;
        for (const std::string& each : blanks)
          result += each;
        return result;
      });
}

std::string maybe_blanks() {
  return *rc::gen::element(true, false) ? *any_blanks() : std::string();
}

/// The same words on the same lines, with other blanks: wider ones where there are any, new ones round
/// signs, other indentation, more of the blank lines that are there.
std::string with_other_blanks(const std::string& text) {
  const SourceText source = source_of(text);
  std::string result;
  WordKind before = WordKind::opens_block;
  for (const WrittenWord& word : written_words(source)) {
    if (word.line_ends > 0) {
      if (before != WordKind::comment) // blanks behind a comment are a part of it
        result += maybe_blanks();
      const int lines = word.line_ends > 1 ? *rc::gen::inRange(2, 5) : 1;
      for (int i = 0; i < lines; ++i)
        result += "\n" + maybe_blanks();
    } else if (word.blank_before) {
      result += *any_blanks();
    } else if (before != WordKind::number) { // a number and its unit stay as they are
      result += maybe_blanks();
    }
    result += source.text(word.span);
    before = word.kind;
  }
  return result + (before == WordKind::comment ? "" : maybe_blanks());
}

/// The same words with line ends and comments where the language lets them stand: inside brackets, behind {
/// and before braces.
std::string with_other_lines(const std::string& text) {
  const SourceText source = source_of(text);
  std::string result;
  int brackets = 0;
  WordKind before = WordKind::comment;
  for (const WrittenWord& word : written_words(source)) {
    result += std::string(word.line_ends, '\n') + (word.blank_before ? " " : "");
    const bool free = before == WordKind::opens_block || word.kind == WordKind::opens_block ||
                      word.kind == WordKind::closes_block || brackets > 0;
    if (free && before != WordKind::comment && *rc::gen::inRange(0, 4) == 0)
      result +=
          *rc::gen::element<std::string>("\n", "\n\n", "\n\n\n", " # remark\n", "\n#remark\n\n", "\r\n");
    brackets += word.kind == WordKind::opens_bracket ? 1 : word.kind == WordKind::closes_bracket ? -1 : 0;
    result += source.text(word.span);
    before = word.kind;
  }
  return result;
}

/// The same lines, each ended by a line feed.
std::string with_line_feeds(const std::string& text) {
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (text[i] != '\r')
      result += text[i];
    else if (i + 1 == text.size() || text[i + 1] != '\n')
      result += '\n';
  return result;
}

const std::vector<RigText>& rig_texts() {
  static const std::vector<RigText> texts = all_rig_texts();
  return texts;
}

const std::string& any_text() {
  return rig_texts()[*rc::gen::inRange<std::size_t>(0, rig_texts().size())].text;
}

} // namespace

RC_GTEST_PROP(TidyProperty, BlanksAreNoMatter, ()) {
  const std::string& text = any_text();
  const std::string other = with_other_blanks(text);
  RC_ASSERT(ParsedText(other).findings.empty());
  RC_ASSERT(tidied(other) == with_line_feeds(tidied(text)));
}

RC_GTEST_PROP(TidyProperty, LinesAreKeptOrMended, ()) {
  const std::string text = with_other_lines(any_text());
  RC_ASSERT(ParsedText(text).findings.empty());
  RC_ASSERT(broken_promise(text) == std::string());
}

} // namespace sheerpole::tidy_test
