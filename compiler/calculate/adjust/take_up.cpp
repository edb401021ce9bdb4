#include "calculate/adjust/take_up.hpp"

#include "calculate/facts.hpp"
#include "model/fact_name.hpp"

#include <string>
#include <utility>

namespace sheerpole {

Length travel_per_turn(const Screw& screw) {
  return screw.thread.pitch * (screw.pair ? 2.0 : 1.0);
}

double turns(Length travel, Length per_turn) {
  return travel / per_turn;
}

Limit engagement_limit(const Part& part) {
  const std::string metal = fact_text(part.particulars, fact_names.metal);
  if (metal == "aluminium")
    return Limit::thread_engaged_aluminium;
  if (metal == "stainless" || metal == "bronze" || metal == "titanium")
    return Limit::thread_engaged_stainless;
  return Limit::thread_engaged;
}

std::optional<TakeUp> take_up(const Rig& rig, const Stay& stay, std::size_t item) {
  const StackItem& entry = stay.stack[item];
  if (entry.kind != StackItem::Kind::part || !entry.set_length)
    return std::nullopt;
  const Part& part = rig[entry.part];
  if (part.role != Part::Role::adjuster || !part.shortest || !part.longest)
    return std::nullopt;

  TakeUp result;
  result.item = item;
  result.part = entry.part;
  result.set = *entry.set_length;
  result.to_tighten = result.set.value - part.shortest->value;
  result.to_slacken = part.longest->value - result.set.value;
  if (part.screw) {
    result.travel_per_turn = travel_per_turn(*part.screw);
    if (const auto diameters = rig.limits.value(engagement_limit(part)))
      result.least_engagement = part.screw->thread.diameter * *diameters;
    if (part.engaged_at_longest)
      result.engaged = part.engaged_at_longest->value + result.to_slacken / (part.screw->pair ? 2.0 : 1.0);
  }
  return result;
}

DerivedPosition state_position(const Rig& rig, std::size_t state, std::size_t position) {
  const StatePosition& stated = rig.states[state].positions[position];
  const Stay& usual = rig[stated.stay];
  DerivedPosition result;
  result.state = state;
  result.position = position;
  result.stay = stated.stay;
  Stay moved = usual;
  for (std::size_t i = 0; i < stated.items.size(); ++i) {
    const std::size_t item = stated.items[i];
    const StackItem& before = usual.stack[item];
    moved.stack[item] = stated.as_set[i];
    if (before.set_length)
      result.change =
          result.change + (stated.as_set[i].set_length->value - before.set_length->value) * before.count;
    if (auto adjuster = take_up(rig, moved, item)) {
      adjuster->stay = stated.stay;
      result.adjusters.push_back(std::move(*adjuster));
    }
  }
  return result;
}

} // namespace sheerpole
