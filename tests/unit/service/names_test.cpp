#include "service/rename.hpp"

#include "service/hover.hpp"
#include "service/occurrences.hpp"
#include "unit/service/boat_texts.hpp"

#include <gmock/gmock.h>

#include <string>
#include <vector>

namespace sheerpole::names_test {
namespace {

using namespace service;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const std::string boat_text =
    "language 1\nuse \"parts.rig\"\n# \u00e9\u20ac\nlet gap = 4 mm\ntoggle b from toggle-9 {\n"
    "  length: gap * 2\n}\nreading of forestay {\n}\nstay forestay {\n  line: rope\n  stack "
    "{\n    2 x toggle-9\n    line\n    b\n  }\n}\n";
const std::string parts_text =
    "language 1\nrope rope {\n  diameter: 9 mm\n}\ntoggle toggle-9 \"Small\" {\n  length: 3 mm\n}\n";

class Names : public testing::Test {
protected:
  Names() {
    texts.put("boat.rig", boat_text);
    texts.put("parts.rig", parts_text);
    boat = texts.read();
  }
  std::uint32_t at(const std::string& words) const {
    return static_cast<std::uint32_t>(boat_text.find(words));
  }
  std::string text_of(Span span) const { return std::string(boat.text(span.source).text(span)); }

  test::BoatTexts texts;
  OpenBoat boat;
};

TEST_F(Names, DefinitionLeadsIntoALibrary) {
  const auto found = definition(boat, SourceId{0}, at("toggle-9 {") + 3);
  ASSERT_TRUE(found);
  EXPECT_EQ(boat.text(found->to.source).name(), "parts.rig");
  EXPECT_EQ(text_of(found->to), "toggle-9");
  EXPECT_EQ(text_of(found->from), "toggle-9");
}

TEST_F(Names, DefinitionOfAUseIsItsFile) {
  const auto found = definition(boat, SourceId{0}, at("parts.rig") + 2);
  ASSERT_TRUE(found);
  EXPECT_EQ(boat.text(found->to.source).name(), "parts.rig");
  EXPECT_EQ(found->to.begin, 0u);
  EXPECT_FALSE(definition(boat, SourceId{0}, at("length")));
}

TEST_F(Names, ReferencesOfAllFiles) {
  const std::vector<Span> all = references(boat, SourceId{0}, at("toggle-9 {"), true);
  ASSERT_EQ(all.size(), 3u);
  EXPECT_EQ(boat.text(all[0].source).name(), "boat.rig");
  EXPECT_EQ(boat.text(all[2].source).name(), "parts.rig");
  EXPECT_EQ(references(boat, SourceId{0}, at("toggle-9 {"), false).size(), 2u);
  EXPECT_EQ(references(boat, SourceId{0}, at("forestay"), true).size(), 2u);
}

TEST_F(Names, RenameWritesAllPlacesOfAllFiles) {
  const Renaming done = rename(boat, texts.texts, {}, SourceId{0}, at("toggle-9 {"), "toggle-10");
  EXPECT_EQ(done.refused, "");
  EXPECT_EQ(done.edits.size(), 3u);
  const std::string now = with_edits("boat.rig", boat_text, done.edits);
  EXPECT_THAT(now, HasSubstr("toggle b from toggle-10 {"));
  EXPECT_THAT(now, HasSubstr("2 x toggle-10\n"));
  EXPECT_THAT(with_edits("parts.rig", parts_text, done.edits), HasSubstr("toggle toggle-10 \"Small\""));
}

TEST_F(Names, RenameThereAndBackIsTheSameText) {
  const Renaming there = rename(boat, texts.texts, {}, SourceId{0}, at("gap"), "wide-gap");
  ASSERT_EQ(there.edits.size(), 2u);
  test::BoatTexts after;
  after.put("boat.rig", with_edits("boat.rig", boat_text, there.edits));
  after.put("parts.rig", parts_text);
  const OpenBoat renamed = after.read();
  const Renaming back = rename(renamed, after.texts, {}, SourceId{0}, at("gap") + 2, "gap");
  EXPECT_EQ(with_edits("boat.rig", *after.texts.find("boat.rig"), back.edits), boat_text);
}

TEST_F(Names, RenameRefusesWhatWouldMeanSomethingElse) {
  const auto refused = [&](const std::string& name) {
    const Renaming done = rename(boat, texts.texts, {}, SourceId{0}, at("toggle-9 {"), name);
    EXPECT_THAT(done.edits, IsEmpty()) << name;
    return done.refused;
  };
  EXPECT_EQ(refused("forestay"), "`forestay` is declared already");
  EXPECT_THAT(refused("two words"), HasSubstr("is no name"));
  EXPECT_THAT(refused("9-toggle"), HasSubstr("is no name"));
  EXPECT_THAT(refused(""), HasSubstr("is no name"));
  EXPECT_THAT(refused("a = 1\nlet b"), HasSubstr("is no name"));
  EXPECT_THAT(refused("cap_tang"), HasSubstr("is no name"));
  // In a stack `line` is the line of the stay.
  EXPECT_THAT(refused("line"), HasSubstr("would be read as something else"));
  const Renaming nothing = rename(boat, texts.texts, {}, SourceId{0}, at("length"), "a");
  EXPECT_THAT(nothing.refused, HasSubstr("no name of a rig file"));
}

TEST_F(Names, RenamableIsANameOfTheFiles) {
  const auto found = renamable(boat, SourceId{0}, at("toggle-9 {") + 8);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->name, "toggle-9");
  EXPECT_FALSE(renamable(boat, SourceId{0}, at("length")));
}

TEST_F(Names, HoverSaysHowItIsDeclared) {
  const auto found = hover(boat, SourceId{0}, at("toggle-9 {"));
  ASSERT_TRUE(found);
  EXPECT_EQ(found->code, "toggle toggle-9 \"Small\"");
  EXPECT_THAT(found->lines, testing::Contains("parts.rig"));
  const auto let = hover(boat, SourceId{0}, at("gap * 2"));
  ASSERT_TRUE(let);
  EXPECT_EQ(let->code, "let gap = 4 mm");
}

TEST_F(Names, HoverOfAPropertyAndAUnit) {
  const auto property = hover(boat, SourceId{0}, at("length"));
  ASSERT_TRUE(property);
  EXPECT_THAT(property->code, HasSubstr("length: "));
  const auto unit = hover(boat, SourceId{0}, at("mm\ntoggle"));
  ASSERT_TRUE(unit);
  EXPECT_THAT(unit->lines, testing::Contains("millimetre"));
  EXPECT_THAT(markdown(*unit), HasSubstr("```rig\nmm\n```\n\nmillimetre"));
  EXPECT_FALSE(hover(boat, SourceId{0}, at("\u00e9")));
}

TEST(Hover, OfAStaySaysItsLengths) {
  test::BoatTexts texts(test::small_boat);
  const OpenBoat boat = texts.read();
  ASSERT_FALSE(boat.compiled.has_errors);
  const auto found =
      hover(boat, SourceId{0}, static_cast<std::uint32_t>(test::small_boat.find("cap-shroud")));
  ASSERT_TRUE(found);
  // The way from (0, 0.1, 10) to (0, 1.4, 1) m, and less 82 + 350 + 82 mm.
  EXPECT_THAT(found->lines, testing::Contains("cap-shroud.port: pin-to-pin 9093.4 mm, body 8579.4 mm"));
}

} // namespace
} // namespace sheerpole::names_test
