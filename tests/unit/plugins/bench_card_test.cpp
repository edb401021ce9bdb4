#include "plugins/bench-card/bench_card.hpp"

#include "driver/compile.hpp"
#include "plugins/bench-card/card_page.hpp"
#include "plugins/bench-card/card_steps.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "source/file_reader.hpp"
#include "unit/page/page_boxes.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace sheerpole {
namespace {

using testing::HasSubstr;

Compilation example(const std::string& name) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader);
}

class BenchCards : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, BenchCards,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow"));

TEST_P(BenchCards, EveryPieceHasAPageThatIsWellSet) {
  const Compilation compilation = example(GetParam());
  ASSERT_TRUE(compilation.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const CardPiece& card : card_pieces(*compilation.checked)) {
      const auto pages = card_pages(card, "A boat", size);
      EXPECT_EQ(pages.size(), 1u) << card.piece->name << " on " << name_of(size);
      expect_well_set(pages);
    }
}

/// The marks in cut-list.json are made of the same rig by another back end, in tenths of a millimetre.
TEST_P(BenchCards, MarksAreThoseOfTheJsonToTheMillimetreAndAddUp) {
  const Compilation compilation = example(GetParam());
  ASSERT_TRUE(compilation.checked);
  std::map<std::string, Json> pieces;
  Json list;
  for (const OutputFile& file : CutList().generate({*compilation.checked}).files)
    if (file.name == "cut-list.json")
      list = Json::parse(file.bytes);
  for (const Json& piece : list["pieces"])
    pieces[piece["name"]] = piece;
  const auto cards = card_pieces(*compilation.checked);
  ASSERT_EQ(cards.size(), pieces.size());
  for (const CardPiece& card : cards) {
    const Json& marks = pieces[card.piece->name]["bench"]["marks"];
    ASSERT_EQ(marks.size(), card.marks.size()) << card.piece->name;
    for (std::size_t i = 0; i < card.marks.size(); ++i) {
      const CardMark& mark = card.marks[i];
      EXPECT_EQ(mark.from_aloft.millimetres + mark.from_below.millimetres, card.cut.millimetres)
          << card.piece->name << ", " << mark.name;
      EXPECT_EQ(mark.from_aloft.unknown, marks[i]["from_aloft"]["unknown"].get<bool>());
      EXPECT_LE(std::abs(static_cast<double>(mark.from_aloft.millimetres) -
                         marks[i]["from_aloft"]["known_mm"].get<double>()),
                1.0)
          << card.piece->name << ", " << mark.name;
    }
    EXPECT_EQ(card.body.millimetres + card.ends + card.behaves, card.cut.millimetres);
  }
}

TEST(BenchCard, IsADraftJustWhenAnInputIsAssumedOrMissing) {
  const Compilation pellimoor = example("pellimoor");
  EXPECT_THAT(BenchCard().generate({*pellimoor.checked}).files.front().bytes,
              testing::Not(HasSubstr("DRAFT")));
  const Compilation grisolde = example("grisolde");
  const std::string html = BenchCard().generate({*grisolde.checked}).files.front().bytes;
  EXPECT_THAT(html, HasSubstr("DRAFT: do not cut to it. eye-allowance of untested-bury is assumed"));
}

TEST(BenchCard, ANameOutOfMarkupStaysText) {
  DiskFileReader reader;
  Compilation compilation = example("smallest");
  ASSERT_TRUE(compilation.checked);
  Rig rig = compilation.checked->rig();
  rig.boat.title = "<script>alert(1)</script>";
  rig.stays.front().title = "=1+1 & <b>";
  const auto checked = CheckedRig::make(compilation.sources, rig, compilation.checked->derived(), {});
  const std::string html = BenchCard().generate({*checked}).files.front().bytes;
  EXPECT_THAT(html, testing::Not(HasSubstr("<script")));
  EXPECT_THAT(html, testing::Not(HasSubstr("<b>")));
  EXPECT_THAT(html, HasSubstr("=1+1 &amp; &lt;b&gt;"));
}

} // namespace
} // namespace sheerpole
