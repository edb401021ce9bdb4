#include "calculate/adjust/state_lengths.hpp"
#include "rules/check_table.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/adjuster_phrases.hpp"

/// What stays do in the states of the rig: made off elsewhere, or while a spar is lowered.
namespace sheerpole::state_checks {

namespace {

using P = AdjusterCheckPhrase;

void check_stowed_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const StowedStay& stowed : stowed_stays(rig, derived)) {
    const State& state = rig.states[stowed.state];
    const StatePosition& position = state.positions[stowed.position];
    const std::string& stay = rig[stowed.stay].name;
    const auto left = stowed.left();
    if (!left)
      report.not_checked(stay, {P::stowed_is_x, {Words{state.name}}});
    else if (*left < -threshold::negligible)
      report.find(diagnose(report.check(), {{"stay", stay},
                                            {"state", state.name},
                                            {"point", rig[*position.stowed_at].name},
                                            {"needs", length_text(stowed.needs)},
                                            {"has", length_text(*stowed.has)},
                                            {"short", length_text(-*left)}})
                      .at(position.place)
                      .about(stay));
    else
      report.pass(stay, passed(report.check(), {{"state", state.name}, {"left", length_text(*left)}}));
  }
}

void check_lowered_tight(const Rig& rig, const Derived& derived, CheckReport& report) {
  const Length most = *rig.limits.length(Limit::lowered_tight);
  for (const LoweredStay& lowered : lowered_stays(rig, derived)) {
    const State& state = rig.states[lowered.state];
    const std::string& stay = rig[lowered.stay].name;
    const std::string angle = angle_text(lowered.tightest_at);
    if (lowered.tightest > most + threshold::negligible)
      report.find(diagnose(report.check(), {{"stay", stay},
                                            {"state", state.name},
                                            {"spar", state.lowers},
                                            {"short", length_text(lowered.tightest)},
                                            {"angle", angle}})
                      .at(state.place)
                      .about(stay));
    else
      report.pass(stay, passed(report.check(), {{"state", state.name}, {"spar", state.lowers}}));
  }
}

} // namespace

const CheckTable checks{CheckRow{"stowed-short", check_stowed_short},
                        CheckRow{"lowered-tight", check_lowered_tight, {Limit::lowered_tight}}};

} // namespace sheerpole::state_checks
