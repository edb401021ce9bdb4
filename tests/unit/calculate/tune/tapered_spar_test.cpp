// A tapered spar, from the stations of its file to how it bends.

#include "calculate/tune/standing_at_dock.hpp"
#include "calculate/tune/tune_report.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/tune/changed_file.hpp"
#include "wording/say.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

namespace sheerpole::tapered_spar_test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

const std::string case_a = std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-a.rig";

/// A pole of 6 m built in at its heel, and one stay that pulls its head level, forward, from 20 m off.
std::string pole(const std::string& stiffness) {
  return "language 1\n"
         "spar mast {\n"
         "  sort: mast\n"
         "  heel: (0, 0, 1) m\n"
         "  length: 6 m\n"
         "  step: deck\n"
         "  hold: built-in\n"
         "  axial-stiffness: 100_000 kN\n"
         "  bending-stiffness-across: 300 kNm2\n" +
         stiffness +
         "points {\n"
         "  head: (0, 0, 7) m\n"
         "  post: (20, 0, 7) m\n"
         "}\n"
         "wire wire-4 {\n"
         "  construction: \"1x19\"\n"
         "  size: \"4 mm\"\n"
         "  stiffness: 1_030 kN\n"
         "}\n"
         "stay guy {\n"
         "  path: head > post\n"
         "  line: wire-4\n"
         "  dock-tension: 200 N\n"
         "  stack { line }\n"
         "}\n";
}

std::string station(const std::string& spar, const std::string& at, const std::string& stiffness) {
  return "spar-station of " + spar + " {\n  from-heel: " + at + "\n  " + stiffness + "\n}\n";
}

std::string bending(const std::string& value) {
  return "bending-stiffness: " + value;
}

struct Boat {
  Compilation compiled;
  TunedRig tuned;

  explicit Boat(Compilation made) : compiled(std::move(made)) {
    for (const Diagnostic& finding : compiled.findings)
      EXPECT_NE(finding.severity, Severity::error) << finding.slug << ": " << finding.message;
    if (compiled.derived)
      tuned = tuned_rig(*compiled.rig, *compiled.derived);
  }
  std::vector<std::string> in_the_way() const {
    std::vector<std::string> words;
    for (const TuneInput& input : tuned.model.inputs)
      if (input.value.empty())
        words.push_back(say(*compiled.rig, input.of) + ": " + input.property);
    for (const std::vector<Remark>& all : {tuned.model.lacking, tuned.trouble})
      for (const Remark& remark : all)
        words.push_back(say(*compiled.rig, remark));
    return words;
  }
  statics::Vector head() const { return tuned.state.moved_mm[tuned.model.spars.at(0).head.index()]; }
};

Boat boat_of(const std::string& text) {
  OneTextReader reader("boat.rig", text);
  return Boat(compile("boat.rig", reader));
}

/// EI falls evenly to half at the tip: the tip goes T l^3 / EI0 times the integral of (1 - u)^2 / (1 - u /
/// 2), which is 2 ln 2 - 1; of a spar alike all along it is 1/3. Source: the unit load, of textbooks of
/// strength of materials; the integral worked out here.
TEST(TaperedSpar, ACantileverOfAFileBendsAsTheClosedForm) {
  const Boat alike = boat_of(pole("  " + bending("200 kNm2") + "\n}\n"));
  const Boat tapered = boat_of(pole("}\n" + station("mast", "0 m", bending("200 kNm2")) +
                                    station("mast", "6 m", bending("100 kNm2"))));
  for (const auto& [boat, factor] : {std::pair(&alike, 1.0 / 3.0), {&tapered, 2.0 * std::log(2.0) - 1.0}}) {
    ASSERT_TRUE(boat->tuned.stands()) << testing::PrintToString(boat->in_the_way());
    const double newtons = boat->tuned.state.stays.at(0).tension_newtons;
    EXPECT_NEAR(newtons, 200.0, 1.0);
    const double expected = newtons * std::pow(6000.0, 3) / 200e9 * factor;
    EXPECT_NEAR(boat->head().x, expected, 0.002 * expected) << factor;
  }
}

