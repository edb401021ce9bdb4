#include "calculate/facts.hpp"
#include "calculate/tune/turn_effects.hpp"
#include "calculate/uncertainty/response.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <utility>

namespace sheerpole {

namespace {

/// Of the draws for lengths: of a few hundred numbers more would take longer than all the rest.
constexpr std::size_t share_of_draws = 10;
/// Movements below this, in N or mm, are rounding.
constexpr double tune_rounding = 1e-9;

/// All numbers that are told: the quantities, then the change of each by each turn.
using TuneNumbers = std::vector<double>;

/// Tightening one turn changes the quantities so, by the tangent.
void add_by_tangent(const TunedRig& tuned, const statics::Influence& influence, const TurnedStays& turned,
                    TuneNumbers& numbers) {
  for (const TuneQuantity& quantity : tuned.quantities) {
    double sum = 0.0;
    for (const std::size_t i : turned.stays) {
      const TuneStay& stay = tuned.model.stays[i];
      sum += stay.step_mm *
             statics::change_of(tuned.model.structure, quantity.what, influence, stay.legs[stay.screwed]);
    }
    numbers.push_back(sum);
  }
}

std::optional<TuneNumbers> numbers_of(const TunedRig& tuned, const std::vector<TurnEffect>& effects) {
  if (!tuned.stands())
    return std::nullopt;
  const auto influence = tuned.solver->influence(tuned.state);
  if (!influence)
    return std::nullopt;
  TuneNumbers numbers = tuned.values(tuned.state);
  for (const TurnEffect& effect : effects)
    add_by_tangent(tuned, *influence, effect.turned, numbers);
  return numbers;
}

Distribution stated_distribution(const Rig& rig) {
  const Record* settings = find_record(rig, RecordKind::uncertainty, name_of(RecordKind::uncertainty));
  const std::string word = settings == nullptr ? "" : fact_text(settings->facts, fact_names.distribution);
  return word == "triangular"      ? Distribution::triangular
         : word == "normal-at-two" ? Distribution::normal_at_two
                                   : Distribution::rectangular;
}

std::vector<TuneRange> ranges_of(const std::vector<Response>& responses,
                                 const std::vector<UncertainInput>& inputs, std::size_t draws,
                                 std::uint64_t seed) {
  std::vector<DrawRequest> requests;
  for (const Response& response : responses)
    requests.push_back({&response});
  const std::vector<Drawn> drawn = monte_carlo(requests, inputs, draws, seed, 1);
  std::vector<TuneRange> result;
  for (std::size_t i = 0; i < responses.size(); ++i) {
    const WorstCase worst = worst_case(responses[i], inputs);
    result.push_back({std::min(worst.low, 0.0), std::max(worst.high, 0.0),
                      propagate(responses[i], inputs).expanded, drawn[i].low, drawn[i].high});
  }
  return result;
}

} // namespace

TuneDoubt tune_doubt(const Rig& rig, const Derived& derived, const TunedRig& tuned,
                     const std::vector<TurnEffect>& effects) {
  const std::size_t count = tuned.quantities.size();
  TuneDoubt doubt;
  doubt.of_value.resize(count);
  doubt.of_change.assign(effects.size(), std::vector<TuneRange>(count));
  const std::optional<TuneNumbers> now = numbers_of(tuned, effects);
  if (!now)
    return doubt;
  std::vector<UncertainInput> inputs;
  std::vector<Response> responses(now->size());
  for (const BoundId bound : tuned.model.bounds) {
    const auto up = numbers_of(tuned_rig(rig, derived, {{bound, 1.0}}), effects);
    const auto down = numbers_of(tuned_rig(rig, derived, {{bound, -1.0}}), effects);
    if (!up || !down || up->size() != now->size() || down->size() != now->size()) {
      doubt.trouble.push_back({TunePhrase::does_not_stand_with, {Words{rig[bound].name}}});
      continue;
    }
    const std::size_t input = inputs.size();
    inputs.push_back({Remark(), rig[bound].bound, stated_distribution(rig), 0, rig[bound].place});
    for (std::size_t i = 0; i < now->size(); ++i) {
      const double linear = 0.5 * ((*up)[i] - (*down)[i]);
      const double square = 0.5 * ((*up)[i] + (*down)[i]) - (*now)[i];
      if (std::abs(linear) > tune_rounding)
        responses[i].linear.push_back({input, linear});
      if (std::abs(square) > tune_rounding)
        responses[i].products.push_back({input, input, square});
    }
  }
  doubt.inputs = inputs.size();
  if (inputs.empty())
    return doubt;
  doubt.draws = std::max<std::size_t>(derived.draws / share_of_draws, 1000);
  const std::vector<TuneRange> ranges = ranges_of(responses, inputs, doubt.draws, derived.seed);
  std::copy_n(ranges.begin(), count, doubt.of_value.begin());
  for (std::size_t e = 0; e < effects.size(); ++e)
    std::copy_n(ranges.begin() + static_cast<std::ptrdiff_t>((e + 1) * count), count,
                doubt.of_change[e].begin());
  return doubt;
}

} // namespace sheerpole
