#include "backend/table/rig_tables.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <utility>

namespace sheerpole::rig_tables_test {
namespace {

using testing::ElementsAre;

SampleRig sloop() {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  sample.add_unknown_stay(20.0);
  return sample;
}

std::vector<std::string> row(const Table& table, std::size_t number) {
  return table.rows.at(number);
}

TEST(RigTables, AreListedByNameWithAWordAboutEach) {
  std::vector<std::string_view> names;
  for (const NamedTable& table : rig_tables()) {
    names.push_back(table.name);
    EXPECT_FALSE(say(table.summary).empty()) << table.name;
  }
  EXPECT_THAT(names,
              ElementsAre("points", "lengths", "pieces", "take-up", "marks", "readings", "uncertainty",
                          "measure-next", "sensitivity", "temperature", "account", "tension", "standing",
                          "tune", "turns", "days", "tune-inputs", "tune-doubt", "replaced", "fits", "play",
                          "joints", "strength", "loads", "checks", "results", "limits", "stack", "parts",
                          "states", "differences", "made", "inspections", "record", "sources"));
}

TEST(RigTables, HaveRowsAsLongAsTheirHeadings) {
  const CheckedRig checked = sloop().checked();
  for (const NamedTable& named : rig_tables()) {
    const Table table = named.build(checked);
    EXPECT_FALSE(table.rows.empty() && table.notes.empty()) << named.name; // nothing is said to be nothing
    for (const std::vector<std::string>& cells : table.rows)
      EXPECT_EQ(cells.size(), table.columns.size()) << named.name;
  }
}

TEST(RigTables, ShowPoints) {
  EXPECT_THAT(row(points_table(sloop().checked()), 1),
              ElementsAre("cap-tang.starboard", "-50.0", "70.0", "12620.0", "drawn, sail plan 12"));
}

TEST(RigTables, ShowLengthsEachWay) {
  SampleRig sample = sloop();
  sample.derived.stays[0].other_routes.push_back({LengthRoute::path, Length::millimetres(11641.7),
                                                  Length::millimetres(0.3),
                                                  SampleRig::known(SourceClass::computed, "from points")});
  const Table table = lengths_table(sample.checked());
  EXPECT_THAT(row(table, 0), ElementsAre("cap-shroud.port", "stated", "yes", "11642.0", "260.0", "11382.0",
                                         "", "drawn, sail plan 12"));
  EXPECT_THAT(row(table, 1), ElementsAre("cap-shroud.port", "path", "no", "11641.7", "", "", "0.3",
                                         "computed, from points"));
  EXPECT_THAT(row(table, 2),
              ElementsAre("forestay", "unknown", "yes", "X(forestay) - 20.0", "0.0", "X(forestay) - 20.0",
                          "", "measured, mark on the messenger: red whipping"));
}

// 12997.6 / 25.4 = 511.717 in = 42 ft 7.717 in, nearest sixteenth 11/16; 32 / 25.4 = 1.26 in, nearest 1/4.
TEST(RigTables, ShowPieces) {
  SampleRig sample = sloop();
  sample.derived.stays[0].pieces[0].cut.terms[3].provenance.assumptions = {
      "contraction of splice long-bury"};
  sample.derived.stays[1].pieces[0].missing = {
      {SampleRig::saying("insertion depth of stud-6"), SampleRig::saying("measure it"), {}}};
  const Table table = pieces_table(sample.checked());
  EXPECT_THAT(row(table, 0), ElementsAre("cap-shroud.port", "hmpe-9", "9 mm", "11382.0", "12997.6",
                                         "42' 7 11/16\"", "DRAFT", "not yet"));
  EXPECT_THAT(row(table, 1),
              ElementsAre("forestay", "wire-6", "6 mm", "X(forestay) - 20.0", "X(forestay) + 32.0",
                          "X(forestay) + 1 1/4\"", "DRAFT, incomplete", "not yet"));
  // Programs have the numbers with their state; people have NOT YET, as on the cards.
  const std::string text = render_text(table);
  EXPECT_THAT(text, testing::ContainsRegex("11382.0 +NOT YET +DRAFT  "));
  EXPECT_THAT(text, testing::Not(testing::HasSubstr("12997.6")));
  EXPECT_THAT(text, testing::Not(testing::HasSubstr("+ 32.0")));
  EXPECT_THAT(render_csv(table), testing::HasSubstr("12997.6"));
}

// 1/2-20 UNF in a right- and left-handed pair moves 2 x 25.4 / 20 = 2.54 mm a turn; 65 mm are 25.6 turns.
TEST(RigTables, ShowTakeUpBothWaysInTurns) {
  SampleRig sample = sloop();
  TakeUp& adjuster = sample.derived.stays[0].adjusters[0];
  adjuster.set = SampleRig::length(330.0, SourceClass::drawn);
  adjuster.to_tighten = Length::millimetres(65.0);
  adjuster.to_slacken = Length::millimetres(-5.0);
  adjuster.travel_per_turn = Length::millimetres(2.54);
  adjuster.engaged = Length::millimetres(20.0);
  adjuster.least_engagement = Length::millimetres(12.7);
  EXPECT_THAT(row(take_up_table(sample.checked()), 0),
              ElementsAre("cap-shroud.port", "lashing-4", "330.0", "65.0", "25.6", "-5.0", "-2.0", "2.54",
                          "20.0", "12.7"));
}

TEST(RigTables, RunDownTheStackToTheLowerPin) {
  const Table table = stack_table(sloop().checked());
  EXPECT_THAT(row(table, 0), ElementsAre("cap-shroud.port", "1", "tang", "tang-10", "1", "", "0.0"));
  EXPECT_THAT(row(table, 2),
              ElementsAre("cap-shroud.port", "3", "line", "hmpe-9", "1", "11382.0", "11398.0"));
  EXPECT_THAT(row(table, 5),
              ElementsAre("cap-shroud.port", "6", "link", "lash-block", "1", "46.0", "11642.0"));
  EXPECT_THAT(row(table, 7), ElementsAre("forestay", "2", "line", "wire-6", "1", "X(forestay) - 20.0",
                                         "X(forestay) - 20.0"));
}

TEST(RigTables, LoseTheDistanceBehindAPartWithoutLength) {
  SampleRig sample = sloop();
  sample.rig.parts[2].length.reset(); // the deadeye below the line
  const Table table = stack_table(sample.checked());
  EXPECT_EQ(row(table, 1).back(), "16.0");
  EXPECT_EQ(row(table, 2).back(), "?");
  EXPECT_EQ(row(table, 3).back(), "?");
  EXPECT_EQ(row(table, 5).back(), "?");
}

TEST(RigTables, ShowPartsWithEndsAndRange) {
  SampleRig sample = sloop();
  Part& thimble = sample.rig.parts[1];
  thimble.upper.type = EndType::eye;
  thimble.upper.dimensions = {
      {EndDimensionName::hole, SampleRig::length(12.0, SourceClass::maker), ""},
      {EndDimensionName::pin, SampleRig::length(9.5, SourceClass::maker), "3/8 in"}};
  thimble.lower.type = EndType::rope_seat;
  const Table table = parts_table(sample.checked());
  EXPECT_THAT(row(table, 1), ElementsAre("thimble", "thimble-9", "16.0", "eye (hole 12.0 mm, pin 3/8 in)",
                                         "rope-seat", "maker"));
  EXPECT_THAT(row(table, 3), ElementsAre("lashing", "lashing-4", "60.0 to 260.0", "", "", "maker"));
}

TEST(RigTables, ListEveryNumberWithItsPlace) {
  SampleRig sample = sloop();
  sample.rig.stays[0].stated_pin_to_pin->provenance.place = Span{SourceId{0}, 11, 15};
  sample.rig.stays[0].stated_pin_to_pin->provenance.written = "11.642 m";
  const Table table = sources_table(sample.checked());
  EXPECT_THAT(table.rows,
              testing::Contains(ElementsAre("pin-to-pin of cap-shroud.port", "11642.0 mm", "11.642 m",
                                            "drawn", "sail plan 12", "pellimoor.rig:2")));
  EXPECT_THAT(table.rows,
              testing::Contains(ElementsAre("bury of long-bury", "72 d", "72 d", "practice", "", "")));
  EXPECT_THAT(table.rows, testing::Contains(
                              ElementsAre("contraction of long-bury", "8.0 %", "8 %", "measured", "", "")));
}

TEST(RigTables, ListTheNumbersOfReadingsSpreadersStatesAndRecordsToo) {
  SampleRig sample = sloop();
  const auto fact = [](std::string name, std::string text) {
    return Particular{std::move(name), {{}, SampleRig::known(SourceClass::measured, "", text), {}}, text};
  };
  Reading reading;
  reading.runs = {SampleRig::length(11600.0, SourceClass::measured)};
  reading.offset = SampleRig::length(35.0, SourceClass::measured);
  reading.hoist_offset = SampleRig::length(60.0, SourceClass::measured, "tape");
  reading.particulars = {fact("pull", "100 N")};
  sample.rig.stays[0].readings = {reading};
  Spreader spreader;
  spreader.name = "upper-spreader.port";
  spreader.particulars = {fact("length", "0.78 m")};
  sample.rig.spreaders = {spreader};
  State slack;
  slack.name = "slack";
  StatePosition position;
  position.stay = StayId{0};
  position.as_set = {StackItem{}};
  position.as_set[0].part = PartId{3};
  position.as_set[0].set_length = SampleRig::length(240.0, SourceClass::measured);
  slack.positions = {position};
  sample.rig.states = {slack};
  Record tape;
  tape.kind = RecordKind::tape;
  tape.name = "tape-30";
  tape.facts = {fact("standard-pull", "50 N")};
  sample.rig.records = {tape};
  const Table table = sources_table(sample.checked());
  for (const auto& [what, value] :
       {std::pair("reading of cap-shroud.port, hoist offset", "60.0 mm"),
        std::pair("reading of cap-shroud.port, offset", "35.0 mm"),
        std::pair("pull of reading of cap-shroud.port", "100 N"),
        std::pair("length of upper-spreader.port", "0.78 m"),
        std::pair("setting of lashing-4 in cap-shroud.port as slack", "240.0 mm"),
        std::pair("standard-pull of tape tape-30", "50 N")})
    EXPECT_TRUE(std::any_of(table.rows.begin(), table.rows.end(), [&](const auto& cells) {
      return cells[0] == what && cells[1] == value;
    })) << what;
}

} // namespace
} // namespace sheerpole::rig_tables_test
