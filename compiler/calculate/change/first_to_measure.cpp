#include "calculate/change/first_to_measure.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

constexpr Length millimetre = Length::millimetres(1.0);
/// The steps of sensitivity.hpp are of ten millimetres.
constexpr double of_ten = 0.1;

StepOfInput of_the_length(const DerivedStay& stay) {
  if (stay.pin_to_pin.unknown)
    return {stay.readings.taken ? MeasuredThing::cord : MeasuredThing::nothing,
            {},
            SmallStep::millimetre,
            millimetre};
  return {stay.route == LengthRoute::reading ? MeasuredThing::reading : MeasuredThing::pin_to_pin,
          {},
          SmallStep::millimetre,
          millimetre};
}

/// The three axes of a point together: a step in the direction that moves the stay most.
void add_to_place(const Sensitivity& one, std::vector<StepOfInput>& steps) {
  const Length moves = magnitude(one.pin_to_pin) * of_ten;
  for (StepOfInput& step : steps)
    if (step.thing == MeasuredThing::place && step.name == one.what) {
      step.moves = Length::metres(std::hypot(step.moves.metres(), moves.metres()));
      return;
    }
  steps.push_back({MeasuredThing::place, one.what, SmallStep::millimetre, moves});
}

void add_sensitivity(const Rig& rig, const Sensitivity& one, std::vector<StepOfInput>& steps) {
  switch (one.by) {
  case SmallChange::forward:
  case SmallChange::to_starboard:
    add_to_place(one, steps);
    return;
  case SmallChange::up:
    if (std::any_of(rig.spars.begin(), rig.spars.end(),
                    [&](const Spar& spar) { return spar.name == one.what; }))
      steps.push_back(
          {MeasuredThing::height, one.what, SmallStep::millimetre, magnitude(one.pin_to_pin) * of_ten});
    else
      add_to_place(one, steps);
    return;
  case SmallChange::further_aft:
  case SmallChange::further_up:
    steps.push_back({MeasuredThing::lean, one.what, SmallStep::degree, magnitude(one.pin_to_pin)});
    return;
  case SmallChange::longer:
  case SmallChange::set_longer:
    steps.push_back({MeasuredThing::part, one.what, SmallStep::millimetre, magnitude(one.body) * of_ten});
    return;
  }
}

} // namespace

std::vector<StepOfInput> steps_of_inputs(const Rig& rig, const DerivedStay& stay,
                                         const std::vector<Sensitivity>& sensitivities) {
  std::vector<StepOfInput> steps;
  if (stay.route != LengthRoute::path)
    steps.push_back(of_the_length(stay));
  for (const Sensitivity& one : sensitivities)
    if (one.stay == stay.stay && one.counts)
      add_sensitivity(rig, one, steps);
  for (const Piece& piece : stay.pieces)
    for (const Term& term : piece.cut.terms) {
      const WhichEnd* end = std::get_if<WhichEnd>(&term.of);
      if (term.kind == TermKind::contraction && end != nullptr)
        steps.push_back({MeasuredThing::contraction,
                         (*end == WhichEnd::upper ? piece.upper : piece.lower).splice_name(rig),
                         SmallStep::percent, buried(piece, *end).total() * 0.01, *end});
    }
  std::stable_sort(steps.begin(), steps.end(),
                   [](const StepOfInput& a, const StepOfInput& b) { return a.moves > b.moves; });
  return steps;
}

} // namespace sheerpole
