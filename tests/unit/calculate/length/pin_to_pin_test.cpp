#include "calculate/length/pin_to_pin.hpp"

#include "calculate/length/length_sum.hpp"
#include "unit/calculate/rig_builder.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

namespace sheerpole::pin_to_pin_test {
namespace {

using namespace build;

Reading reading(std::initializer_list<double> runs_mm, std::optional<double> offset_mm = std::nullopt) {
  Reading result;
  result.method = ReadingMethod::tape;
  for (const double run : runs_mm)
    result.runs.push_back(sourced(mm(run)));
  if (offset_mm)
    result.offset = sourced(mm(*offset_mm));
  result.place = at(500);
  return result;
}

/// A stay of 3 m by its points.
RigBuilder with_path() {
  RigBuilder builder;
  Stay made = stay("forestay", builder.add(wire("wire", mm(6))), {line()});
  made.path = path({builder.point("tang", 0, 0, 3000), builder.point("stem", 0, 0, 0)});
  builder.add(made);
  return builder;
}

TEST(PinToPin, TakesThePathWhenNothingElseIsThere) {
  const RigBuilder builder = with_path();
  const PinToPin result = pin_to_pin(builder.rig, builder.rig.stays[0]);
  EXPECT_EQ(result.route, LengthRoute::path);
  EXPECT_NEAR(result.sum.known().millimetres(), 3000, 1e-9);
  EXPECT_TRUE(result.other_routes.empty());
}

TEST(PinToPin, StatedWinsOverThePathAndBothAreShown) {
  RigBuilder builder = with_path();
  builder.rig.stays[0].stated_pin_to_pin = sourced(mm(3007));
  const PinToPin result = pin_to_pin(builder.rig, builder.rig.stays[0]);
  EXPECT_EQ(result.route, LengthRoute::stated);
  EXPECT_NEAR(result.sum.known().millimetres(), 3007, 1e-9);
  ASSERT_EQ(result.other_routes.size(), 1u);
  EXPECT_EQ(result.other_routes[0].other, LengthRoute::path);
  EXPECT_NEAR(result.other_routes[0].length.millimetres(), 3000, 1e-9);
  EXPECT_NEAR(result.other_routes[0].difference.millimetres(), 7, 1e-9);
}

// (3010 + 3013 + 3016) / 3 = 3013; 3013 - 35 = 2978.
TEST(PinToPin, AReadingIsTheMeanOfItsRunsLessTheOffset) {
  RigBuilder builder = with_path();
  builder.rig.stays[0].stated_pin_to_pin = sourced(mm(3007));
  builder.rig.stays[0].readings = {reading({3010, 3013, 3016}, 35)};
  const PinToPin result = pin_to_pin(builder.rig, builder.rig.stays[0]);
  EXPECT_EQ(result.route, LengthRoute::reading);
  ASSERT_EQ(result.sum.terms.size(), 2u);
  EXPECT_EQ(term_name(builder.rig, result.sum.terms[0]), "mean of 3 runs");
  EXPECT_EQ(say(builder.rig, result.sum.terms[0].how), "(3010.0 + 3013.0 + 3016.0) / 3 mm, spread 6 mm");
  EXPECT_EQ(result.sum.terms[0].provenance.source_class, SourceClass::measured);
  EXPECT_EQ(term_name(builder.rig, result.sum.terms[1]), "hook offset");
  EXPECT_NEAR(result.sum.terms[1].amount.millimetres(), -35, 1e-9);
  EXPECT_NEAR(result.sum.known().millimetres(), 2978, 1e-9);
  ASSERT_EQ(result.other_routes.size(), 2u);
  EXPECT_EQ(result.other_routes[0].other, LengthRoute::stated);
  EXPECT_NEAR(result.other_routes[0].difference.millimetres(), -29, 1e-9);
  EXPECT_EQ(result.other_routes[1].other, LengthRoute::path);
  EXPECT_NEAR(result.other_routes[1].difference.millimetres(), -22, 1e-9);
}

TEST(PinToPin, TheLatestReadingWinsWhereverItStandsInTheFile) {
  RigBuilder builder = with_path();
  Reading older = reading({2990});
  Reading newer = reading({2995});
  Reading mark_only;
  mark_only.mark = "red whipping";
  older.date = "2026-05-02";
  newer.date = "2026-05-09";
  mark_only.date = "2026-04-20";
  builder.rig.stays[0].readings = {newer, mark_only, older};
  const PinToPin result = pin_to_pin(builder.rig, builder.rig.stays[0]);
  EXPECT_NEAR(result.sum.known().millimetres(), 2995, 1e-9);
  EXPECT_EQ(term_name(builder.rig, result.sum.terms[0]), "one run");
  ASSERT_EQ(result.other_routes.size(), 2u);
  EXPECT_EQ(result.other_routes[0].other, LengthRoute::reading);
  EXPECT_EQ(result.other_routes[0].why, PassedOver::older);
  EXPECT_NEAR(result.other_routes[0].length.millimetres(), 2990, 1e-9);
  EXPECT_EQ(result.readings.contradiction(), nullptr);
}

TEST(PinToPin, RunsOfDifferentSourceMakeAComputedMean) {
  RigBuilder builder = with_path();
  Reading mixed = reading({3000, 3002});
  mixed.runs[1].provenance = assumed("second-run");
  builder.rig.stays[0].readings = {mixed};
  const PinToPin result = pin_to_pin(builder.rig, builder.rig.stays[0]);
  EXPECT_EQ(result.sum.terms[0].provenance.source_class, SourceClass::computed);
  EXPECT_EQ(result.sum.terms[0].provenance.assumptions, std::vector<std::string>{"second-run"});
}

TEST(PinToPin, IsXWhenOnlyAMarkExists) {
  RigBuilder builder;
  Stay made = stay("lanyard-shroud", builder.add(rope("rope", mm(9))), {line()});
  Reading messenger;
  messenger.method = ReadingMethod::messenger;
  messenger.mark = "red whipping";
  messenger.offset = sourced(mm(40));
  made.readings = {messenger};
  builder.add(made);
  const PinToPin result = pin_to_pin(builder.rig, builder.rig.stays[0]);
  EXPECT_EQ(result.route, LengthRoute::unknown);
  EXPECT_TRUE(result.sum.unknown);
  EXPECT_EQ(note_words(result.sum.unknown_source), "mark on the messenger: red whipping");
  EXPECT_EQ(sum_text(builder.rig, result.sum), "X - 40 mm");
  EXPECT_TRUE(result.other_routes.empty());
}

TEST(PinToPin, IsABareXWhenNothingExists) {
  RigBuilder builder;
  builder.add(stay("spare", builder.add(rope("rope", mm(9))), {line()}));
  const PinToPin result = pin_to_pin(builder.rig, builder.rig.stays[0]);
  EXPECT_TRUE(result.sum.unknown);
  EXPECT_EQ(sum_text(builder.rig, result.sum), "X");
}

} // namespace
} // namespace sheerpole::pin_to_pin_test
