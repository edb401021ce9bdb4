#include "service/outline.hpp"

#include "service/findings.hpp"
#include "service/inlay.hpp"
#include "service/tokens.hpp"
#include "unit/service/boat_texts.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <string>
#include <vector>

namespace sheerpole::outline_test {
namespace {

using namespace service;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

TEST(Outline, HasAllThatAFileStates) {
  test::BoatTexts texts(
      "language 1\nuse \"parts.rig\"\nlet a = 1 mm\npoints {\n  b \"Bow\": (0, 0, 0) m\n}\n"
      "stay c.port \"Cap\" {\n  stack {\n  }\n}\nreading of c {\n}\nexpect c.body = 1 m\n");
  const OpenBoat boat = texts.read();
  std::vector<std::string> lines;
  for (const OutlineItem& item : outline(boat, SourceId{0}))
    lines.push_back(std::string(name_of(item.sort)) + " " + item.name + " / " + item.detail);
  EXPECT_THAT(lines, ElementsAre("file parts.rig / use", "let a / let", "declaration points / ",
                                 "declaration c.port / stay \"Cap\"", "declaration reading of c / ",
                                 "expectation c / expect"));
  const std::vector<OutlineItem> items = outline(boat, SourceId{0});
  ASSERT_EQ(items[2].inside.size(), 1u);
  EXPECT_EQ(items[2].inside[0].name, "b");
  ASSERT_EQ(items[3].inside.size(), 1u);
  EXPECT_EQ(items[3].inside[0].sort, OutlineSort::block);
}

TEST(Outline, NamesLieInsideTheWhole) {
  test::BoatTexts texts(test::small_boat + "stay {\ntoggle\nlet\nuse\nexpect\nboat \"B");
  const OpenBoat boat = texts.read();
  for (const OutlineItem& item : outline(boat, SourceId{0})) {
    EXPECT_LE(item.span.begin, item.name_span.begin);
    EXPECT_GE(item.span.end, item.name_span.end);
  }
}

TEST(Folds, BlocksCommentsAndUses) {
  const SourceText text(
      SourceId{0}, "boat.rig",
      "language 1\nuse \"a\"\nuse \"b\"\n# one\n# two\n\n# three\nstay a { # four\n  stack "
      "{\n  }\n}\npoints { }\n");
  std::vector<std::string> lines;
  for (const Fold& fold : folds(text))
    lines.push_back(std::to_string(fold.first) + "-" + std::to_string(fold.last));
  EXPECT_THAT(lines, ElementsAre("1-2", "3-4", "7-10", "8-9"));
}

TEST(Findings, StandWithTheirFiles) {
  test::BoatTexts texts("language 1\nuse \"parts.rig\"\nuse \"gone.rig\"\n");
  texts.put("parts.rig", "language 1\nlet a = 1 mmm\n");
  const OpenBoat boat = texts.read();
  const std::vector<FileFindings> files = findings_by_file(boat);
  ASSERT_EQ(files.size(), 2u);
  EXPECT_EQ(files[0].file, "boat.rig");
  ASSERT_EQ(files[0].findings.size(), 1u);
  EXPECT_EQ(files[0].findings[0]->slug, "file-not-found");
}

TEST(Findings, OfAFileThatIsNotThere) {
  test::BoatTexts texts;
  const OpenBoat boat = texts.read();
  const std::vector<FileFindings> files = findings_by_file(boat);
  ASSERT_EQ(files.size(), 1u);
  EXPECT_FALSE(files[0].was_read);
  EXPECT_EQ(files[0].findings.size(), 1u);
}

TEST(Actions, AreOfferedWhereTheFindingStands) {
  const std::string text = "language 1\nlet a = 12 mmm\nlet b = 3 m;\n";
  test::BoatTexts texts("\xEF\xBB\xBF" + text);
  const OpenBoat boat = texts.read();
  const auto at = static_cast<std::uint32_t>(text.find(';'));
  const std::vector<Action> offered = actions(boat, {SourceId{0}, at, at});
  ASSERT_EQ(offered.size(), 1u);
  EXPECT_TRUE(offered[0].certain);
  const std::string marked = "\xEF\xBB\xBF" + text;
  EXPECT_EQ(with_edits("boat.rig", marked, offered[0].edits),
            "\xEF\xBB\xBFlanguage 1\nlet a = 12 mmm\nlet b = 3 m\n");
  const std::vector<Action> all = mend_all(boat, texts.texts);
  ASSERT_EQ(all.size(), 1u);
  EXPECT_EQ(all[0].finding, nullptr);
  EXPECT_EQ(with_edits("boat.rig", marked, all[0].edits),
            "\xEF\xBB\xBFlanguage 1\nlet a = 12 mmm\nlet b = 3 m\n");
  EXPECT_THAT(actions(boat, {SourceId{0}, 0, 0}), IsEmpty());
}

TEST(Format, IsOneEditOrNone) {
  const SourceText text(SourceId{0}, "a.rig", "language 1\nlet   a=1 mm\nlet b = 2 mm\n", true);
  const auto edits = format(text);
  ASSERT_TRUE(edits);
  ASSERT_EQ(edits->size(), 1u);
  EXPECT_EQ(with_edits("a.rig", text.file_bytes(), *edits),
            "\xEF\xBB\xBFlanguage 1\nlet a = 1 mm\nlet b = 2 mm\n");
  const SourceText tidy(SourceId{0}, "a.rig", "language 1\nlet a = 1 mm\n");
  EXPECT_THAT(*format(tidy), IsEmpty());
  EXPECT_FALSE(format(SourceText(SourceId{0}, "a.rig", "stay {{{ (")));
}

TEST(Inlays, SayBodyAndTakeUp) {
  test::BoatTexts texts(test::small_boat);
  const OpenBoat boat = texts.read();
  std::vector<std::string> lines;
  for (const Inlay& inlay : inlays(boat, SourceId{0}))
    lines.push_back(std::string(boat.text(SourceId{0}).text(inlay.behind)) + " -> " + inlay.words);
  EXPECT_THAT(lines,
              ElementsAre("cap-shroud -> body 8579.4 mm", "screw-12 -> tightens 50 mm, slackens 50 mm"));
  test::BoatTexts broken(test::small_boat + "stay {");
  EXPECT_THAT(inlays(broken.read(), SourceId{0}), IsEmpty());
}

TEST(Tokens, TellNamesByWhatTheyStandFor) {
  test::BoatTexts texts(test::small_boat);
  const OpenBoat boat = texts.read();
  std::vector<std::string> found;
  for (const Token& token : tokens(boat, SourceId{0}))
    found.push_back(std::string(lsp_name(token.sort)) + " " +
                    std::string(boat.text(SourceId{0}).text(token.span)));
  EXPECT_THAT(found,
              testing::IsSupersetOf({"keyword language", "type points", "parameter cap-tang",
                                     "string \"Cap tang\"", "keyword mirrored", "modifier drawn",
                                     "type stay", "class cap-shroud", "property path", "operator >",
                                     "number 82", "macro mm", "enumMember port", "class toggle-12"}));
}

TEST(Tokens, StandInTheirOrderInAnyText) {
  test::BoatTexts texts(test::small_boat + "stay ( { \"x\n # \u00e9 } ] 1 2 \u20ac let = = jaw\n");
  const OpenBoat boat = texts.read();
  std::uint32_t last = 0;
  for (const Token& token : tokens(boat, SourceId{0})) {
    EXPECT_GE(token.span.begin, last);
    EXPECT_GT(token.span.end, token.span.begin);
    last = token.span.end;
  }
}

} // namespace
} // namespace sheerpole::outline_test
