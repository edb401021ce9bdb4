// From what a file states to how the rig stands: what is lacking is named, what is absurd is said, and what
// is worked out is finite.

#include "calculate/tune/standing_at_dock.hpp"
#include "calculate/tune/tune_report.hpp"
#include "unit/calculate/tune/changed_file.hpp"
#include "wording/say.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace sheerpole::tuned_rig_test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

const std::string larkwhin = std::string(SHEERPOLE_EXAMPLES_DIR) + "/larkwhin.rig";
const std::string case_a = std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-a.rig";
const std::string case_g = std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-g.rig";

struct Boat {
  Compilation compiled;
  TunedRig tuned;

  std::vector<std::string> in_the_way() const {
    std::vector<std::string> words;
    for (const TuneInput& input : tuned.model.inputs)
      if (input.value.empty())
        words.push_back(say(*compiled.rig, input.of) + ": " + input.property);
    for (const Remark& remark : tuned.model.lacking)
      words.push_back(say(*compiled.rig, remark));
    for (const Remark& remark : tuned.trouble)
      words.push_back(say(*compiled.rig, remark));
    return words;
  }
  double tension(const std::string& stay) const {
    for (const TuneStay& one : tuned.model.stays)
      if ((*compiled.rig)[one.stay].name == stay)
        return tuned.state.stays[one.at_deck().index()].tension_newtons;
    ADD_FAILURE() << stay;
    return 0.0;
  }
};

Boat boat(const std::string& path, test::Replacements changes = {}) {
  Boat result{test::with_changes(path, std::move(changes)), {}};
  for (const Diagnostic& finding : result.compiled.findings)
    EXPECT_NE(finding.severity, Severity::error) << finding.slug << ": " << finding.message;
  if (result.compiled.rig && result.compiled.derived)
    result.tuned = tuned_rig(*result.compiled.rig, *result.compiled.derived);
  return result;
}

TEST(TunedRig, NamesEachStiffnessAndHoldThatIsNotStated) {
  const std::vector<std::pair<std::string, std::string>> left_out{
      {"  hold: pinned\n", "mast: hold"},
      {"  axial-stiffness: 112000 kN\n", "mast: axial-stiffness"},
      {"  bending-stiffness: 315 kNm2\n", "mast: bending-stiffness"},
      {"  bending-stiffness-across: 175 kNm2\n", "mast: bending-stiffness-across"},
      {"  hold: swinging\n", "spreader.port: hold"},
      {"  droop: hinged\n", "spreader.starboard: droop"},
      {"  step: deck\n", "mast: step"},
      {"  seized: slack\n", "cap.port: seized"},
  };
  for (const auto& [line, name] : left_out) {
    const Boat made = boat(case_a, {{line, ""}});
    EXPECT_FALSE(made.tuned.stands()) << line;
    EXPECT_THAT(made.in_the_way(), Contains(name)) << line;
  }
  const Boat keel = boat(case_a, {{"  step: deck\n", "  step: keel\n"}});
  EXPECT_THAT(keel.in_the_way(), Contains("mast: partners"));
  const Boat fixed =
      boat(case_a, {{"  hold: swinging\n", "  hold: fixed\n"}, {"  twisting-stiffness: 4900 kNm2\n", ""}});
  EXPECT_THAT(fixed.in_the_way(), Contains("mast: twisting-stiffness"));
  EXPECT_THAT(fixed.in_the_way(), Contains("spreader.port: bending-stiffness"));
}

TEST(TunedRig, NamesTheLineAndTheStayOfWhichNothingIsKnown) {
  EXPECT_THAT(boat(larkwhin, {{"  stiffness: 4_140 kN ± 200 kN maker \"invented\"\n", ""}}).in_the_way(),
              Contains("tuned-wire-8: stiffness"));
  EXPECT_THAT(boat(case_a, {{"  taken-up: 16.5 mm\n", ""}}).in_the_way(),
              Contains("of forestay neither taken-up nor a tension-reading nor dock-tension is stated"));
}

// Nobody's rig has so many stays, and they would be solved for minutes.
TEST(TunedRig, OfTooManyStaysIsNotWorkedOut) {
  std::string stays;
  for (int i = 0; i < 100; ++i)
    stays += "stay more-" + std::to_string(i) + " from forestay {\n}\n";
  const Boat made = boat(case_a, {{"stay forestay {\n", stays + "stay forestay {\n"}});
  EXPECT_FALSE(made.tuned.stands());
  EXPECT_THAT(made.in_the_way(), Contains(HasSubstr("more than 96 are not worked out")));
}

