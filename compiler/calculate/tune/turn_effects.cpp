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

} // namespace sheerpole
