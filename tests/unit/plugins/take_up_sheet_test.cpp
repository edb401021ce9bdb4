#include "plugins/take-up/take_up_sheet.hpp"
#include "unit/backend/csv_reader.hpp"
#include "unit/backend/measured_shroud.hpp"

#include <gmock/gmock.h>

namespace sheerpole::take_up_sheet_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

std::string text_of(const SampleRig& sample) {
  return TakeUpSheet().generate({sample.checked()}).files.at(0).bytes;
}

TEST(TakeUpSheet, DrawsTheAccountUpToEachDate) {
  EXPECT_THAT(text_of(measured_shroud()), HasSubstr(R"(
                               to tighten  to slacken   how
  as set                            100.0       100.0
  bedding-in                        -20.0               0.2 % of 10000 mm
  creep in 1 year                    -1.0               by the table
  creep in 5 years                   -4.0               as above
  coldest day                        -6.0
  warmest day                                    -5.0
  uncertainty of the length          -7.3        -7.3
  = left after 1 year                65.7        87.7
  = left after 5 years               62.7        87.7
)"));
}

// A pair of 1/2-20 UNF studs moves 2 x 25.4 / 20 = 2.54 mm a turn: 100 / 2.54 = 39.4, 65.7 / 2.54 = 25.9.
TEST(TakeUpSheet, CountsTurnsWhereThereIsAScrew) {
  SampleRig sample = measured_shroud();
  sample.derived.stays[0].adjusters[0].travel_per_turn = Length::millimetres(2.54);
  const std::string text = text_of(sample);
  EXPECT_THAT(text, HasSubstr("as set                            100.0   39.4       100.0   39.4\n"));
  EXPECT_THAT(text, HasSubstr("= left after 1 year                65.7   25.9        87.7   34.5\n"));
}

TEST(TakeUpSheet, SaysWhatIsNotCheckedAndWhatIsSpent) {
  SampleRig sample = measured_shroud();
  Account& account = sample.derived.stays[0].account;
  account.entries[0].tightens = Length::millimetres(90.0);
  account.entries[3].tightens = {};
  account.entries[3].not_checked = SampleRig::saying("none of its points is on a spar");
  account.left[0].complete = false;
  const std::string text = text_of(sample);
  EXPECT_THAT(text,
              HasSubstr("coldest day                  not checked: none of its points is on a spar\n"));
  // 100 - 90 - 1 - 7.3 = 1.7; with 4 of creep -1.3
  EXPECT_THAT(text, HasSubstr("= left after 1 year                 1.7        87.7   INCOMPLETE\n"));
  EXPECT_THAT(
      text,
      HasSubstr("= left after 5 years               -1.3        87.7   SPENT: cannot tighten that far"));
}

// Slack 2.4 + 4.8 = 7.2 of 100 to tighten; -1.9 - 3.8 = -5.7 of 100 to slacken.
TEST(TakeUpSheet, ShowsSlackByTemperature) {
  const std::string text = text_of(measured_shroud());
  EXPECT_THAT(text, HasSubstr("   -10     +2.4     -4.8      +7.2           7.2 %\n"));
  EXPECT_THAT(text, HasSubstr("    40     -1.9     +3.8      -5.7           5.7 %\n"));
}

// 2 x 24 + 160 = 208.
TEST(TakeUpSheet, ProposesPartsOrSaysByHowMuchNoneFits) {
  const std::string text = text_of(measured_shroud());
  EXPECT_THAT(text, HasSubstr("line of 11350.0 mm: fill 208.0 mm with parts and lashing-4"));
  EXPECT_THAT(text, HasSubstr("1. add 2 x link-24, set lashing-4 to 160.0 mm (50 % open)\n"));
  EXPECT_THAT(text, HasSubstr("none fits with the parts in hand: the nearest is 202.0 mm too long\n"));
}

TEST(TakeUpSheet, HasNothingToSetWithoutAnAdjuster) {
  SampleRig sample;
  sample.add_unknown_stay(20.0);
  EXPECT_THAT(text_of(sample), HasSubstr("This stay has nothing to set."));
}

TEST(TakeUpSheet, IsATableForPrograms) {
  const OutputBundle bundle = TakeUpSheet().generate({measured_shroud().checked()});
  EXPECT_EQ(bundle.files.at(1).name, "take-up.csv");
  const auto records = read_csv(bundle.files.at(1).bytes);
  EXPECT_THAT(records.at(0), ElementsAre("stay", "entry", "to tighten mm", "tighten turns", "to slacken mm",
                                         "slacken turns", "how"));
  EXPECT_THAT(records.at(2),
              ElementsAre("cap-shroud.port", "bedding-in", "-20.0", "", "", "", "0.2 % of 10000 mm"));
  EXPECT_THAT(records.at(8),
              ElementsAre("cap-shroud.port", "left after 1 year", "65.7", "", "87.7", "", ""));
}

} // namespace
} // namespace sheerpole::take_up_sheet_test
