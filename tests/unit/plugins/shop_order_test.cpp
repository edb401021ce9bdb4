#include "plugins/shop-order/shop_order.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace sheerpole::shop_order_test {
namespace {

using testing::HasSubstr;
using testing::Not;

std::vector<Drawing> pages(const Compilation& boat, PaperSize size = PaperSize::a4) {
  return ShopOrder().pages({.checked = *boat.checked, .paper = size}, boat.checked->rig().boat.title);
}

void add_texts(const ShapeGroup& group, std::string& text) {
  for (const DrawnNode& node : group.children)
    if (const auto* inner = std::get_if<ShapeGroup>(&node.content()))
      add_texts(*inner, text);
    else if (const auto* shape = std::get_if<TextShape>(&node.content()))
      text += shape->text + "\n";
}

/// All that stands on it, a line a text.
std::string words_of(const Compilation& boat) {
  std::string text;
  for (const Drawing& page : pages(boat))
    add_texts(page.content, text);
  return text;
}

class ShopOrders : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, ShopOrders,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow",
                                         "quillwort"));

TEST_P(ShopOrders, GiveEachPieceItsLengthOrNone) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  const std::string words = words_of(boat);
  for (const CardPiece& card : card_pieces(*boat.checked)) {
    if (card.state == PieceState::on_record)
      continue;
    EXPECT_THAT(words, HasSubstr(card.piece->name));
    const CardLength laid{card.body.unknown, card.body.parts + card.behaves.parts};
    const std::string length =
        card.amount_of_stay(laid) + (card.mouth_to_mouth() ? ", from mouth" : ", bearing");
    if (!card.draft() && !card.measure_again()) {
      EXPECT_THAT(words, HasSubstr(length));
    }
    EXPECT_THAT(words, Not(HasSubstr("approved")));
  }
  const auto cards = card_pieces(*boat.checked);
  const bool any_draft = std::any_of(cards.begin(), cards.end(), [](const CardPiece& card) {
    return card.draft() || card.measure_again();
  });
  EXPECT_EQ(words.find("NOT YET") != std::string::npos, any_draft);
}

TEST_P(ShopOrders, AreWellSetOnBothSheets) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_well_set(pages(boat, size));
}

const std::string stays = R"(language 1
boat "Tern" {
  owner: "A. Finch"
  cut-from: drawing
  cut-from-reason: "new rig"
  remake-tolerance: 2 mm
}
rope hmpe-9 {
  construction: "12-strand HMPE"
  size: "9 mm"
  stiffness: 3300 kN maker
}
splice eye {
  bury: 648 mm
  eye-allowance: 108 mm
  contraction: 8 %
}
thimble ring {
  length: 16 mm
}
stay shroud {
  sides: port, starboard
  pin-to-pin: 10 m
  line: hmpe-9
  stack {
    ring (splice: eye)
    line
    ring (splice: eye)
  }
}
)";

TEST(ShopOrder, WhatIsStatedIsNoBlank) {
  const Compilation boat = test::compiled(stays);
  ASSERT_TRUE(boat.checked);
  const std::string words = words_of(boat);
  EXPECT_THAT(words, HasSubstr("A. Finch"));
  EXPECT_THAT(words, HasSubstr("± 2 mm"));
  EXPECT_THAT(words, HasSubstr("2 pieces to make"));
  EXPECT_THAT(words, HasSubstr("pull not given"));
}

// 10 000 less twice 16 is 9968 mm at the dock; 1000 N and 100 N apart over 3300 kN stretch it by 900/3.3e6
// of that, 2.7 mm: on the bench it measures 9965.
TEST(ShopOrder, TheShopMeasuresUnderItsOwnPull) {
  std::string text = stays;
  text.insert(text.find("  line: hmpe-9"), "  dock-tension: 1000 N measured\n  bench-tension: 100 N\n");
  const Compilation boat = test::compiled(text);
  ASSERT_TRUE(boat.checked);
  const std::string words = words_of(boat);
  EXPECT_THAT(words, HasSubstr("9965 mm, bearing to bearing, under 100 N"));
  EXPECT_THAT(words, HasSubstr("9968 mm"));
}

// How large an eye is and at what load it is set are what a shop cannot see from the length.
TEST(ShopOrder, SaysHowLargeTheEyesAreAndAtWhatLoadTheyAreSet) {
  const Compilation boat = test::example_with("oddnys-wager", "");
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  const auto eye = throat_to_throat(cards.front(), WhichEnd::lower);
  ASSERT_TRUE(eye);
  // Between the two marks of the throat as the bench card has them, from the cut end below.
  std::vector<long> throats;
  for (std::size_t i = 0; i < cards.front().marks.size(); ++i)
    if (cards.front().marks[i].end == WhichEnd::lower &&
        cards.front().marks[i].name.find("throat") != std::string::npos)
      throats.push_back(cards.front().marks[i].from_lower.parts);
  ASSERT_EQ(throats.size(), 2u);
  EXPECT_EQ(eye->parts, throats[0] - throats[1]);
  EXPECT_THAT(words_of(boat), HasSubstr("eye " + card_amount({}, *eye) + ","));
  EXPECT_THAT(words_of(boat), HasSubstr("at what load is not stated"));
  // The ropes of this one are DRAFTs for an allowance that is assumed.
  const Compilation draft = test::example_with("grisolde", "");
  ASSERT_TRUE(draft.checked);
  EXPECT_THAT(words_of(draft), Not(HasSubstr("throat to throat")));
  const Compilation tested = test::example_with(
      "oddnys-wager",
      "test-splice of hmpe-11 {\n  date: 2026-05-02\n  bury: 792 mm measured\n  before: 2_000 mm measured\n"
      "  after: 1_951 mm measured\n  setting-load: 14 kN\n}\n");
  ASSERT_TRUE(tested.checked);
  EXPECT_THAT(words_of(tested), HasSubstr("set at 14.0 kN"));
}

TEST(ShopOrder, WhatIsMadeIsNotOrderedAgain) {
  const Compilation boat =
      test::compiled(stays + "piece of shroud.port {\n  stage: cut\n  date: 2026-04-01\n}\n");
  ASSERT_TRUE(boat.checked);
  const std::string words = words_of(boat);
  EXPECT_THAT(words, HasSubstr("1 piece to make"));
  EXPECT_THAT(words, HasSubstr("not part of this order: shroud.port"));
}

TEST(ShopOrder, HoldsNamesOfManyAlphabetsAndARigWithoutStays) {
  for (const std::string& text : {test::forty_pairs(), std::string("language 1\nboat \"Bare\" { }\n")}) {
    const Compilation boat = test::compiled(text);
    ASSERT_TRUE(boat.checked);
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
      expect_well_set(pages(boat, size));
  }
}

} // namespace
} // namespace sheerpole::shop_order_test
