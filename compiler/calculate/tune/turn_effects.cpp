#include "calculate/tune/turn_effects.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerpole {

namespace {

constexpr double alike_sides = 1e-6;

bool are_alike(const TuneStay& a, const TuneStay& b) {
  return a.adjuster && b.adjuster && a.by_turns == b.by_turns && a.step_mm == b.step_mm;
}

/// Tightening one turn changes the quantities so, by the tangent.
std::vector<double> by_tangent(const TunedRig& tuned, const statics::Influence& influence,
                               const TurnedStays& turned) {
  std::vector<double> result(tuned.quantities.size(), 0.0);
  for (const std::size_t i : turned.stays) {
    const TuneStay& stay = tuned.model.stays[i];
    for (std::size_t q = 0; q < result.size(); ++q)
      result[q] += stay.step_mm * statics::change_of(tuned.model.structure, tuned.quantities[q].what,
                                                     influence, stay.legs[stay.screwed]);
  }
  return result;
}

void find_slack(const TunedRig& tuned, const std::vector<double>& now, const std::vector<double>& after,
                TurnEffect& effect) {
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t q = 0; q < now.size(); ++q) {
    if (tuned.quantities[q].kind != TuneQuantity::Kind::tension || !(now[q] > 0.0))
      continue;
    if (!(after[q] > 0.0))
      effect.went_slack.push_back(tuned.quantities[q].number);
    const double lost = now[q] - after[q];
    // Rounding is no loss: a newton a turn takes thousands of turns.
    // Of two sides that are alike the first is told, whatever rounding makes of them.
    if (!(lost > 1.0) || !(now[q] / lost < (1.0 - alike_sides) * least))
      continue;
    least = now[q] / lost;
    effect.first_slack = tuned.quantities[q].number;
    effect.slack_after_turns = least;
  }
}

} // namespace

std::vector<TurnedStays> turned_stays(const Rig& rig, const TuneModel& model) {
  std::vector<TurnedStays> pairs, singles;
  for (std::size_t i = 0; i < model.stays.size(); ++i) {
    if (!model.stays[i].adjuster)
      continue;
    singles.push_back({{i}});
    const Stay& stay = rig[model.stays[i].stay];
    for (std::size_t j = i + 1; j < model.stays.size(); ++j) {
      const Stay& other = rig[model.stays[j].stay];
      if (stay.side != Side::centre && other.base == stay.base && other.side != stay.side &&
          are_alike(model.stays[i], model.stays[j]))
        pairs.push_back({{i, j}});
    }
  }
  pairs.insert(pairs.end(), singles.begin(), singles.end());
  return pairs;
}

std::vector<double> taken_by(const TunedRig& tuned, const TurnedStays& turned, double turns) {
  std::vector<double> shorter(tuned.model.structure.stays.size(), 0.0);
  for (const std::size_t i : turned.stays) {
    const TuneStay& stay = tuned.model.stays[i];
    shorter[stay.legs[stay.screwed].index()] += turns * stay.step_mm;
  }
  return shorter;
}

statics::State state_with(const TunedRig& tuned, const std::vector<double>& shorter_mm) {
  std::vector<double> lengths = tuned.state.unstressed_mm;
  for (std::size_t i = 0; i < lengths.size(); ++i)
    lengths[i] -= shorter_mm[i];
  return tuned.solver->settle(lengths, {}, &tuned.state.configuration);
}

std::vector<TurnEffect> turn_effects(const Rig& rig, const TunedRig& tuned) {
  const std::vector<double> now = tuned.values(tuned.state);
  std::vector<TurnEffect> result;
  for (TurnedStays& turned : turned_stays(rig, tuned.model)) {
    TurnEffect effect;
    effect.turned = std::move(turned);
    for (const std::size_t i : effect.turned.stays)
      effect.beyond_thread |= tuned.model.stays[i].to_tighten_mm < tuned.model.stays[i].step_mm;
    const statics::State state = state_with(tuned, taken_by(tuned, effect.turned, 1.0));
    if (Remark trouble = trouble_of(rig, tuned.model, state); !trouble.empty()) {
      effect.trouble.push_back(std::move(trouble));
    } else {
      std::vector<double> after = tuned.values(state);
      find_slack(tuned, now, after, effect);
      for (std::size_t q = 0; q < now.size(); ++q)
        after[q] -= now[q];
      effect.change = std::move(after);
    }
    result.push_back(std::move(effect));
  }
  return result;
}

TuneDoubt tune_doubt(const Rig& rig, const Derived& derived, const TunedRig& tuned,
                     const std::vector<TurnEffect>& effects) {
  const std::size_t count = tuned.quantities.size();
  TuneDoubt doubt;
  doubt.of_value.assign(count, 0.0);
  doubt.of_value_at_worst.assign(count, 0.0);
  doubt.of_change.assign(effects.size(), std::vector<double>(count, 0.0));
  const std::vector<double> now = tuned.values(tuned.state);
  const auto influence = tuned.solver->influence(tuned.state);
  if (!influence)
    return doubt;
  for (const BoundId bound : tuned.model.bounds) {
    const TunedRig other = tuned_rig(rig, derived, bound);
    const auto there = other.stands() ? other.solver->influence(other.state) : std::nullopt;
    if (!there || other.quantities.size() != count) {
      doubt.trouble.push_back({TunePhrase::does_not_stand_with, {Words{rig[bound].name}}});
      continue;
    }
    ++doubt.inputs;
    const std::vector<double> values = other.values(other.state);
    for (std::size_t q = 0; q < count; ++q) {
      doubt.of_value[q] = std::hypot(doubt.of_value[q], values[q] - now[q]);
      doubt.of_value_at_worst[q] += std::abs(values[q] - now[q]);
    }
    for (std::size_t e = 0; e < effects.size(); ++e) {
      const std::vector<double> before = by_tangent(tuned, *influence, effects[e].turned);
      const std::vector<double> after = by_tangent(other, *there, effects[e].turned);
      for (std::size_t q = 0; q < count; ++q)
        doubt.of_change[e][q] = std::hypot(doubt.of_change[e][q], after[q] - before[q]);
    }
  }
  return doubt;
}

} // namespace sheerpole
