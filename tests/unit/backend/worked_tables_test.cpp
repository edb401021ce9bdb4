#include "backend/table/rig_tables.hpp"
#include "unit/backend/measured_shroud.hpp"

#include <gmock/gmock.h>

namespace sheerpole::worked_tables_test {
namespace {

using testing::ElementsAre;

std::vector<std::string> row(const Table& table, std::size_t number) {
  return table.rows.at(number);
}

// The dry fit is what the printed rows of the sum come to, whatever the mark itself holds.
TEST(WorkedTables, ShowMarksFromBothEnds) {
  SampleRig sample = measured_shroud();
  Piece& piece = sample.derived.stays[0].pieces[0];
  piece.bench.marks = {{MarkKind::throat_on_tail,
                        WhichEnd::upper,
                        {false, Length::millimetres(756.0)},
                        {false, Length::millimetres(12241.68)}}};
  piece.bench.dry_fit = MarkPlace{true, Length::millimetres(118.0)};
  piece.bench.not_known = {SampleRig::saying("throat below")};
  const Table table = marks_table(sample.checked());
  EXPECT_THAT(row(table, 0),
              ElementsAre("cap-shroud.port", "throat aloft, on the tail", "756.0", "12241.6", ""));
  EXPECT_THAT(row(table, 1), ElementsAre("cap-shroud.port", "dry fit", "X + 11485.6", "", ""));
  EXPECT_THAT(row(table, 2), ElementsAre("cap-shroud.port", "not known", "", "", "throat below"));
}

// 7594.5 + 0.46 - 35 = 7559.96; as printed 7594.5 + 0.5 - 35.0 = 7560.0.
TEST(WorkedTables, ShowWhatBecameOfAReading) {
  SampleRig sample = measured_shroud();
  DerivedStay& stay = sample.derived.stays[0];
  stay.route = LengthRoute::reading;
  stay.pin_to_pin.terms = {
      SampleRig::term(TermKind::runs, 7594.5, SampleRig::known(SourceClass::measured, "tape"), Runs{2},
                      SampleRig::saying("spread 3 mm")),
      SampleRig::term(TermKind::tape_standard, 0.46, SampleRig::known(SourceClass::computed)),
      SampleRig::term(TermKind::hook_offset, -35.0, SampleRig::known(SourceClass::measured))};
  const Table table = readings_table(sample.checked());
  EXPECT_THAT(row(table, 0),
              ElementsAre("cap-shroud.port", "mean of 2 runs", "+7594.5", "spread 3 mm", "measured, tape"));
  EXPECT_THAT(row(table, 3), ElementsAre("cap-shroud.port", "= pin-to-pin", "7560.0", "", ""));
  EXPECT_THAT(row(table, 4), ElementsAre("cap-shroud.port", "not corrected", "",
                                         "tape pull: pull of the reading is not stated", ""));
  EXPECT_THAT(row(table, 5), ElementsAre("cap-shroud.port", "likely slip", "-83.0",
                                         "toggle-12, 82 mm, was left out", "leaves 1.0 mm"));
}

TEST(WorkedTables, ShowHowWellACutIsKnown) {
  SampleRig sample = measured_shroud();
  sample.add_unknown_stay(20.0);
  const Table table = uncertainty_table(sample.checked());
  EXPECT_THAT(row(table, 0), ElementsAre("cap-shroud.port", "-13.3", "+13.2", "3.7", "1.96", "7.3", "-6.8",
                                         "+6.9", "in all of 100 000 draws", "2"));
  EXPECT_EQ(row(table, 1)[8], "not checked: no bound is stated");
}

TEST(WorkedTables, ShowWhatToMeasureNext) {
  const Table table = shares_table(measured_shroud().checked());
  EXPECT_THAT(row(table, 0), ElementsAre("cap-shroud.port", "eye-allowance of long-bury", "86.4 %", "+6.0",
                                         "rectangular"));
  EXPECT_THAT(row(table, 2),
              ElementsAre("cap-shroud.port", "length of thimble-9", "not known", "", "no bound is stated"));
}

TEST(WorkedTables, ShowTheTemperature) {
  SampleRig sample = measured_shroud();
  EXPECT_THAT(row(temperature_table(sample.checked()), 0),
              ElementsAre("cap-shroud.port", "-10", "+2.4", "-4.8", "+7.2", "7.2 %", ""));
  sample.derived.stays[0].thermal = {{}, {SampleRig::saying("thermal of hmpe-9 is not stated")}};
  EXPECT_EQ(row(temperature_table(sample.checked()), 0).back(),
            "not checked: thermal of hmpe-9 is not stated");
}

TEST(WorkedTables, ShowTheAccount) {
  SampleRig sample = measured_shroud();
  AccountEntry& creep = sample.derived.stays[0].account.entries[1];
  creep.tightens = {};
  const Table zero = account_table(sample.checked());
  EXPECT_THAT(row(zero, 2),
              ElementsAre("cap-shroud.port", "creep in 1 year", "0.0", "", "0.0", "", "by the table"));
  creep.not_checked = SampleRig::saying("no creep-rate is stated");
  sample.derived.stays[0].account.left[0].complete = false;
  const Table table = account_table(sample.checked());
  EXPECT_THAT(row(table, 2), ElementsAre("cap-shroud.port", "creep in 1 year", "", "", "", "",
                                         "not checked: no creep-rate is stated"));
  EXPECT_THAT(row(table, 7),
              ElementsAre("cap-shroud.port", "left after 1 year", "66.7", "", "87.7", "", "INCOMPLETE"));
}

TEST(WorkedTables, ShowTensionAndSag) {
  SampleRig sample = measured_shroud();
  sample.derived.stays[0].sag = Sag{Length::millimetres(4276.1), Force::kilonewtons(3.2),
                                    Length::millimetres(0.41), Length::millimetres(0.1)};
  const Table table = tension_table(sample.checked());
  EXPECT_THAT(row(table, 0), ElementsAre("cap-shroud.port", "swing", "3.15", "", "3.4 %", "4 m L2 f2",
                                         "owner, 2026-05-24"));
  EXPECT_THAT(row(table, 1), ElementsAre("cap-shroud.port", "pulse", "not checked", "", "",
                                         "linear-mass of hmpe-9 is not stated", ""));
  EXPECT_THAT(row(table, 2), ElementsAre("cap-shroud.port", "sag", "3.20", "", "",
                                         "0.41 mm deep over 4276.1 mm, 0.10 mm longer", ""));
}

// (10 - 4) kg x 6 m = 36 kg m.
TEST(WorkedTables, ShowTheLineBefore) {
  SampleRig sample = measured_shroud();
  Replacement& before = *sample.derived.stays[0].replacement;
  before.new_kilograms = 4.0;
  before.old_kilograms = 10.0;
  before.centre_height = Length::metres(6.0);
  EXPECT_THAT(row(replaced_table(sample.checked()), 0),
              ElementsAre("cap-shroud.port", "hmpe-9", "wire-6", "1.56", "", "", "4.00", "10.00", "36.0",
                          "break-load of wire-6 is not stated"));
}

TEST(WorkedTables, ShowWhatMakesALineFit) {
  const Table table = fits_table(measured_shroud().checked());
  EXPECT_THAT(row(table, 0), ElementsAre("cap-shroud.port", "11350.0", "208.0", "2 x link-24", "lashing-4",
                                         "160.0", "50 %", "", ""));
  EXPECT_THAT(row(table, 1), ElementsAre("cap-shroud.port", "11700.0", "208.0", "", "lashing-4", "", "",
                                         "none fits; the nearest is 202.0 mm too long", ""));
}

} // namespace
} // namespace sheerpole::worked_tables_test
