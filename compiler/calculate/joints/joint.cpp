#include "calculate/joints/joint.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace sheerpole {

namespace {

/// Whether two ends are made for each other.
bool mate(const End& a, const End& b) {
  const auto either = [&](std::string_view one, std::string_view other) {
    return (a.type == one && b.type == other) || (a.type == other && b.type == one);
  };
  return either("jaw", "eye") || either("stud", "socket") || either("hook", "eye") ||
         either("holes", "holes") || either("tee", "slot");
}

/// Whether an end takes a line of this kind.
bool takes(const End& end, LineMaterial::Kind kind) {
  return kind == LineMaterial::Kind::rope ? end.type == "rope-seat" : end.type == "wire-socket";
}

/// The things of a stack that make joints: lines and parts that are not only worn.
std::vector<std::size_t> bearing_items(const Rig& rig, const Stay& stay) {
  std::vector<std::size_t> items;
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line || rig[stay.stack[i].part].role != Part::Role::worn)
      items.push_back(i);
  return items;
}

struct Facing {
  const Rig& rig;
  const Stay& stay;

  bool is_line(std::size_t item) const { return stay.stack[item].kind == StackItem::Kind::line; }
  const End* end(std::size_t item, bool lower, bool turned) const {
    if (is_line(item))
      return nullptr;
    const Part& part = rig[stay.stack[item].part];
    return lower != turned ? &part.lower : &part.upper;
  }
  int fit(std::size_t upper, bool upper_turned, std::size_t lower, bool lower_turned) const {
    const End* above = end(upper, true, upper_turned);
    const End* below = end(lower, false, lower_turned);
    if (above != nullptr && below != nullptr)
      return mate(*above, *below) ? 1 : 0;
    const End* only = above != nullptr ? above : below;
    const std::size_t line = above != nullptr ? lower : upper;
    if (only == nullptr)
      return 0;
    return takes(*only, rig[stay.stack[line].material.value_or(stay.material)].kind) ? 1 : 0;
  }
};

/// Which of the items are turned round: the way with the most fits, as usually fitted where that is equal.
std::vector<bool> turned_items(const Facing& facing, const std::vector<std::size_t>& items) {
  // best[i][t]: most fits down to item i, item i turned or not; came[i][t]: how the item before was then.
  std::vector<std::array<int, 2>> best(items.size(), {0, 0});
  std::vector<std::array<bool, 2>> came(items.size(), {false, false});
  for (std::size_t i = 1; i < items.size(); ++i)
    for (const bool turned : {false, true}) {
      const int straight = best[i - 1][0] + facing.fit(items[i - 1], false, items[i], turned);
      const int round = best[i - 1][1] + facing.fit(items[i - 1], true, items[i], turned);
      came[i][turned ? 1 : 0] = round > straight;
      best[i][turned ? 1 : 0] = std::max(straight, round);
    }
  std::vector<bool> result(items.size(), false);
  if (items.empty())
    return result;
  bool turned = best.back()[1] > best.back()[0];
  for (std::size_t i = items.size(); i-- > 0;) {
    result[i] = turned;
    turned = came[i][turned ? 1 : 0];
  }
  return result;
}

} // namespace

std::vector<Joint> joints_of(const Rig& rig, StayId id) {
  const Stay& stay = rig[id];
  const Facing facing{rig, stay};
  const std::vector<std::size_t> items = bearing_items(rig, stay);
  const std::vector<bool> turned = turned_items(facing, items);
  const auto named = [&](std::size_t item) {
    return facing.is_line(item) ? rig[stay.stack[item].material.value_or(stay.material)].name
                                : rig[stay.stack[item].part].name;
  };
  std::vector<Joint> result;
  for (std::size_t i = 1; i < items.size(); ++i) {
    Joint joint;
    joint.stay = id;
    joint.upper = items[i - 1];
    joint.lower = items[i];
    joint.name = named(joint.upper) + " to " + named(joint.lower);
    joint.upper_turned = turned[i - 1];
    joint.lower_turned = turned[i];
    result.push_back(std::move(joint));
  }
  return result;
}

const End* upper_end(const Rig& rig, const Joint& joint) {
  return Facing{rig, rig[joint.stay]}.end(joint.upper, true, joint.upper_turned);
}

const End* lower_end(const Rig& rig, const Joint& joint) {
  return Facing{rig, rig[joint.stay]}.end(joint.lower, false, joint.lower_turned);
}

} // namespace sheerpole
