#include "service/complete.hpp"

#include "unit/service/boat_texts.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole::complete_test {
namespace {

using namespace service;
using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

Proposals proposals(const std::string& text) {
  const test::Marked marked = test::marked(text);
  test::BoatTexts texts(marked.text);
  const OpenBoat boat = texts.read();
  return complete(boat, SourceId{0}, marked.offset);
}

std::vector<std::string> words(const std::string& text) {
  std::vector<std::string> result;
  for (const Proposal& proposal : proposals(text).all)
    result.push_back(proposal.word);
  return result;
}

/// The small boat with lines more behind it.
std::vector<std::string> words_behind(const std::string& lines) {
  return words(test::small_boat + lines);
}

TEST(Complete, StatementsAtTheTop) {
  EXPECT_THAT(words("language 1\n|"),
              AllOf(Contains("stay"), Contains("toggle"), Contains("let"), Not(Contains("stack"))));
  EXPECT_THAT(words("language 1\nsta|"), Contains("stay"));
}

TEST(Complete, PropertiesOfTheKindThatAreNotStatedYet) {
  const auto found = words_behind("toggle toggle-13 {\n  length: 82 mm\n  |\n}\n");
  EXPECT_THAT(found, AllOf(Contains("upper"), Not(Contains("length")), Not(Contains("diameter"))));
  // The one that is being typed is offered all the same.
  EXPECT_THAT(words_behind("toggle toggle-13 {\n  leng|\n}\n"), Contains("length"));
  EXPECT_THAT(words_behind("stay a {\n  |\n}\n"), AllOf(Contains("stack"), Contains("path")));
}

TEST(Complete, InATextThatIsBroken) {
  EXPECT_THAT(words_behind("toggle toggle-13 {\n  length: 82 mm\n  up|\n"), Contains("upper"));
  EXPECT_THAT(words("language 1\nstay a {\n  path: (((\n  lin|"), Contains("line").Times(0));
  EXPECT_THAT(words("language 1\nstay a {\n  sides: ;\n  lin|\n}\n"), Contains("line"));
}

TEST(Complete, PartsInAStackAndHowTheyAreSet) {
  const std::string begin = "stay b {\n  line: hmpe-9\n  stack {\n    ";
  EXPECT_THAT(words_behind(begin + "|\n  }\n}\n"), AllOf(Contains("toggle-12"), Contains("screw-12"),
                                                         Contains("line"), Not(Contains("hmpe-9"))));
  EXPECT_THAT(words_behind(begin + "2 x tog|\n  }\n}\n"),
              AllOf(Contains("toggle-12"), Not(Contains("line"))));
  EXPECT_THAT(words_behind(begin + "screw-12 (|)\n  }\n}\n"), AllOf(Contains("open"), Contains("length")));
  EXPECT_THAT(words_behind(begin + "screw-12 (length: 3 mm, |)\n  }\n}\n"),
              AllOf(Contains("open"), Not(Contains("length"))));
  EXPECT_THAT(words_behind(begin + "line (|)\n  }\n}\n"), Contains("in-hand"));
}

TEST(Complete, ValuesByTheTypeOfTheProperty) {
  EXPECT_THAT(words_behind("stay b {\n  sides: |\n}\n"), ElementsAre("port", "starboard"));
  EXPECT_THAT(words_behind("stay b {\n  line: |\n}\n"), ElementsAre("hmpe-9"));
  EXPECT_THAT(words_behind("stay b {\n  path: cap-tang > |\n}\n"),
              AllOf(Contains("plate-a"), Not(Contains("toggle-12"))));
  EXPECT_THAT(words_behind("stay b {\n  path: cap-tang |\n}\n"), ElementsAre("free", "clamped", "ends"));
  EXPECT_THAT(words_behind("toggle t {\n  upper: |\n}\n"), Contains("jaw"));
  EXPECT_THAT(words_behind("toggle t {\n  upper: jaw (|)\n}\n"), Contains("gap"));
  EXPECT_THAT(words_behind("toggle t {\n  upper: jaw (gap: 3 |)\n}\n"),
              AllOf(Contains("mm"), Not(Contains("kN"))));
  EXPECT_THAT(words_behind("toggle t {\n  length: 82 |\n}\n"),
              AllOf(Contains("mm"), Contains("measured"), Not(Contains("kN"))));
  EXPECT_THAT(words_behind("toggle t {\n  length: 82 mm |\n}\n"),
              AllOf(Contains("measured"), Not(Contains("mm"))));
}

TEST(Complete, HeadsOfDeclarations) {
  EXPECT_THAT(words_behind("toggle t from |"), ElementsAre("toggle-12"));
  EXPECT_THAT(words_behind("reading of |"), ElementsAre("cap-shroud"));
  EXPECT_THAT(words_behind("reading of cap-shroud.|"), ElementsAre("port", "starboard"));
  EXPECT_THAT(words_behind("expect cap-shroud.|"), Contains("body"));
  EXPECT_THAT(words_behind("let a = |"), AllOf(Contains("cap-tang"), Not(Contains("toggle-12"))));
}

TEST(Complete, NothingInACommentATextOrANumber) {
  EXPECT_THAT(words_behind("# sta|"), IsEmpty());
  EXPECT_THAT(words_behind("boat \"sta|\" { }\n"), IsEmpty());
  EXPECT_THAT(words_behind("let a = 1|"), IsEmpty());
}

TEST(Complete, TakesTheWordThatWasBegun) {
  const Proposals found = proposals("language 1\n\u00e9 # \u20ac\nlet a = 1 m\nst|ay a {\n}\n");
  EXPECT_EQ(found.span.end - found.span.begin, 4u);
  const auto stay = std::find_if(found.all.begin(), found.all.end(),
                                 [](const Proposal& each) { return each.word == "stay"; });
  ASSERT_NE(stay, found.all.end());
  EXPECT_EQ(stay->snippet, "stay ${1:name} {\n  $0\n}");
  EXPECT_EQ(stay->insert, "stay ");
}

TEST(Complete, NamesOfLibraries) {
  const test::Marked marked =
      test::marked("language 1\nuse \"parts.rig\"\nstay a {\n  stack {\n    |\n  }\n}\n");
  test::BoatTexts texts(marked.text);
  texts.put("parts.rig", "language 1\ntoggle toggle-99 {\n  length: 3 mm\n}\n");
  const OpenBoat boat = texts.read();
  std::vector<std::string> found;
  for (const Proposal& proposal : complete(boat, SourceId{0}, marked.offset).all)
    found.push_back(proposal.word);
  EXPECT_THAT(found, Contains("toggle-99"));
}

TEST(Complete, EveryPlaceOfABoatAnswers) {
  test::BoatTexts texts(test::small_boat);
  const OpenBoat boat = texts.read();
  for (std::uint32_t at = 0; at <= test::small_boat.size(); ++at) {
    const Proposals found = complete(boat, SourceId{0}, at);
    EXPECT_LE(found.span.begin, at);
    EXPECT_GE(found.span.end, at);
  }
}

} // namespace
} // namespace sheerpole::complete_test
