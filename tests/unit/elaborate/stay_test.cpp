#include "unit/elaborate/understood.hpp"

#include <gmock/gmock.h>

namespace sheerpole::stay_test {
namespace {

using rig_test::Understood;
using testing::ElementsAre;
using testing::IsEmpty;

/// Everything that the stays below use; the stay itself begins in line 20.
const std::string hardware = R"(language 1
points {
  tang-pin: (0, 0.1, 10) m mirrored
  tip: (-0.3, 0.9, 6) m mirrored
  plate-pin: (0, 1.4, 1) m mirrored
}
rope cord { construction: "12-strand"
            size: "9 mm" }
splice long-bury { bury: 72 d }
tang tang-10 { lower: jaw (gap: 9 mm) }
chainplate plate-a { upper: eye (hole: 12 mm) }
toggle toggle-12 { length: 82 mm }
turnbuckle bottle-12 {
  shortest: 265 mm
  longest: 395 mm
}
lashing cord-4 {
  shortest: 60 mm
  longest: 260 mm }
)";

Understood stay(const std::string& text) {
  return Understood(hardware + text);
}

Understood stack(const std::string& items) {
  return stay("stay forestay {\n  pin-to-pin: 9 m\n  line: cord\n  stack {\n" + items + "\n  }\n}\n");
}

Understood path(const std::string& stops) {
  return stay("stay shroud {\n  sides: port, starboard\n  path: " + stops +
              "\n  line: cord\n  stack {\n    line\n  }\n}\n");
}

TEST(Stack, IsReadFromAloftToDeck) {
  const Understood rig =
      stack("tang-10\n2 x toggle-12 (splice: long-bury, spare-bury: 1.2 m)\nline (length: 455 mm)\n"
            "line\nbottle-12 (open: 25 %)\ncord-4 (gap: 160 mm, passes: 6)\nplate-a");
  EXPECT_THAT(rig.findings(), IsEmpty());
  ASSERT_EQ(rig.rig.stays.size(), 1u);
  const std::vector<StackItem>& items = rig.rig.stays[0].stack;
  ASSERT_EQ(items.size(), 7u);
  EXPECT_EQ(rig.rig[items[1].part].name, "toggle-12");
  EXPECT_EQ(items[1].count, 2);
  EXPECT_EQ(rig.rig[*items[1].splice].name, "long-bury");
  EXPECT_DOUBLE_EQ(items[1].spare_bury->value.metres(), 1.2);
  EXPECT_EQ(items[2].kind, StackItem::Kind::line);
  EXPECT_DOUBLE_EQ(items[2].line_length->value.millimetres(), 455.0);
  EXPECT_FALSE(items[3].line_length);
  EXPECT_EQ(items[5].passes, 6);
}

TEST(Stack, AnAdjusterIsSetByItsShareOrByItsLength) {
  const Understood rig = stack("line\nbottle-12 (open: 25 %)\nbottle-12 (length: 300 mm)\nbottle-12 (open: "
                               "0 %)\ncord-4 (gap: 160 mm)");
  EXPECT_THAT(rig.findings(), IsEmpty());
  const std::vector<StackItem>& items = rig.rig.stays[0].stack;
  // By hand: 265 + 0.25 * (395 - 265) = 297.5
  EXPECT_DOUBLE_EQ(items[1].set_length->value.millimetres(), 297.5);
  EXPECT_DOUBLE_EQ(items[1].open->value, 0.25);
  EXPECT_EQ(items[1].set_length->provenance.written, "25 % open");
  EXPECT_DOUBLE_EQ(items[2].set_length->value.millimetres(), 300.0);
  EXPECT_FALSE(items[2].open);
  EXPECT_DOUBLE_EQ(items[3].set_length->value.millimetres(), 265.0);
  EXPECT_DOUBLE_EQ(items[4].set_length->value.millimetres(), 160.0);
}

TEST(StackFindings, AnAdjusterWithoutASettingTellsWhatThatIsWorth) {
  const Understood rig = stack("line\nbottle-12");
  EXPECT_THAT(rig.findings(),
              ElementsAre("25:1 `bottle-12` adjuster-not-set: bottle-12 in forestay has no setting\n"
                          "  13:12: its range is declared here\n"
                          "  if it is set in the middle, write `open: 50 %` -> bottle-12 (open: 50 %)"));
  EXPECT_EQ(rig.sink.all().front().why, "it can be 265 to 395 mm long: the cut could be wrong by 130 mm");
  EXPECT_EQ(rig.sink.all().front().subject, "forestay");
  EXPECT_THAT(
      stack("line\nbottle-12 (splice: long-bury)").findings(),
      ElementsAre("25:1 `bottle-12` adjuster-not-set: bottle-12 in forestay has no setting\n"
                  "  13:12: its range is declared here\n"
                  "  if it is set in the middle, write `open: 50 %` -> bottle-12 (open: 50 %, splice: "
                  "long-bury)"));
  EXPECT_THAT(stack("line\ncord-4").findings(),
              ElementsAre("25:1 `cord-4` adjuster-not-set: cord-4 in forestay has no setting\n"
                          "  17:9: its range is declared here\n"
                          "  if it is set in the middle, write `gap: 160 mm` -> cord-4 (gap: 160 mm)"));
}

TEST(StackFindings, AMisspeltSettingIsNotMissedAsWell) {
  EXPECT_THAT(
      stack("line\nbottle-12 (opne: 50 %)").findings(),
      ElementsAre(
          "25:12 `opne` unknown-setting: opne cannot be stated here for a turnbuckle; what can: open, "
          "length, splice, spare-bury\n  write `open` -> bottle-12 (open: 50 %)"));
}

TEST(StackFindings, AnAdjusterIsSetOnce) {
  EXPECT_THAT(stack("line\nbottle-12 (open: 50 %, length: 330 mm)").findings(),
              ElementsAre("25:24 `length` adjuster-set-twice: bottle-12 in forestay is set twice\n"
                          "  here: a second setting\n  25:12: the first one"));
  EXPECT_THAT(stack("line\nbottle-12 (open: 50 %, open: 60 %)").findings(),
              ElementsAre("25:24 `open` property-twice: open is stated twice\n  here: stated again here\n"
                          "  25:12: stated here first"));
}

TEST(StackFindings, AFittingOfTheBoatIsAtOneEndOnly) {
  EXPECT_THAT(stack("tang-10\nline\ntang-10").findings(),
              ElementsAre("26:1 `tang-10` part-at-both-ends: tang-10, a tang, is at both ends of forestay\n"
                          "  here: again at the deck end\n  24:1: here aloft\n"
                          "  if it is the one meant, write `plate-a` -> plate-a"));
  EXPECT_THAT(
      stack("plate-a\nline\nplate-a").findings(),
      ElementsAre("26:1 `plate-a` part-at-both-ends: plate-a, a chainplate, is at both ends of forestay\n"
                  "  here: again at the deck end\n  24:1: here aloft\n"
                  "  if it is the one meant, write `tang-10` -> tang-10"));
  EXPECT_THAT(
      stack("line\ntang-10\ntoggle-12").findings(),
      ElementsAre("25:1 `tang-10` boat-fitting-inside: tang-10, a tang, is in the middle of forestay"));
}

TEST(StackFindings, WhatIsSaidOfASpliceStandsWhereTheRopeEnds) {
  EXPECT_THAT(stack("toggle-12 (splice: long-bury, spare-bury: 1.2 m)\nline").slugs(), IsEmpty());
  const Understood alone = stack("toggle-12 (spare-bury: 1.2 m)\nline");
  EXPECT_THAT(alone.slugs(), ElementsAre("part-property-idle"));
  EXPECT_EQ(alone.sink.all().front().message, "toggle-12 in forestay states spare-bury, which does nothing "
                                              "there: no splice is stated beside it");
  const Understood away = stack("line\nbottle-12 (open: 50 %)\ntoggle-12 (splice: long-bury)");
  EXPECT_THAT(away.slugs(), ElementsAre("part-property-idle"));
  EXPECT_EQ(away.sink.all().front().message,
            "toggle-12 in forestay states splice, which does nothing there: no line ends there");
  EXPECT_THAT(stack("line\nbottle-12 (open: 50 %)\ntoggle-12 (splice: long-bury, spare-bury: 1 m)").slugs(),
              ElementsAre("part-property-idle", "part-property-idle"));
}

TEST(StackFindings, AShapeIsThatOfARopeSeat) {
  EXPECT_THAT(
      stay("thimble ring {\n  length: 0 mm\n  shape: pear\n  upper: eye (hole: 12 mm)\n}\n").slugs(),
      ElementsAre("part-property-idle"));
  EXPECT_THAT(stay("thimble ring {\n  length: 0 mm\n  shape: pear\n  lower: rope-seat\n}\n").slugs(),
              IsEmpty());
}

TEST(StackFindings, OneLineTakesWhatIsLeft) {
  EXPECT_THAT(stack("toggle-12").findings(),
              ElementsAre("23:3 `stack` line-missing: the stack of forestay has no `line` in it"));
  EXPECT_THAT(
      stack("line (length: 455 mm)").findings(),
      ElementsAre(
          "23:3 `stack` no-free-line: every `line` in the stack of forestay has a length of its own"));
  EXPECT_THAT(
      stack("line\ntoggle-12\nline").findings(),
      ElementsAre("26:1 `line` two-free-lines: the stack of forestay has two lines without a length\n"
                  "  here: a second one\n  24:1: the first one"));
  EXPECT_THAT(
      stack("2 x line").findings(),
      ElementsAre("24:1 `2` line-counted: the line of forestay is written more than once with a number"));
  EXPECT_THAT(
      stack("line (length: 455)").findings(),
      ElementsAre("24:15 `455` missing-unit: `455` has no unit; the length of line in forestay needs one\n"
                  "  if mm is meant, write `455 mm` -> line (length: 455 mm)"));
  EXPECT_THAT(
      stack("line\n1.5 x toggle-12").findings(),
      ElementsAre(
          "25:1 `1.5` whole-number-wanted: the number of toggle-12 is a whole number from 1 to 10000"));
}

TEST(StackFindings, AStayHasOneStack) {
  EXPECT_THAT(stay("stay forestay {\n  pin-to-pin: 9 m\n  line: cord\n}\n").findings(),
              ElementsAre("20:6 `forestay` stack-missing: forestay has no stack"));
  EXPECT_THAT(
      stay("stay forestay {\n  line: cord\n  stack {\n line\n }\n  stack {\n line\n }\n}\n").findings(),
      ElementsAre("25:3 `stack` block-twice: a second stack in the same block\n  here: a second one here\n"
                  "  22:3: the first one"));
}

TEST(StackFindings, AnUnknownPartIsTheOnlyThingThatIsWrong) {
  EXPECT_THAT(stack("tang-10\nlnie\nplate-a").slugs(), ElementsAre("unknown-name"));
}

TEST(Path, GoesThroughItsPointsOnEachSide) {
  const Understood rig = path("tang-pin > tip clamped > plate-pin");
  EXPECT_THAT(rig.findings(), IsEmpty());
  ASSERT_EQ(rig.rig.stays.size(), 2u);
  EXPECT_EQ(rig.rig.stays[0].name, "shroud.port");
  EXPECT_EQ(rig.rig[rig.rig.stays[0].path[1].point].name, "tip.port");
  EXPECT_EQ(rig.rig[rig.rig.stays[1].path[1].point].name, "tip.starboard");
  EXPECT_EQ(rig.rig.stays[0].path[1].passage, Passage::clamped);
  EXPECT_EQ(rig.rig.stays[0].path[2].passage, Passage::end);
}

TEST(PathFindings, AnUnknownPointIsOneFindingForBothSides) {
  EXPECT_THAT(path("tang-pin > tpi free > plate-pin").findings(),
              ElementsAre("22:20 `tpi` unknown-name: a point called tpi is not declared anywhere\n"
                          "  4:3: `tip` is declared here\n"
                          "  write `tip` ->   path: tang-pin > tip free > plate-pin"));
}

TEST(PathFindings, TheWayPastAPointIsStated) {
  const Understood rig = path("tang-pin > tip > plate-pin");
  EXPECT_THAT(
      rig.findings(),
      ElementsAre(
          "warning 22:20 `tip` passage-not-stated: the path of shroud does not say how the line passes "
          "here; `free` is taken\n  if the line runs through freely, write `free` ->   path: tang-pin "
          "> tip free > plate-pin"));
  EXPECT_EQ(rig.rig.stays.size(), 2u);
}

TEST(PathFindings, AtItsEndsNothingIsPassed) {
  EXPECT_THAT(path("tang-pin free > plate-pin").findings(),
              ElementsAre("22:18 `free` passage-at-end: `free` is at an end of the path of shroud"));
  EXPECT_THAT(
      path("tang-pin > tip ends > plate-pin").findings(),
      ElementsAre(
          "22:24 `ends` path-goes-on: the path of shroud goes on behind a point at which it `ends`"));
}

TEST(PathFindings, NeedsTwoPointsAndNoneTwice) {
  EXPECT_THAT(path("tang-pin").findings(),
              ElementsAre("22:9 `tang-pin` path-too-short: the path of shroud has only one point"));
  EXPECT_THAT(path("tang-pin > tip free > tip free > plate-pin").findings(),
              ElementsAre("22:31 `tip` path-repeats-point: the path of shroud goes from tip to tip itself\n"
                          "  22:20: the same point here"));
}

TEST(PathFindings, OnTheCentrelineASideIsSaid) {
  const std::string rest = "\n  line: cord\n  stack {\n    line\n  }\n}\n";
  EXPECT_THAT(
      stay("stay backstay {\n  path: tang-pin.port > plate-pin" + rest).findings(),
      ElementsAre(
          "21:25 `plate-pin` side-needed: plate-pin is there on both sides, and backstay does not say "
          "which one\n  5:3: declared here, for both sides"));
  EXPECT_THAT(stay("stay backstay {\n  path: tang-pin.port > plate-pin.port" + rest).findings(), IsEmpty());
}

TEST(PathFindings, AMisspeltSideDoesNotHideTheReadingOfThatSide) {
  EXPECT_THAT(
      stay("stay shroud {\n  sides: prt, starboard\n  line: cord\n  stack {\n line\n }\n}\n"
           "reading of shroud.port {\n  runs: 9 m\n}\n")
          .findings(),
      ElementsAre("21:10 `prt` unknown-choice: `prt` is not one of the words for sides: port, starboard\n"
                  "  write `port` ->   sides: port, starboard"));
}

TEST(Stay, ItsCopyWithAnotherLineKeepsTheStack) {
  const Understood rig =
      stay("stay inner from forestay {\n  pin-to-pin: 7 m\n}\n"
           "stay forestay {\n  pin-to-pin: 9 m\n  line: cord\n  stack {\n toggle-12\n line\n }\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  ASSERT_EQ(rig.rig.stays.size(), 2u);
  EXPECT_EQ(rig.rig.stays[0].name, "inner");
  EXPECT_DOUBLE_EQ(rig.rig.stays[0].stated_pin_to_pin->value.metres(), 7.0);
  EXPECT_EQ(rig.rig.stays[0].stack.size(), 2u);
}

const std::string pair = "stay shroud {\n  sides: port, starboard\n  line: cord\n  stack {\n line\n }\n}\n";

TEST(Readings, BelongToTheSideThatWasMeasured) {
  const Understood rig =
      stay(pair + "reading of shroud.port {\n  method: tape\n  runs: 9_001 mm, 9_003 mm ± 2 mm\n"
                  "  by: \"owner\"\n  date: 2026-05-02\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  ASSERT_EQ(rig.rig.stays[0].readings.size(), 1u);
  EXPECT_THAT(rig.rig.stays[1].readings, IsEmpty());
  const Reading& reading = rig.rig.stays[0].readings[0];
  ASSERT_EQ(reading.runs.size(), 2u);
  EXPECT_DOUBLE_EQ(reading.runs[0].value.millimetres(), 9001.0);
  EXPECT_EQ(reading.runs[0].provenance.source_class, SourceClass::measured);
  EXPECT_EQ(reading.runs[0].provenance.note, "tape, owner, 2026-05-02");
  EXPECT_EQ(reading.runs[0].provenance.written, "9_001 mm ± 2 mm");
  EXPECT_DOUBLE_EQ(reading.runs[1].tolerance->millimetres(), 2.0);
}

TEST(Readings, OfAPairSayWhichSide) {
  EXPECT_THAT(
      stay(pair + "reading of shroud {\n  runs: 9 m\n}\n").findings(),
      ElementsAre(
          "27:12 `shroud` reading-needs-side: shroud is there on both sides, and the reading does not "
          "say which one was measured\n  20:6: the stay\n  if it was the starboard one, write "
          "`shroud.starboard` -> reading of shroud.starboard {"));
  EXPECT_THAT(
      stay("stay forestay {\n  line: cord\n  stack {\n line\n }\n}\n"
           "reading of forestay.port {\n  runs: 9 m\n}\n")
          .findings(),
      ElementsAre("26:12 `forestay` reading-of-no-side: forestay has no port side that could be measured\n"
                  "  20:6: the stay"));
  EXPECT_THAT(
      stay(pair + "reading of shroud.port {\n  method: tape\n}\n").findings(),
      ElementsAre("27:1 `reading` reading-empty: the reading of shroud has neither a run nor a cord "
                  "nor a mark"));
}

} // namespace
} // namespace sheerpole::stay_test
