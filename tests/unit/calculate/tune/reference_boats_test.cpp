// The boats of tests/reference/statics as rig files, through the whole compiler: what is written in the
// language comes to the tensions that CalculiX and another solver found (README.md there).

#include "calculate/tune/tuned_rig.hpp"
#include "calculate/tune/turn_effects.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <string>

namespace sheerpole::reference_boats_test {
namespace {

using nlohmann::json;

const std::string folder = std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/";

class BoatOfReference : public testing::TestWithParam<const char*> {
protected:
  BoatOfReference() {
    std::ifstream file(folder + GetParam() + ".json");
    json_ = json::parse(file);
    DiskFileReader reader;
    compiled_ = compile(folder + GetParam() + ".rig", reader);
    for (const Diagnostic& finding : compiled_.findings)
      EXPECT_NE(finding.severity, Severity::error) << finding.slug << ": " << finding.message;
    if (compiled_.rig && compiled_.derived)
      tuned_ = tuned_rig(*compiled_.rig, *compiled_.derived);
    for (const Remark& remark : tuned_.model.lacking)
      ADD_FAILURE() << say(*compiled_.rig, remark);
    for (const Remark& remark : tuned_.trouble)
      ADD_FAILURE() << say(*compiled_.rig, remark);
  }

  /// "cap-s" is "cap.starboard" in the rig file.
  const TuneStay& stay(const std::string& name) const {
    std::string own = name;
    if (own.ends_with("-s"))
      own = own.substr(0, own.size() - 2) + ".starboard";
    else if (own.ends_with("-p"))
      own = own.substr(0, own.size() - 2) + ".port";
    for (const TuneStay& one : tuned_.model.stays)
      if ((*compiled_.rig)[one.stay].name == own)
        return one;
    throw std::runtime_error("no stay " + own);
  }

  void stands_as(const char* results) const {
    const json& others = json_.at(results);
    for (const auto& [name, legs] : others.at("tensions_N").items()) {
      const TuneStay& one = stay(name);
      const bool free = one.legs.size() == 1;
      for (std::size_t i = 0; i < one.legs.size(); ++i) {
        const double expected = legs.at(free ? legs.size() - 1 : i).get<double>();
        EXPECT_NEAR(tuned_.state.stays[one.legs[i].index()].tension_newtons, expected,
                    std::max(0.5, 0.002 * expected))
            << results << " " << name << " leg " << i;
      }
    }
    const json& moves = others.at("displacements_mm");
    for (const TuneSpar& spar : tuned_.model.spars) {
      // The head of the first mast is the masthead, that of another spar its highest fitting.
      const std::string head = &spar == &tuned_.model.spars.front()
                                   ? "masthead"
                                   : (*compiled_.rig)[spar.fittings.back().first].base;
      if (!moves.contains(head))
        continue;
      const statics::Vector moved = tuned_.state.moved_mm[spar.head.index()];
      EXPECT_NEAR(moved.x, moves.at(head)[0].get<double>(), 0.05) << head;
      EXPECT_NEAR(moved.y, moves.at(head)[1].get<double>(), 0.05) << head;
    }
  }

  json json_;
  Compilation compiled_;
  TunedRig tuned_;
};

TEST_P(BoatOfReference, StandsAsTheOthersSay) {
  ASSERT_TRUE(tuned_.stands());
  for (const char* results : {"results", "results_calculix"})
    if (json_.contains(results))
      stands_as(results);
}

/// The table of turns is worked out, not of the tangent: a hundredth of a turn by the recorded influence.
TEST_P(BoatOfReference, OneTurnDoesAboutWhatTheInfluenceSays) {
  ASSERT_TRUE(tuned_.stands());
  const std::vector<double> now = tuned_.values(tuned_.state);
  for (const auto& [name, row] : json_.at("influence").items()) {
    const TuneStay& turned = stay(name);
    const auto number = static_cast<std::size_t>(&turned - tuned_.model.stays.data());
    ASSERT_TRUE(turned.by_turns);
    EXPECT_NEAR(turned.step_mm, 3.5, 1e-9) << "M12, a pair";
    const double turns = 0.1 / turned.step_mm;
    const statics::State state = state_with(tuned_, taken_by(tuned_, {{number}}, turns));
    const std::vector<double> after = tuned_.values(state);
    for (const auto& [other, legs] : row.at("tensions_N_per_mm").items()) {
      const auto q = static_cast<std::size_t>(&stay(other) - tuned_.model.stays.data());
      const double expected = 0.1 * legs.back().get<double>();
      EXPECT_NEAR(after[q] - now[q], expected, std::max(0.1, 0.01 * std::abs(expected)))
          << name << " on " << other;
    }
  }
}

/// A ketch with a tapered mast, a springstay between her masts and a bowsprit.
class KetchOfReference : public BoatOfReference {};

TEST_P(KetchOfReference, StandsAsCalculixSays) {
  ASSERT_TRUE(tuned_.stands());
  ASSERT_EQ(tuned_.model.spars.size(), 3u);
  stands_as("results_calculix");
}

INSTANTIATE_TEST_SUITE_P(Tune, KetchOfReference, testing::Values("case-d"));

INSTANTIATE_TEST_SUITE_P(Tune, BoatOfReference, testing::Values("case-a", "case-b", "case-c", "case-g"),
                         [](const auto& boat) { return std::string(1, std::string(boat.param).back()); });

} // namespace
} // namespace sheerpole::reference_boats_test
