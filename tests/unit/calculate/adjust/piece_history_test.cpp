#include "calculate/adjust/piece_history.hpp"

#include "unit/calculate/compiled_rig.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::piece_history_test {
namespace {

const std::string parts = R"(language 1
wire wire-6 {
  construction: "1x19"
  size: "6 mm"
  stiffness: 2_800 kN
  batch: "heat 7"
}
rope hmpe-9 {
  construction: "12-strand HMPE, heat-set"
  size: "9 mm"
}
splice bury {
  bury: 72 d
  eye-allowance: 12 d
  contraction-rule: equals-first-creep
}
test-splice of hmpe-9 {
  splice: bury
  bury: 648 mm measured
  before: 2_000 mm measured
  after: 1_948 mm measured
}
thimble ring {
  length: 30 mm measured
  lower: rope-seat (diameter: 28 mm)
}
turnbuckle bottle {
  shortest: 265 mm measured
  longest: 395 mm measured
  upper: wire-socket (inserted: 60 mm maker)
}
stock spool-1 of wire-6 {
  sort: spool
  length: 60 m measured
  batch: "lot 12"
}
)";

const std::string wire_stay = R"(stay forestay {
  pin-to-pin: 11_640 mm measured
  line: wire-6
  dock-tension: 4 kN
  bench-tension: 500 N
  stack {
    line
    bottle (length: 330 mm)
  }
}
)";

PieceHistory history_of(const Compilation& boat, std::size_t piece = 0) {
  return piece_history(*boat.rig, boat.derived->stays.front(), piece);
}

// 11 640 - 330 = 11 310 as it hangs at 4 kN; on the bench at 500 N a wire of EA 2 800 kN is shorter by the
// strain 3 500 / 2 800 000 = 0.00125 of it: 11 310 x 0.00125 / 1.00125 = 14.120 mm (Hooke's law, by hand).
TEST(PieceHistory, HoldsThePieceAgainstWhatItIsToBeAtItsStage) {
  const Compilation boat = test::compiled(parts + wire_stay + R"(
piece of forestay { stage: fitted
body: 11_312 mm
date: 2026-05-02 }
piece of forestay { stage: made
body: 11_298 mm
date: 2026-04-01 }
)");
  ASSERT_TRUE(boat.checked);
  const PieceHistory history = history_of(boat);
  ASSERT_EQ(history.entries.size(), 2U);
  EXPECT_EQ(history.entries[0].record->stage, PieceStage::made); // in the order in which they come about
  EXPECT_NEAR(history.entries[0].wanted->millimetres(), 11310.0 - 14.120, 0.001);
  EXPECT_NEAR(history.entries[0].longer()->millimetres(), 11298.0 - 11295.880, 0.001);
  EXPECT_NEAR(history.entries[1].wanted->millimetres(), 11310.0, 1e-9);
  EXPECT_NEAR(history.entries[1].longer()->millimetres(), 2.0, 1e-9);
  EXPECT_EQ(history.last_measured(), &history.entries[1]);
  // The screw takes up what the piece is too long by.
  EXPECT_NEAR(adjuster_with(boat.derived->stays.front(), history.entries[1])->millimetres(), 328.0, 1e-9);
}

// Under 1 500 N the piece is longer than under the 500 N of the bench by 1 000 / 2 800 000 of it, 4.03 mm
// (Hooke's law, by hand).
TEST(PieceHistory, BringsALengthFromItsPullToTheBenchTension) {
  const Compilation boat = test::compiled(
      parts + wire_stay + "piece of forestay { stage: made\nbody: 11_300 mm\npull: 1_500 N }\n");
  ASSERT_TRUE(boat.checked);
  const PieceHistory history = history_of(boat);
  const PieceEntry& entry = history.entries.front();
  EXPECT_FALSE(entry.pull_not_counted);
  EXPECT_NEAR(entry.body->millimetres(), 11300.0 * 1.000178571 / 1.000535714, 0.001);
  EXPECT_NEAR(entry.body->millimetres(), 11300.0 - 4.03, 0.01);
}

TEST(PieceHistory, SaysThatAPullIsNotCountedWithoutAStiffness) {
  const Compilation boat = test::compiled(
      parts +
      "wire plain { construction: \"1x19\"\nsize: \"6 mm\" }\n"
      "stay forestay {\n  pin-to-pin: 11_640 mm measured\n  line: plain\n  stack {\n    line\n  }\n}\n"
      "piece of forestay { stage: made\nbody: 11_640 mm\npull: 1_500 N }\n");
  ASSERT_TRUE(boat.checked);
  EXPECT_TRUE(history_of(boat).entries.front().pull_not_counted);
  EXPECT_EQ(history_of(boat).entries.front().body->millimetres(), 11640.0);
  EXPECT_FALSE(test::found(boat, "piece-apart"));
}

// The rule equals-first-creep: until it has settled a piece is short by what its splices took, 8.02 % of
// 648 mm an end in the test splice (52 mm of 648).
TEST(PieceHistory, WantsAPieceShorterUntilItHasSettled) {
  const Compilation boat = test::compiled(parts + R"(stay forestay {
  pin-to-pin: 11_640 mm measured
  line: hmpe-9
  stack {
    ring (splice: bury)
    line
    ring (splice: bury)
    bottle (length: 330 mm)
  }
}
piece of forestay { stage: made
body: 11_150 mm }
piece of forestay { stage: settled
body: 11_251 mm }
)");
  ASSERT_TRUE(boat.derived);
  const PieceHistory history = history_of(boat);
  ASSERT_EQ(history.entries.size(), 2U);
  const double settled = 11640.0 - 330.0 - 60.0;
  EXPECT_NEAR(history.entries[1].wanted->millimetres(), settled, 1e-9);
  EXPECT_NEAR(history.entries[0].wanted->millimetres(), settled - 2.0 * 52.0, 0.001);
}

TEST(PieceHistory, TakesTheBatchOfTheRecordThenOfTheStockThenOfTheLine) {
  const auto batch_with = [](const std::string& record) {
    const Compilation boat = test::compiled(parts + wire_stay + record);
    return batch_of(*boat.rig, boat.derived->stays.front(), 0);
  };
  EXPECT_EQ(batch_with(""), "heat 7");
  EXPECT_EQ(batch_with("piece of forestay { stage: cut\nstock: \"spool-1\" }\n"), "lot 12");
  EXPECT_EQ(batch_with("piece of forestay { stage: cut\nstock: \"spool-1\"\nbatch: \"lot 9\" }\n"),
            "lot 9");
  // A stock that is used up stands in no file any more.
  EXPECT_EQ(batch_with("piece of forestay { stage: cut\nstock: \"bit-3\" }\n"), "heat 7");
}

} // namespace
} // namespace sheerpole::piece_history_test
