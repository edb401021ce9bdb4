// What turns do, which turns are planned, and what the slip may be.

#include "calculate/tune/standing_at_dock.hpp"
#include "calculate/tune/tune_report.hpp"
#include "calculate/uncertainty/random_numbers.hpp"
#include "unit/calculate/tune/changed_file.hpp"
#include "wording/say.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace sheerpole::turns_test {
namespace {

using testing::HasSubstr;

const std::string larkwhin = std::string(SHEERPOLE_EXAMPLES_DIR) + "/larkwhin.rig";
const std::string case_a = std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-a.rig";

class Turns : public testing::Test {
protected:
  const TuneReport& work_out(const std::string& path, test::Replacements changes = {}) {
    compiled_ = test::with_changes(path, std::move(changes));
    for (const Diagnostic& finding : compiled_.findings)
      EXPECT_NE(finding.severity, Severity::error) << finding.slug << ": " << finding.message;
    report_ = tune_report(rig(), *compiled_.derived);
    EXPECT_TRUE(report_.tuned.stands());
    return report_;
  }
  const Rig& rig() const { return *compiled_.rig; }
  std::size_t stay(const std::string& name) const {
    for (std::size_t i = 0; i < report_.tuned.model.stays.size(); ++i)
      if (rig()[report_.tuned.model.stays[i].stay].name == name)
        return i;
    ADD_FAILURE() << name;
    return 0;
  }
  const TurnEffect& effect(const std::string& name, std::size_t sides = 1) const {
    for (const TurnEffect& one : report_.effects)
      if (one.turned.stays.size() == sides && one.turned.stays.front() == stay(name))
        return one;
    throw std::runtime_error("nothing is turned on " + name);
  }

