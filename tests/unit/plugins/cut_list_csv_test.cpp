#include "plugins/cut-list/cut_list.hpp"
#include "unit/backend/csv_reader.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gmock/gmock.h>

namespace sheerpole::cut_list_csv_test {
namespace {

using testing::ElementsAre;

using Records = std::vector<std::vector<std::string>>;

Records records_of(const SampleRig& sample) {
  return read_csv(CutList().generate({sample.checked()}).files.at(1).bytes);
}

TEST(CutListCsv, IsOneFlatTable) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  sample.piece(port).cut.terms[3].provenance.assumptions = {"a", "b"};
  const Records records = records_of(sample);
  EXPECT_THAT(records.at(0),
              ElementsAre("piece", "number_off", "line", "size", "quantity", "term", "amount_mm", "plus_x",
                          "complete", "how", "source", "source_note", "written", "rests_on_assumed",
                          "draft", "from_below_mm", "from_below_plus_x", "known_to_95_mm", "worst_low_mm",
                          "worst_high_mm", "state"));
  ASSERT_EQ(records.size(), 15u); // headings, 11 terms, 3 totals
  EXPECT_THAT(records.at(5), ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "term",
                                         "lashing-4, gap 160 mm", "-160.0", "no", "yes", "", "drawn", "",
                                         "", "", "yes", "", "", "", "", "", "not yet"));
  EXPECT_THAT(records.at(7),
              ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "body", "", "11382.0", "no", "yes", "",
                          "", "", "", "", "yes", "", "", "", "", "", "not yet"));
  EXPECT_THAT(records.at(10),
              ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "term", "contraction aloft", "51.8",
                          "no", "yes", "8 % of 648 mm", "measured", "", "8 %", "a; b", "yes", "", "", "",
                          "", "", "not yet"));
  EXPECT_THAT(records.at(14),
              ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "cut", "", "12997.6", "no", "yes", "",
                          "", "", "", "", "yes", "", "", "", "", "", "not yet"));
}

TEST(CutListCsv, JoinsAnEqualPairAndNoOther) {
  SampleRig sample;
  sample.rig.boat.pair_tolerance = SampleRig::length(1.0, SourceClass::practice);
  sample.add_cap_shroud(Side::port);
  const StayId starboard = sample.add_cap_shroud(Side::starboard);
  EXPECT_EQ(records_of(sample).size(), 15u);
  EXPECT_EQ(records_of(sample).at(1).at(0), "cap-shroud.port + cap-shroud.starboard");
  EXPECT_EQ(records_of(sample).at(1).at(1), "2");
  sample.piece(starboard).cut.terms[1].amount = Length::millimetres(108.2);
  EXPECT_EQ(records_of(sample).size(), 29u);
  EXPECT_EQ(records_of(sample).at(15).at(0), "cap-shroud.starboard");
  EXPECT_EQ(records_of(sample).at(15).at(1), "1");
}

TEST(CutListCsv, MarksTheUnknown) {
  SampleRig sample;
  sample.add_unknown_stay(20.0);
  const Records records = records_of(sample);
  EXPECT_THAT(records.at(1), ElementsAre("forestay", "1", "wire-6", "6 mm", "term", "X", "0.0", "yes",
                                         "yes", "", "measured", "mark on the messenger: red whipping", "",
                                         "", "no", "", "", "", "", "", "ready"));
  EXPECT_THAT(records.at(6), ElementsAre("forestay", "1", "wire-6", "6 mm", "cut", "", "32.0", "yes", "yes",
                                         "", "", "", "", "", "no", "", "", "", "", "", "ready"));
}

TEST(CutListCsv, SaysWhichTotalLacksSomething) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  sample.piece(port).missing = {{SampleRig::saying("contraction"), SampleRig::saying("measure"), {}}};
  const Records records = records_of(sample);
  EXPECT_EQ(records.at(7).at(8), "yes");
  EXPECT_EQ(records.at(14).at(8), "no");
}

// 12997.6 as printed less 756.0 leaves 12241.6, whatever 12241.68 would print; and the dry fit is what the
// printed rows come to, whatever the mark itself holds.
TEST(CutListCsv, HoldsMarksRangeAndWhatIsLeftOut) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  Piece& piece = sample.piece(port);
  piece.bench.marks = {{MarkKind::throat_on_tail,
                        WhichEnd::upper,
                        {false, Length::millimetres(756.0)},
                        {false, Length::millimetres(12241.68)}}};
  piece.bench.dry_fit = MarkPlace{false, Length::millimetres(11500.0)};
  piece.bench.not_known = {SampleRig::saying("throat below: the seat is not stated")};
  piece.not_counted = {SampleRig::saying("stretch: dock-tension is not stated")};
  Uncertainty known;
  known.expanded = Length::millimetres(7.3);
  known.worst_low = Length::millimetres(-13.34);
  known.worst_high = Length::millimetres(13.2);
  sample.derived.stays[0].uncertainty = known;
  const Records records = records_of(sample);
  ASSERT_EQ(records.size(), 19u);
  EXPECT_THAT(records.at(14),
              ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "cut", "", "12997.6", "no", "yes", "",
                          "", "", "", "", "no", "", "", "7.3", "-13.3", "13.2", "ready"));
  EXPECT_THAT(records.at(15), ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "mark",
                                          "throat aloft, on the tail", "756.0", "no", "yes", "", "", "", "",
                                          "", "no", "12241.6", "no", "", "", "", "ready"));
  EXPECT_EQ(records.at(16).at(4), "dry-fit");
  EXPECT_EQ(records.at(16).at(6), "11485.6");
  EXPECT_EQ(records.at(17).at(4), "not-marked");
  EXPECT_EQ(records.at(18).at(5), "stretch: dock-tension is not stated");
}

// A line with a length of its own takes nothing of what the stay is off by.
TEST(CutListCsv, GivesTheRangeOnlyToTheLineThatTakesTheRest) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  sample.derived.stays[0].uncertainty = Uncertainty{};
  EXPECT_EQ(records_of(sample).at(14).at(17), "0.0");
  sample.rig.stays[0].stack[2].line_length = SampleRig::length(455.0, SourceClass::drawn);
  EXPECT_EQ(records_of(sample).at(14).at(17), "");
}

} // namespace
} // namespace sheerpole::cut_list_csv_test