/// Turns are lengths: 4 turns of an M12 pair, pitch 1.75 mm, are 14 mm.
TEST(TunedRig, TakesTurnsForWhatTheirScrewTakes) {
  const Boat by_length = boat(case_a, {{"taken-up: 16.5 mm", "taken-up: 14 mm"}});
  const Boat by_turns = boat(case_a, {{"taken-up: 16.5 mm", "taken-up: 4 turns"}});
  ASSERT_TRUE(by_length.tuned.stands() && by_turns.tuned.stands());
  EXPECT_NEAR(by_turns.tension("forestay"), by_length.tension("forestay"), 1e-6);
}

/// The lines of G run free over their tips. Seized under that tension, they pull as before.
TEST(TunedRig, ALineSeizedUnderTensionPullsAsItDidFree) {
  const Boat free = boat(case_g);
  const Boat seized = boat(case_g, {{"tip free > chain\n", "tip clamped > chain\n"},
                                    {"  line: line-2\n", "  line: line-2\n  seized: under-tension\n"}});
  ASSERT_TRUE(free.tuned.stands());
  ASSERT_TRUE(seized.tuned.stands()) << testing::PrintToString(seized.in_the_way());
  for (const char* stay : {"forestay", "backstay", "cap.port", "lower-fwd.starboard"})
    EXPECT_NEAR(seized.tension(stay), free.tension(stay), 0.01) << stay;
}

/// Give in a row with the line: 0.2 mm/kN and a line of EA 4140 kN over 12.7 m, 3.07 mm/kN. The forestay
/// alone gives, so it pulls less and what it holds moves.
TEST(TunedRig, AHullThatGivesTakesTension) {
  const Boat stiff = boat(case_a);
  const Boat gives = boat(case_a, {{"  taken-up: 16.5 mm\n", "  taken-up: 16.5 mm\n  gives: 0.2 mm/kN\n"}});
  ASSERT_TRUE(stiff.tuned.stands() && gives.tuned.stands());
  EXPECT_LT(gives.tension("forestay"), stiff.tension("forestay") - 100.0);
}

TEST(TunedRig, StandsAsItWasRead) {
  const Boat made = boat(larkwhin);
  ASSERT_TRUE(made.tuned.stands());
  EXPECT_NEAR(made.tension("forestay"), 5400.0, 300.0);
  EXPECT_NEAR(made.tension("cap-shroud.port"), 6400.0, 60.0);
  EXPECT_NEAR(made.tension("cap-shroud.port"), made.tension("cap-shroud.starboard"), 1e-3);
  EXPECT_THAT(made.tuned.model.draft, IsEmpty());
}

TEST(TunedRig, IsADraftByDockTensionOrAssumption) {
  const Boat dock = boat(case_a, {{"  taken-up: 16.5 mm\n", "  dock-tension: 5.4 kN\n"}});
  ASSERT_TRUE(dock.tuned.stands());
  EXPECT_NEAR(dock.tension("forestay"), 5400.0, 20.0);
  EXPECT_EQ(dock.tuned.model.draft.size(), 1u);
  const Boat assumed = boat(case_a, {{"315 kNm2", "315 kNm2 assumed"}});
  ASSERT_TRUE(assumed.tuned.stands());
  EXPECT_EQ(say(*assumed.compiled.rig, assumed.tuned.model.draft.at(0)),
            "bending-stiffness of mast is assumed");
}

