#include "calculate/state_position.hpp"

#include "calculate/take_up.hpp"

#include <utility>

namespace sheerpole {

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