/// Stations that all say the same are a spar that is alike all along; their order and their units do not
/// count.
TEST(TaperedSpar, StationsAlikeAreOneStiffness) {
  const Boat whole(test::with_changes(case_a, {}));
  const std::string same = "axial-stiffness: 112000 kN\n  bending-stiffness: 315 kNm2\n"
                           "  bending-stiffness-across: 175 kNm2\n  twisting-stiffness: 4900 kNm2";
  const Boat stations(test::with_changes(
      case_a, {{"  axial-stiffness: 112000 kN\n  bending-stiffness: 315 kNm2\n"
                "  bending-stiffness-across: 175 kNm2\n  twisting-stiffness: 4900 kNm2\n",
                ""},
               {"points {\n", station("mast", "0 ft", same) + station("mast", "12.0026 m", same) +
                                  station("mast", "5_000 mm", same) + "points {\n"}}));
  ASSERT_TRUE(whole.tuned.stands() && stations.tuned.stands())
      << testing::PrintToString(stations.in_the_way());
  for (std::size_t i = 0; i < whole.tuned.state.stays.size(); ++i) {
    const double tension = whole.tuned.state.stays[i].tension_newtons;
    EXPECT_NEAR(stations.tuned.state.stays[i].tension_newtons, tension, 2e-4 * tension);
  }
}

/// What one station does not state is asked for there, and no stiffness of another is taken.
TEST(TaperedSpar, AsksForWhatOneStationDoesNotState) {
  const Boat half = boat_of(pole("}\n" + station("mast", "0 m", bending("200 kNm2")) +
                                 station("mast", "6 m", "twisting-stiffness: 100 kNm2")));
  EXPECT_FALSE(half.tuned.stands());
  EXPECT_THAT(half.in_the_way(), Contains("mast at 6 m: bending-stiffness"));
  EXPECT_THAT(half.in_the_way(), Contains("mast at 0 m: twisting-stiffness"));
  const auto standing = standing_at_dock(*half.compiled.rig, *half.compiled.derived);
  ASSERT_TRUE(standing);
  for (const StandingAtDock::Missing& missing : standing->missing)
    if (missing.property == "bending-stiffness") {
      EXPECT_EQ(missing.place, half.compiled.rig->records.at(1).place);
    }
}

/// Beyond the stations nothing is stated, and nothing is taken there.
TEST(TaperedSpar, HasToReachFromTheHeelToTheHead) {
  const Boat low = boat_of(pole("}\n" + station("mast", "0 m", bending("200 kNm2")) +
                                station("mast", "5.5 m", bending("100 kNm2"))));
  EXPECT_THAT(low.in_the_way(), Contains(HasSubstr("none is at its head")));
  const Boat high = boat_of(pole("}\n" + station("mast", "0.5 m", bending("200 kNm2")) +
                                 station("mast", "6 m", bending("100 kNm2"))));
  EXPECT_THAT(high.in_the_way(), Contains(HasSubstr("none is at its heel")));
  const Boat one = boat_of(pole("}\n" + station("mast", "0 m", bending("200 kNm2"))));
  EXPECT_THAT(one.in_the_way(), Contains(HasSubstr("none is at its head")));
  // The finding offers the end itself for the place of the nearest station.
  bool offered = false;
  for (const Diagnostic& finding : low.compiled.findings)
    if (finding.slug == "tune-input-missing" && finding.edit) {
      offered = true;
      EXPECT_EQ(finding.edit->replacement, "6000 mm");
      EXPECT_FALSE(finding.edit->certain);
    }
  EXPECT_TRUE(offered);
}

