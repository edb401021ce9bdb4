#include "plugins/cut-list/cut_list.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::cut_list_block_test {
namespace {

SampleRig pair(double difference_mm, double tolerance_mm) {
  SampleRig sample;
  sample.rig.boat.pair_tolerance = SampleRig::length(tolerance_mm, SourceClass::practice);
  sample.add_cap_shroud(Side::port);
  sample.add_cap_shroud(Side::starboard, 11642.0 + difference_mm);
  return sample;
}

std::size_t blocks(const SampleRig& sample) {
  return cut_list_blocks(sample.checked()).size();
}

TEST(CutListBlock, JoinsAPairUpToTheVeryTolerance) {
  EXPECT_EQ(blocks(pair(0.0, 0.0)), 1u);
  EXPECT_EQ(blocks(pair(1.0, 1.0)), 1u);
  EXPECT_EQ(blocks(pair(-1.0, 1.0)), 1u);
  EXPECT_EQ(blocks(pair(1.001, 1.0)), 2u);
}

TEST(CutListBlock, LooksAtBodyAndCut) {
  SampleRig sample = pair(2.0, 1.0);
  // The cut of starboard made equal: the bodies still differ by 2 mm.
  sample.derived.stays[1].pieces[0].cut.terms[0].amount = Length::millimetres(11382.0);
  EXPECT_EQ(blocks(sample), 2u);
  sample = pair(0.0, 1.0);
  sample.derived.stays[1].pieces[0].cut.terms[2].amount = Length::millimetres(650.0);
  EXPECT_EQ(blocks(sample), 2u);
}

TEST(CutListBlock, DoesNotJoinWithoutAToleranceOrOtherLineOrEnds) {
  SampleRig sample = pair(0.0, 1.0);
  sample.rig.boat.pair_tolerance.reset();
  EXPECT_EQ(blocks(sample), 2u);
  sample = pair(0.0, 1.0);
  sample.derived.stays[1].pieces[0].material = MaterialId{1};
  EXPECT_EQ(blocks(sample), 2u);
  sample = pair(0.0, 1.0);
  sample.derived.stays[1].pieces[0].lower.splice.reset();
  EXPECT_EQ(blocks(sample), 2u);
  sample = pair(0.0, 1.0);
  sample.derived.stays[1].pieces[0].missing.push_back(
      {SampleRig::saying("wrap"), SampleRig::saying("measure it"), {}});
  EXPECT_EQ(blocks(sample), 2u);
}

TEST(CutListBlock, IsADraftWhenEitherSideIs) {
  SampleRig sample = pair(0.0, 1.0);
  sample.derived.stays[1].pieces[0].body.terms[1].provenance.assumptions = {"length of thimble-9"};
  const CheckedRig checked = sample.checked();
  const std::vector<CutListBlock> all = cut_list_blocks(checked);
  ASSERT_EQ(all.size(), 1u);
  EXPECT_TRUE(all.front().draft());
  EXPECT_FALSE(all.front().same_rows); // the sums say different things of their sources
}

TEST(CutListBlock, TotalsEachLineOverWhatIsPrinted) {
  SampleRig sample = pair(0.4, 1.0);
  sample.add_unknown_stay(0.0);
  sample.derived.stays[0].pieces[0].body.terms[1].provenance.assumptions = {"length of thimble-9"};
  const CheckedRig checked = sample.checked();
  const std::vector<CutListBlock> all = cut_list_blocks(checked);
  const std::vector<LineTotal> totals = line_totals(checked, all);
  ASSERT_EQ(totals.size(), 2u);
  EXPECT_EQ(totals[0].pieces, 2);
  EXPECT_EQ(totals[0].drafts, 1);
  EXPECT_EQ(format_tenths(totals[0].length), "25995.6"); // 12997.6 + 12998.0
  EXPECT_EQ(totals[1].pieces, 0);
  EXPECT_EQ(totals[1].not_summed.at(0)->piece->name, "forestay");
}

// Both lengths are the same, one is known better: each side prints its own range.
TEST(CutListBlocks, PrintApartWhenTheirRangesDiffer) {
  SampleRig sample;
  sample.rig.boat.pair_tolerance = SampleRig::length(1.0, SourceClass::practice);
  sample.add_cap_shroud(Side::port);
  sample.add_cap_shroud(Side::starboard);
  Uncertainty known;
  known.expanded = Length::millimetres(7.3);
  sample.derived.stays[0].uncertainty = known;
  sample.derived.stays[1].uncertainty = known;
  EXPECT_TRUE(cut_list_blocks(sample.checked()).at(0).same_rows);
  sample.derived.stays[1].uncertainty->expanded = Length::millimetres(7.4);
  EXPECT_FALSE(cut_list_blocks(sample.checked()).at(0).same_rows);
  sample.derived.stays[1].uncertainty.reset();
  EXPECT_FALSE(cut_list_blocks(sample.checked()).at(0).same_rows);
}

} // namespace
} // namespace sheerpole::cut_list_block_test
