#include "plugins/emergency-splice-card/emergency_splice_card.hpp"
#include "plugins/kit-list/kit_list.hpp"

#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace sheerpole::kit_list_test {
namespace {

using testing::HasSubstr;

const KitItem& item_with(const std::vector<KitItem>& kit, const std::string& words) {
  const auto found =
      std::find_if(kit.begin(), kit.end(), [&](const KitItem& one) { return one.what.find(words) == 0; });
  EXPECT_NE(found, kit.end()) << words;
  return *found;
}

class KitLists : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, KitLists,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow",
                                         "quillwort"));

TEST_P(KitLists, HaveEachThingThatIsOrderedOnce) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  const auto kit = kit_of_rig(*boat.checked);
  for (const OrderItem& item : order_items(*boat.checked))
    EXPECT_GE(std::count_if(kit.begin(), kit.end(),
                            [&](const KitItem& one) { return one.what.find(item.name) == 0; }),
              1)
        << item.name;
}

TEST_P(KitLists, AreWellSetOnBothSheets) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_well_set(
        KitList().pages({.checked = *boat.checked, .paper = size}, boat.checked->rig().boat.title));
}

// The emergency card says what is carried of each rope and wire; packed by this list it is there.
TEST_P(KitLists, TakeWhatTheEmergencyCardIsMadeFrom) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  const auto kit = kit_of_rig(*boat.checked);
  for (const SpareLine& spare : spare_lines(*boat.checked))
    if (spare.about_to_carry && spare.not_compared.empty()) {
      const std::string& amount = item_with(kit, spare.longest.line->name + ",").amount;
      EXPECT_GE(std::stod(amount), spare.about_to_carry->metres() - 1e-6) << spare.longest.line->name;
    }
}

TEST(KitList, TakesACordAndATapeAsLongAsTheLongestStay) {
  const Compilation pellimoor = test::example_with("pellimoor", "");
  ASSERT_TRUE(pellimoor.checked);
  EXPECT_EQ(item_with(kit_of_rig(*pellimoor.checked), "messenger cord").amount,
            "about 15.6 m"); // with a metre to tie
  EXPECT_EQ(item_with(kit_of_tools(*pellimoor.checked), "tape").amount, "about 14.6 m");
  const Compilation quillwort = test::example_with("quillwort", ""); // all by the cord
  ASSERT_TRUE(quillwort.checked);
  EXPECT_EQ(item_with(kit_of_rig(*quillwort.checked), "messenger cord").amount,
            "as long as the longest stay");
}

TEST(KitList, HasAToolForEachLine) {
  const Compilation boat = test::example_with("grisolde", "");
  ASSERT_TRUE(boat.checked);
  const auto tools = kit_of_tools(*boat.checked);
  EXPECT_THAT(item_with(tools, "cutter").what, HasSubstr("1x19"));
  EXPECT_THAT(item_with(tools, "fid").why, HasSubstr("hmpe"));
}

TEST(KitList, HoldsNamesOfManyAlphabetsAndARigWithoutStays) {
  for (const std::string& text : {test::forty_pairs(), std::string("language 1\nboat \"Bare\" { }\n")}) {
    const Compilation boat = test::compiled(text);
    ASSERT_TRUE(boat.checked);
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
      expect_well_set(KitList().pages({.checked = *boat.checked, .paper = size}, "Bare"));
  }
}

} // namespace
} // namespace sheerpole::kit_list_test
