#include "backend/printed_sums.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gmock/gmock.h>

namespace sheerpole::piece_sum_test {
namespace {

PieceSum first_sum(const SampleRig& sample) {
  const DerivedStay& stay = sample.derived.stays.front();
  return piece_sum(sample.rig, stay, stay.pieces.front());
}

TEST(PieceSum, RunsFromThePinsToTheCut) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  const PieceSum sum = first_sum(sample);
  ASSERT_EQ(sum.sections.size(), 3u);
  EXPECT_EQ(format_tenths(sum.section(SumSection::Kind::pin_to_pin).total), "11642.0");
  EXPECT_EQ(format_tenths(sum.body()), "11382.0");
  EXPECT_EQ(sum.section(SumSection::Kind::body).rows.size(), 4u);
  EXPECT_EQ(sum.section(SumSection::Kind::cut).rows.size(), 6u);
  EXPECT_TRUE(sum.body_complete);
  EXPECT_TRUE(sum.cut_complete);
}

// 11382 + 2 x (108 + 648 + 51.8) = 12997.6 by the printed rows, though 2 x 51.84 would make 12997.68.
TEST(PieceSum, AddsWhatIsPrinted) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  const PieceSum sum = first_sum(sample);
  EXPECT_EQ(format_tenths(sum.cut()), "12997.6");
  EXPECT_NEAR(sum.section(SumSection::Kind::cut).exact.millimetres(), 12997.68, 1e-6);
}

TEST(PieceSum, CarriesRoundedSegmentsIntoBodyAndCut) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  // Three segments of 100.04 mm: printed 100.0 each, 300.0 together, though 300.12 is nearer to 300.1.
  DerivedStay& stay = sample.derived.stays.front();
  const Term segment = SampleRig::term(TermKind::leg, 100.04, SampleRig::known(SourceClass::computed));
  stay.pin_to_pin.terms = {segment, segment, segment};
  stay.pieces.front().body.terms.front().amount = Length::millimetres(300.12);
  EXPECT_EQ(format_tenths(first_sum(sample).section(SumSection::Kind::pin_to_pin).total), "300.0");
  EXPECT_EQ(format_tenths(first_sum(sample).body()), "40.0");
}

// The rows of the forestay there come to 12 500.1; a piece of 12 500 mm is in hand and all of it is used.
TEST(PieceSum, ComesToWhatIsInHand) {
  DiskFileReader reader;
  const Compilation boat = compile(std::string(SHEERPOLE_GOLDEN_DIR) + "/inputs/in-hand.rig", reader);
  ASSERT_TRUE(boat.checked);
  for (const DerivedStay& stay : boat.derived->stays) {
    const Piece& piece = stay.pieces.front();
    if (!piece.in_hand || piece.in_hand->beyond)
      continue;
    const PieceSum sum = piece_sum(*boat.rig, stay, piece);
    EXPECT_EQ(format_tenths(sum.cut()), "12500.0");
    EXPECT_EQ(sum.cut() + Tenths::of(piece.in_hand->cut_away), Tenths::of(piece.in_hand->stated.value));
    Tenths rows = sum.body();
    for (const SumRow& row : sum.section(SumSection::Kind::cut).rows)
      rows += row.amount;
    EXPECT_EQ(rows, sum.cut());
    EXPECT_EQ(sum.section(SumSection::Kind::cut).rows.back().term->kind, TermKind::rounding);
    EXPECT_EQ(printed_dry_fit(sum), sum.body()); // it hangs as long as its body
    return;
  }
  FAIL() << "no piece that is made of a length in hand";
}

TEST(PieceSum, KeepsTheUnknownApart) {
  SampleRig sample;
  sample.add_unknown_stay(20.0);
  const PieceSum sum = first_sum(sample);
  EXPECT_TRUE(sum.unknown);
  EXPECT_EQ(format_total(sum.unknown, sum.section(SumSection::Kind::pin_to_pin).total), "X - 20.0");
  EXPECT_EQ(format_total(sum.unknown, sum.body()), "X - 20.0");
  EXPECT_EQ(format_total(sum.unknown, sum.cut()), "X + 32.0");
}

TEST(PieceSum, HasNoPinsForALineWithALengthOfItsOwn) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  Piece& piece = sample.derived.stays.front().pieces.front();
  piece.body = SampleRig::sum(SumKind::body, {SampleRig::term(TermKind::line_as_stated, 455.0,
                                                              SampleRig::known(SourceClass::drawn))});
  const PieceSum sum = first_sum(sample);
  EXPECT_EQ(name_of(sum.sections.front().kind), "body");
  EXPECT_EQ(format_tenths(sum.body()), "455.0");
}

TEST(PieceSum, SaysWhatIsIncomplete) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  sample.derived.stays.front().pieces.front().missing.push_back(
      {SampleRig::saying("wrap of thimble-9"), SampleRig::saying("wrap it"), {}});
  EXPECT_TRUE(first_sum(sample).body_complete);
  EXPECT_FALSE(first_sum(sample).cut_complete);
  sample.rig.parts[1].length.reset();
  EXPECT_FALSE(first_sum(sample).body_complete);
}

// 1003.3 mm is 39 1/2 in exactly, since an inch is 25.4 mm: 3' 3 1/2".
TEST(PieceSum, WritesTotalsInBothSystems) {
  EXPECT_EQ(format_total(true, {10033}), "X + 1003.3");
  EXPECT_EQ(format_total_feet_inches(true, {10033}), "X + 3' 3 1/2\"");
  EXPECT_EQ(format_total_feet_inches(true, {-6096}), "X - 2' 0\"");
  EXPECT_EQ(format_total(true, {0}), "X");
  EXPECT_EQ(format_total_feet_inches(false, {10033}), "3' 3 1/2\"");
}

} // namespace
} // namespace sheerpole::piece_sum_test