/// The bound of one station moves what rests on it: half of EI's share at the heel of a cantilever. A bound
/// of b on EI at the heel and none at the head: the first order by the difference of two boats.
TEST(TaperedSpar, EachStationsBoundIsInTheDoubt) {
  const auto with_heel = [](const std::string& heel) {
    return boat_of(
        pole("}\n" + station("mast", "0 m", bending(heel)) + station("mast", "6 m", bending("100 kNm2"))));
  };
  const Boat now = with_heel("200 kNm2 ± 10 kNm2");
  ASSERT_TRUE(now.tuned.stands());
  const TuneReport report = tune_report(*now.compiled.rig, *now.compiled.derived);
  ASSERT_EQ(report.doubt.inputs, 1u);
  const double up = with_heel("210 kNm2").head().x, down = with_heel("190 kNm2").head().x;
  std::size_t looked = 0;
  for (std::size_t q = 0; q < report.tuned.quantities.size(); ++q)
    if (report.tuned.quantities[q].kind == TuneQuantity::Kind::head_aft) {
      ++looked;
      // Rectangular: 1.96 times the bound over the root of 3 (JCGM 100:2008, 4.3.7).
      EXPECT_NEAR(report.doubt.of_value[q].expanded, 1.96 * 0.5 * (down - up) / std::sqrt(3.0), 0.2);
      EXPECT_GT(report.doubt.of_value[q].expanded, 0.5);
    }
  EXPECT_EQ(looked, 1u);
  // The place of a station has its bound too.
  const Boat place = boat_of(pole("}\n" + station("mast", "0 m", bending("200 kNm2")) +
                                  station("mast", "3 m ± 100 mm", bending("190 kNm2")) +
                                  station("mast", "6 m", bending("100 kNm2"))));
  ASSERT_TRUE(place.tuned.stands()) << testing::PrintToString(place.in_the_way());
  EXPECT_EQ(tune_report(*place.compiled.rig, *place.compiled.derived).doubt.inputs, 1u);
}

/// A stiffness of nothing at one station is said, and no number comes of it.
TEST(TaperedSpar, AStationOfNothingIsSaid) {
  const Boat none = boat_of(pole("}\n" + station("mast", "0 m", bending("200 kNm2")) +
                                 station("mast", "6 m", bending("0 kNm2"))));
  EXPECT_FALSE(none.tuned.stands());
  EXPECT_THAT(none.in_the_way(), Contains(HasSubstr("a stiffness of mast is nothing")));
}

/// A topmast stands on a mast: whatever its sort says, no number comes of it, and it is said which two.
TEST(StackedSpars, ATopmastIsNotWorkedWith) {
  const std::string upper = "  heel: (-0.220, 0.000, 12.050) m\n"
                            "  axis: (-0.250, 0.000, 12.000) m\n"
                            "  length: 5 m\n"
                            "  hold: built-in\n"
                            "  axial-stiffness: 60000 kN\n"
                            "  bending-stiffness: 100 kNm2\n"
                            "  bending-stiffness-across: 80 kNm2\n"
                            "}\n"
                            "points on upper {\n  truck: (0, 0, 5) m\n}\n"
                            "stay truck-stay {\n"
                            "  path: truck > stem\n"
                            "  line: line-2\n"
                            "  taken-up: 5 mm\n"
                            "  stack { line }\n"
                            "}\n";
  for (const char* sort : {"topmast\n", "mast\n  step: deck\n", "mizzen\n  step: deck\n"}) {
    const Boat made(test::with_changes(
        case_a,
        {{"tang tang-1 { }", "spar upper {\n  sort: " + std::string(sort) + upper + "tang tang-1 { }"}}));
    EXPECT_FALSE(made.tuned.stands()) << sort;
    EXPECT_THAT(made.in_the_way(), Contains(HasSubstr("upper stands on mast"))) << sort;
  }
}

/// While nobody says how a spreader's root holds it, nobody knows which stiffness is needed.
TEST(StackedSpars, ASpreaderWithoutDroopIsAskedForThatAlone) {
  const Boat made(test::with_changes(case_a, {{"  droop: hinged\n", ""}}));
  EXPECT_THAT(made.in_the_way(),
              testing::UnorderedElementsAre("spreader.port: droop", "spreader.starboard: droop"));
  const Boat neither(test::with_changes(case_a, {{"  droop: hinged\n", ""}, {"  hold: swinging\n", ""}}));
  EXPECT_THAT(neither.in_the_way(),
              testing::UnorderedElementsAre("spreader.port: droop", "spreader.starboard: droop",
                                            "spreader.port: hold", "spreader.starboard: hold"));
}

} // namespace
} // namespace sheerpole::tapered_spar_test