/// Whatever is stated, no number that is told is anything but finite.
TEST(TunedRig, SaysWhatIsAbsurd) {
  const std::vector<test::Replacements> absurd{
      {{"stiffness: 4140 kN", "stiffness: 1 N"}},
      {{"stiffness: 4140 kN", "stiffness: 1_000_000_000_000 N"}},
      {{"axial-stiffness: 112000 kN", "axial-stiffness: 1 N"}},
      {{"bending-stiffness: 315 kNm2", "bending-stiffness: 0 kNm2"}},
      {{"bending-stiffness: 315 kNm2", "bending-stiffness: 0.000_000_1 kNm2"}},
      {{"bending-stiffness: 315 kNm2", "bending-stiffness: 1_000_000_000 kNm2"}},
      {{"taken-up: 16.5 mm", "taken-up: 1000 mm"}},
      {{"taken-up: 16.5 mm", "taken-up: -1000 mm"}},
      {{"taken-up: 16.5 mm", "taken-up: -100 turns"}},
      {{"taken-up: 16.5 mm", "taken-up: 0 mm"}},
      {{"taken-up: 16.5 mm", "dock-tension: 5_000 kN"}},
      {{"taken-up: 16.5 mm", "gives: 1_000_000 mm/kN\n  taken-up: 16.5 mm"}},
      {{"clamped", "free"}, {"  seized: slack\n", ""}}, // on a spreader that droops: it runs off
      {{"seized: slack", "seized: under-tension"}},
      {{"hold: pinned", "hold: built-in\n  gives: 1_000_000 mm/kN"}},
  };
  for (const test::Replacements& changes : absurd) {
    const Boat made = boat(case_a, changes);
    SCOPED_TRACE(changes.front().second);
    if (!made.tuned.stands()) {
      EXPECT_THAT(made.in_the_way(), Not(IsEmpty()));
      for (const std::string& words : made.in_the_way())
        EXPECT_THAT(words, Not(HasSubstr("nan")));
      continue;
    }
    const TuneReport report = tune_report(*made.compiled.rig, *made.compiled.derived);
    for (const double value : report.tuned.values(report.tuned.state))
      EXPECT_TRUE(std::isfinite(value));
    for (const TurnEffect& effect : report.effects)
      for (const double change : effect.change)
        EXPECT_TRUE(std::isfinite(change));
    for (const TuneLater& later : report.later)
      for (const double value : later.values)
        EXPECT_TRUE(std::isfinite(value));
  }
}

/// A boat of which nothing of her tune is stated is not looked at; dock tensions and tensions that were
/// read serve other checks as well.
TEST(StandingAtDock, IsAskedForByWhatTheFileStates) {
  for (const char* name : {"grisolde", "oddnys-wager", "sallow", "pellimoor", "tansyholm", "skirlpool"}) {
    const Compilation compiled =
        test::with_changes(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", {});
    ASSERT_TRUE(compiled.derived) << name;
    EXPECT_FALSE(standing_at_dock(*compiled.rig, *compiled.derived)) << name;
  }
  const Compilation compiled = test::with_changes(case_a, {});
  const auto standing = standing_at_dock(*compiled.rig, *compiled.derived);
  ASSERT_TRUE(standing);
  EXPECT_TRUE(standing->stands());
  EXPECT_EQ(standing->stays.size(), 8u);
}

/// What is stated once for both sides is asked for once.
TEST(StandingAtDock, AsksForEachThingOnce) {
  const Compilation compiled =
      test::with_changes(case_a, {{"  axial-stiffness: 28000 kN\n", ""}, {"  stiffness: 4140 kN\n", ""}});
  ASSERT_TRUE(compiled.derived);
  const auto standing = standing_at_dock(*compiled.rig, *compiled.derived);
  ASSERT_TRUE(standing);
  std::vector<std::string> asked;
  for (const StandingAtDock::Missing& missing : standing->missing)
    asked.push_back(say(*compiled.rig, missing.of) + ": " + missing.property);
  EXPECT_THAT(asked, testing::UnorderedElementsAre("spreader.port: axial-stiffness", "line-1: stiffness"));
}

/// Turns of a metre, and adjusters run out to their ends: each row says what it does, or why it cannot be
/// told.
TEST(TunedRig, ATurnOfAMetreIsSaid) {
  Boat made = boat(case_a);
  for (TuneStay& stay : made.tuned.model.stays)
    stay.step_mm = 1000.0;
  ASSERT_TRUE(made.tuned.stands());
  for (const TurnEffect& effect : turn_effects(*made.compiled.rig, made.tuned)) {
    EXPECT_TRUE(effect.beyond_thread);
    EXPECT_TRUE(!effect.trouble.empty() || !effect.went_slack.empty() || !effect.change.empty());
    for (const double change : effect.change)
      EXPECT_TRUE(std::isfinite(change));
  }
}

TEST(TunedRig, SaysWhatIsLoose) {
  const Boat free = boat(case_a, {{"clamped", "free"}, {"  seized: slack\n", ""}});
  ASSERT_FALSE(free.tuned.stands());
  EXPECT_THAT(free.in_the_way(), Contains(HasSubstr("droop")));
}

} // namespace
} // namespace sheerpole::tuned_rig_test