  Compilation compiled_;
  TuneReport report_;
};

/// The design's warning: on a port forward lower one millimetre gave +144 N there and +207 N on the
/// starboard aft lower (tests/reference/statics, case A).
TEST_F(Turns, AStaysOwnChangeNeedNotBeTheGreatest) {
  work_out(case_a);
  const TurnEffect& turned = effect("lower-fwd.port");
  EXPECT_GT(turned.change[stay("lower-aft.starboard")], turned.change[stay("lower-fwd.port")]);
}

TEST_F(Turns, BothSidesTogetherMoveTheHeadNoWayAthwart) {
  work_out(larkwhin);
  for (std::size_t q = 0; q < report_.tuned.quantities.size(); ++q)
    if (report_.tuned.quantities[q].kind == TuneQuantity::Kind::head_starboard) {
      EXPECT_NEAR(effect("cap-shroud.port", 2).change[q], 0.0, 1e-4);
      EXPECT_NEAR(effect("cap-shroud.starboard").change[q], -effect("cap-shroud.port").change[q], 1e-4);
    }
}

/// What is said of a plan is so: the settings put back, from the drawn rig, give the wishes.
TEST_F(Turns, APlanPutBackGivesTheWish) {
  work_out(larkwhin);
  const TurnPlanning& planning = report_.planning;
  ASSERT_EQ(planning.plan.outcome, statics::PlanOutcome::reached);
  ASSERT_TRUE(planning.steps);
  EXPECT_FALSE(planning.steps->empty());
  std::vector<double> lengths = report_.tuned.state.unstressed_mm;
  for (std::size_t k = 0; k < planning.screws.size(); ++k) {
    EXPECT_NEAR(std::remainder(planning.plan.turns[k], 0.5), 0.0, 1e-12);
    const std::vector<double> taken = taken_by(report_.tuned, planning.screws[k], planning.plan.turns[k]);
    for (std::size_t i = 0; i < lengths.size(); ++i)
      lengths[i] -= taken[i];
  }
  const statics::State state = report_.tuned.solver->settle(lengths);
  ASSERT_EQ(state.outcome, statics::Outcome::equilibrium);
  const std::vector<double> values = report_.tuned.values(state);
  for (std::size_t i = 0; i < planning.wishes.size(); ++i) {
    const TuneWish& wish = planning.wishes[i];
    const bool tension = report_.tuned.quantities[wish.quantity].kind == TuneQuantity::Kind::tension;
    EXPECT_NEAR(values[wish.quantity], planning.plan.values[i], tension ? 0.02 * wish.value : 1.0);
    EXPECT_LE(std::abs(values[wish.quantity] - wish.value), wish.within + 1e-3);
  }
}

TEST_F(Turns, SaysWhichThreadStopsAWish) {
  work_out(larkwhin, {{"tension: 17 % ± 0.5 %", "tension: 22 % ± 1 %"}, {"(open: 50 %)", "(open: 2 %)"}});
  EXPECT_EQ(report_.planning.plan.outcome, statics::PlanOutcome::not_reached);
  EXPECT_FALSE(report_.planning.plan.unmet.empty());
  const auto& at_end = report_.planning.plan.at_end;
  EXPECT_TRUE(std::ranges::any_of(at_end, [&](std::size_t k) {
    return std::ranges::find(report_.planning.screws[k].stays, stay("cap-shroud.port")) !=
           report_.planning.screws[k].stays.end();
  }));
}

TEST_F(Turns, NoWishIsNoPlan) {
  work_out(case_a);
  EXPECT_TRUE(report_.planning.wishes.empty());
}

/// Readings as case A stands, but the backstay is stated one turn (3.5 mm) short.
TEST_F(Turns, FindTheTurnThatWasMiscounted) {
  const std::string readings = "\n"
                               "tension-reading of forestay { tension: 5.442 kN ± 0.05 kN }\n"
                               "tension-reading of backstay { tension: 4.304 kN ± 0.05 kN }\n"
                               "tension-reading of cap { tension: 6.551 kN ± 0.05 kN }\n"
                               "tension-reading of lower-fwd { tension: 1.765 kN ± 0.05 kN }\n"
                               "tension-reading of lower-aft { tension: 1.870 kN ± 0.05 kN }\n"
                               "tang tang-1 { }";
  const test::Replacements as_read{{"tang tang-1 { }", readings}};
  work_out(case_a, as_read);
  for (const TuneSlip& slip : report_.slips)
    EXPECT_TRUE(slip.likeliest.empty()) << say(rig(), slip.likeliest.front());
  test::Replacements miscounted = as_read;
  miscounted.push_back({"  taken-up: 24 mm\n", "  taken-up: 20.5 mm\n"});
  work_out(case_a, miscounted);
  for (const TuneSlip& slip : report_.slips) {
    if (slip.stay != stay("backstay"))
      continue;
    ASSERT_EQ(slip.likeliest.size(), 1u);
    EXPECT_EQ(say(rig(), slip.likeliest.front()), "turns miscounted: it stands as with 1 more");
  }
}

/// One screw of case A turned once more or once less than is stated, the tensions of that state as the
/// readings of both sides: the slip that is told is the one that was put in. Turns of one cap move the
/// other as well, so tensions tell only that it is one of the two.
TEST_F(Turns, NameTheSlipThatWasPutIn) {
  struct PutIn {
    const char* stay;
    double turns;
    std::vector<std::string> told;
  };
  const PutIn all[] = {{"lower-fwd.starboard", 1.0, {"lower-fwd.starboard"}},
                       {"lower-fwd.port", -1.0, {"lower-fwd.port"}},
                       {"lower-aft.port", 1.0, {"lower-aft.port"}},
                       {"backstay", 2.0, {"backstay"}},
                       {"forestay", -2.0, {"forestay"}},
                       {"cap.port", 1.0, {"cap.port", "cap.starboard"}}};
  for (const PutIn& put_in : all) {
    SCOPED_TRACE(put_in.stay);
    work_out(case_a);
    const TurnedStays turned{{stay(put_in.stay)}};
    const statics::State state = state_with(report_.tuned, taken_by(report_.tuned, turned, put_in.turns));
    ASSERT_EQ(state.outcome, statics::Outcome::equilibrium);
    const std::vector<double> values = report_.tuned.values(state);
    std::string readings;
    for (std::size_t i = 0; i < report_.tuned.model.stays.size(); ++i)
      readings += "tension-reading of " + rig()[report_.tuned.model.stays[i].stay].name +
                  " { tension: " + std::to_string(values[i] / 1000.0) + " kN ± 0.03 kN }\n";
    work_out(case_a, {{"tang tang-1 { }", readings + "tang tang-1 { }"}});
    std::vector<std::string> told;
    for (const TuneSlip& slip : report_.slips)
      if (!slip.likeliest.empty()) {
        told.push_back(rig()[report_.tuned.model.stays[slip.stay].stay].name);
        if (told.back() == put_in.stay) {
          EXPECT_EQ(say(rig(), slip.likeliest.front()),
                    "turns miscounted: it stands as with " +
                        std::to_string(static_cast<int>(std::abs(put_in.turns))) +
                        (put_in.turns > 0.0 ? " more" : " fewer"));
        }
      }
    EXPECT_EQ(told, put_in.told);
  }
}

/// A boat that was read, turned and read again: what was read before the turns is of another state, so it
/// neither moves a tension nor hides the slip.
TEST_F(Turns, AReadingOfBeforeTheTurnsIsLeftOut) {
  work_out(std::string(SHEERPOLE_EXAMPLES_DIR) + "/larkwhin-turned.rig");
  std::size_t left_out = 0;
  for (const Remark& note : report_.tuned.model.notes)
    if (note.is(TunePhrase::earlier_reading))
      ++left_out;
  EXPECT_EQ(left_out, report_.tuned.model.stays.size());
  for (const TuneSlip& slip : report_.slips) {
    const std::string& name = rig()[report_.tuned.model.stays[slip.stay].stay].name;
    if (name == "cap-shroud.port") {
      EXPECT_NEAR(slip.read_newtons, 7400.0, 1e-6);
    }
    if (name != "fore-lower.starboard") {
      EXPECT_TRUE(slip.likeliest.empty()) << name;
      continue;
    }
    ASSERT_EQ(slip.likeliest.size(), 1u);
    EXPECT_EQ(say(rig(), slip.likeliest.front()), "turns miscounted: it stands as with 1 more");
  }
}

TEST_F(Turns, EachBoundMovesWhatRestsOnIt) {
  work_out(larkwhin);
  EXPECT_GT(report_.doubt.inputs, 5u);
  // The reading of the caps is ± 0.3 kN, and it alone says what they pull with: evenly within that bound,
  // its standard deviation is 0.3 kN / sqrt 3, and 95 % of draws are within 0.95 of it (JCGM 100:2008,
  // 4.3.7).
  const TuneRange& caps = report_.doubt.of_value[stay("cap-shroud.port")];
  EXPECT_NEAR(caps.expanded, 1.96 * 300.0 / std::sqrt(3.0), 60.0);
  EXPECT_NEAR(caps.drawn_high, 0.95 * 300.0, 60.0);
  EXPECT_NEAR(caps.drawn_low, -caps.drawn_high, 20.0);
  EXPECT_GE(caps.worst_high, caps.drawn_high);
  EXPECT_LE(caps.worst_low, caps.drawn_low);
  EXPECT_EQ(report_.doubt.of_change.size(), report_.effects.size());
  work_out(case_a);
  EXPECT_EQ(report_.doubt.inputs, 0u);
}

/// The draws are of a series. Here the rig itself is fitted and worked out anew with all inputs drawn
/// together, each evenly within its bound: its spread is that of the series, as well as 60 draws tell it.
TEST_F(Turns, DrawsSpreadAsTheRigItselfDoes) {
  work_out(larkwhin);
  const TuneDoubt again = tune_doubt(rig(), *compiled_.derived, report_.tuned, {});
  RandomStream stream(7, 0, 0);
  std::vector<double> sums(report_.tuned.quantities.size(), 0.0), squares = sums;
  constexpr int draws = 60;
  for (int draw = 0; draw < draws; ++draw) {
    MovedBounds moved;
    for (const BoundId bound : report_.tuned.model.bounds)
      moved.push_back({bound, 2.0 * stream.uniform() - 1.0});
    const TunedRig other = tuned_rig(rig(), *compiled_.derived, moved);
    ASSERT_TRUE(other.stands());
    const std::vector<double> values = other.values(other.state);
    for (std::size_t q = 0; q < values.size(); ++q) {
      sums[q] += values[q];
      squares[q] += values[q] * values[q];
    }
  }
  for (const char* name : {"cap-shroud.port", "forestay", "fore-lower.port"}) {
    const std::size_t q = stay(name);
    const double spread = std::sqrt((squares[q] - sums[q] * sums[q] / draws) / (draws - 1));
    EXPECT_NEAR(again.of_value[q].expanded / 1.96, spread, 0.3 * spread) << name;
    // The same seed makes the same draws.
    EXPECT_EQ(again.of_value[q].drawn_low, report_.doubt.of_value[q].drawn_low);
  }
}

/// On a cold day steel on an aluminium mast is slacker.
TEST_F(Turns, ColdSlackensWireOnAnAluminiumMast) {
  work_out(larkwhin);
  ASSERT_GE(report_.later.size(), 3u);
  const std::vector<double> now = report_.tuned.values(report_.tuned.state);
  EXPECT_LT(report_.later[0].values[stay("cap-shroud.port")], now[stay("cap-shroud.port")] - 100.0);
  EXPECT_GT(report_.later[1].values[stay("cap-shroud.port")], now[stay("cap-shroud.port")] + 100.0);
}

} // namespace
} // namespace sheerpole::turns_test
