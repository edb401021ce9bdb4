#include "plugins/cut-list/cut_list.hpp"
#include "unit/backend/csv_reader.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gmock/gmock.h>

namespace sheerpole {
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
  EXPECT_THAT(records.at(0), ElementsAre("piece", "number_off", "line", "size", "quantity", "term",
                                         "amount_mm", "plus_x", "complete", "how", "source", "source_note",
                                         "written", "rests_on_assumed", "draft"));
  ASSERT_EQ(records.size(), 15u); // headings, 11 terms, 3 totals
  EXPECT_THAT(records.at(5),
              ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "term", "lashing-4, gap 160 mm",
                          "-160.0", "no", "yes", "", "drawn", "", "", "", "yes"));
  EXPECT_THAT(records.at(7), ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "body", "", "11382.0",
                                         "no", "yes", "", "", "", "", "", "yes"));
  EXPECT_THAT(records.at(10),
              ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "term", "contraction aloft", "51.8",
                          "no", "yes", "8 % of 648 mm", "measured", "", "8 %", "a; b", "yes"));
  EXPECT_THAT(records.at(14), ElementsAre("cap-shroud.port", "1", "hmpe-9", "9 mm", "cut", "", "12997.6",
                                          "no", "yes", "", "", "", "", "", "yes"));
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
  EXPECT_THAT(records.at(1),
              ElementsAre("forestay", "1", "wire-6", "6 mm", "term", "X", "0.0", "yes", "yes", "",
                          "measured", "mark on the messenger: red whipping", "", "", "no"));
  EXPECT_THAT(records.at(6), ElementsAre("forestay", "1", "wire-6", "6 mm", "cut", "", "32.0", "yes", "yes",
                                         "", "", "", "", "", "no"));
}

TEST(CutListCsv, SaysWhichTotalLacksSomething) {
  SampleRig sample;
  const StayId port = sample.add_cap_shroud(Side::port);
  sample.piece(port).missing = {{"contraction", "measure", {}}};
  const Records records = records_of(sample);
  EXPECT_EQ(records.at(7).at(8), "yes");
  EXPECT_EQ(records.at(14).at(8), "no");
}

} // namespace
} // namespace sheerpole
