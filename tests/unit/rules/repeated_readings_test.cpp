// What was written twice, and what was measured by one way alone.

#include "results/checked_rig.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "wording/model_words.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::repeated_readings_test {
namespace {

using test::compiled;
using test::found;

constexpr const char* head = R"(language 1
wire wire-6 {
  construction: "1x19"
  size: "6 mm"
}
terminal eye-50 {
  length: 50 mm
  lower: wire-socket (construction: "1x19", size: "6 mm", inserted: 40 mm)
}
terminal fork-60 {
  length: 60 mm
  upper: wire-socket (construction: "1x19", size: "6 mm", inserted: 40 mm)
}
)";

std::string with_stay(const std::string& more, const std::string& in_stay = "") {
  return head + in_stay + more;
}

constexpr const char* plain_stay = R"(stay shroud {
  line: wire-6
  stack {
    eye-50
    line
    fork-60
  }
}
)";

std::string tape(const std::string& length, const std::string& date) {
  return "reading of shroud {\n  method: tape\n  runs: " + length + "\n  date: " + date + "\n}\n";
}

PieceState state_of(const Compilation& boat) {
  return boat.checked->state(boat.checked->derived().stays[0].pieces[0]);
}

TEST(RepeatedReadings, AReadingThatWasPastedConfirmsNothing) {
  const Compilation twice =
      compiled(with_stay(tape("10.250 m", "2026-04-11") + tape("10.250 m", "2026-04-11"), plain_stay));
  EXPECT_TRUE(found(twice, "reading-repeated"));
  EXPECT_TRUE(found(twice, "measured-once"));
  ASSERT_TRUE(twice.checked);
  EXPECT_EQ(state_of(twice), PieceState::measured_once);
}

TEST(RepeatedReadings, TheSameLengthOnAnotherDayOrAMillimetreOffConfirms) {
  for (const auto& [length, date] :
       {std::pair<std::string, std::string>{"10.250 m", "2026-04-12"}, {"10.251 m", "2026-04-11"}}) {
    const Compilation boat =
        compiled(with_stay(tape("10.250 m", "2026-04-11") + tape(length, date), plain_stay));
    EXPECT_FALSE(found(boat, "reading-repeated")) << length << date;
    ASSERT_TRUE(boat.checked);
    EXPECT_EQ(state_of(boat), PieceState::ready) << length << date;
  }
}

TEST(RepeatedReadings, APastedMarkOnACordConfirmsNothing) {
  const std::string cord =
      "reading of shroud {\n  method: messenger\n  mark: \"red yarn\"\n  date: 2026-04-11\n}\n";
  const Compilation twice = compiled(with_stay(cord + cord, plain_stay));
  EXPECT_TRUE(found(twice, "reading-repeated"));
  ASSERT_TRUE(twice.checked);
  EXPECT_NE(state_of(twice), PieceState::ready);
}

TEST(RepeatedReadings, WhatMeasuredPointsAloneSayWasMeasuredOnce) {
  const Compilation boat = compiled(with_stay(R"(points {
  masthead: (0, 0, 10.000) m measured
  stem: (4.000, 0, 1.000) m measured
}
stay shroud {
  path: masthead > stem
  line: wire-6
  stack {
    eye-50
    line
    fork-60
  }
}
)"));
  EXPECT_TRUE(found(boat, "measured-once"));
  ASSERT_TRUE(boat.checked);
  EXPECT_EQ(state_of(boat), PieceState::measured_once);
}

std::string pair_kept_by(const std::string& port, const std::string& starboard) {
  return with_stay("reading of shroud.port {\n  method: messenger\n  mark: \"" + port +
                       "\"\n}\nreading of shroud.starboard {\n  method: messenger\n  mark: \"" + starboard +
                       "\"\n}\n",
                   "stay shroud {\n  sides: port, starboard\n  line: wire-6\n  stack {\n    eye-50\n    "
                   "line\n    fork-60\n  }\n}\n");
}

TEST(RepeatedReadings, OneMarkOfTwoStaysIsFound) {
  EXPECT_TRUE(found(compiled(pair_kept_by("two knots, red", "two knots, red")), "mark-shared"));
  EXPECT_FALSE(found(compiled(pair_kept_by("two knots, red", "one knot, red")), "mark-shared"));
}

// The words of both offsets are the name of the sheet that all of the readings came from, and say of no
// hook.
TEST(RepeatedReadings, TwoOffsetsFromOneSheetAreNotOfOneHook) {
  const auto offsets = [](const std::string& of_runs) {
    std::string text;
    for (const char* side : {"port", "starboard"})
      text += std::string("reading of shroud.") + side + " {\n  method: tape\n  runs: 10.250 m, 10.251 m " +
              of_runs + "\n  offset: " + (side[0] == 'p' ? "40" : "4") + " mm measured \"sheet\"\n}\n";
    return with_stay(text,
                     "stay shroud {\n  sides: port, starboard\n  line: wire-6\n  stack {\n    eye-50\n "
                     "   line\n    fork-60\n  }\n}\n");
  };
  EXPECT_FALSE(found(compiled(offsets("measured \"sheet\"")), "offsets-differ"));
  EXPECT_TRUE(found(compiled(offsets("")), "offsets-differ"));
}

TEST(RepeatedReadings, OnePlateBesideTheCentrelineHasNoSide) {
  const Compilation boat = compiled(with_stay(R"(points {
  bridle: (4.000, 0.006, 1.000) m measured
  runner: (-4.000, 1.200, 1.000) m measured
}
)",
                                              plain_stay));
  ASSERT_TRUE(boat.checked);
  const Rig& rig = boat.checked->rig();
  EXPECT_EQ(place_words(rig, rig.points[0]), "bridle");
  EXPECT_EQ(place_words(rig, rig.points[1]), "runner, starboard");
}

} // namespace
} // namespace sheerpole::repeated_readings_test
