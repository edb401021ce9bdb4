#include "calculate/joints/joint.hpp"

#include "base/internal_error.hpp"
#include "calculate/facts.hpp"
#include "calculate/joints/joint_phrases.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/named_size.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <string_view>
#include <utility>

namespace sheerpole {

std::string_view slug_of(JointFinding finding) {
  switch (finding) {
  case JointFinding::ends:
    return "ends";
  case JointFinding::ends_do_not_join:
    return "ends-do-not-join";
  case JointFinding::jaws_meet:
    return "jaws-meet";
  case JointFinding::pin_too_big:
    return "pin-too-big";
  case JointFinding::pin_loose:
    return "pin-loose";
  case JointFinding::pin_too_short:
    return "pin-too-short";
  case JointFinding::split_pin_small:
    return "split-pin-small";
  case JointFinding::jaw_too_narrow:
    return "jaw-too-narrow";
  case JointFinding::jaw_too_wide:
    return "jaw-too-wide";
  case JointFinding::jaw_too_shallow:
    return "jaw-too-shallow";
  case JointFinding::hole_near_edge:
    return "hole-near-edge";
  case JointFinding::hook_too_small:
    return "hook-too-small";
  case JointFinding::tee_too_big:
    return "tee-too-big";
  case JointFinding::tee_pulls_through:
    return "tee-pulls-through";
  case JointFinding::thread_differs:
    return "thread-differs";
  case JointFinding::hand_differs:
    return "hand-differs";
  case JointFinding::stud_engaged_short:
    return "stud-engaged-short";
  case JointFinding::stud_too_long:
    return "stud-too-long";
  case JointFinding::wire_size_differs:
    return "wire-size-differs";
  case JointFinding::wire_construction_differs:
    return "wire-construction-differs";
  case JointFinding::seat_too_narrow:
    return "seat-too-narrow";
  case JointFinding::seat_too_wide:
    return "seat-too-wide";
  case JointFinding::seat_too_small:
    return "seat-too-small";
  }
  internal_error("a comparison at a joint that has no name");
}

namespace {

struct Pair {
  EndType one;
  EndType other;
};

constexpr Pair mates[] = {
    {EndType::jaw, EndType::eye},     {EndType::stud, EndType::socket}, {EndType::hook, EndType::eye},
    {EndType::holes, EndType::holes}, {EndType::tee, EndType::slot},
};

constexpr Pair apart[] = {
    {EndType::jaw, EndType::jaw},       {EndType::eye, EndType::eye},     {EndType::stud, EndType::stud},
    {EndType::socket, EndType::socket}, {EndType::stud, EndType::jaw},    {EndType::stud, EndType::eye},
    {EndType::stud, EndType::hook},     {EndType::stud, EndType::tee},    {EndType::stud, EndType::slot},
    {EndType::socket, EndType::jaw},    {EndType::socket, EndType::eye},  {EndType::socket, EndType::hook},
    {EndType::socket, EndType::tee},    {EndType::socket, EndType::slot}, {EndType::tee, EndType::jaw},
    {EndType::tee, EndType::eye},       {EndType::tee, EndType::tee},
};

template <std::size_t count>
bool among(const Pair (&pairs)[count], const End& a, const End& b) {
  for (const Pair& pair : pairs)
    if ((a.type == pair.one && b.type == pair.other) || (a.type == pair.other && b.type == pair.one))
      return true;
  return false;
}

} // namespace

bool ends_mate(const End& a, const End& b) {
  return among(mates, a, b);
}

bool ends_never_join(const End& a, const End& b) {
  return among(apart, a, b);
}

namespace {

/// What a joint that can not be made costs: more than all that fit in a stack can bring in.
constexpr std::int64_t impossible = -1'000'000;

/// Whether an end takes a line of this kind.
bool takes(const End& end, LineMaterial::Kind kind) {
  return kind == LineMaterial::Kind::rope ? end.type == EndType::rope_seat
                                          : end.type == EndType::wire_socket;
}

/// The things of a stack that make joints: lines and parts that are not only worn. Of several alike in a
/// row there are two: how one bears on the next is the same for all of them.
std::vector<std::size_t> bearing_items(const Rig& rig, const Stay& stay) {
  std::vector<std::size_t> items;
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line || rig[stay.stack[i].part].role != Part::Role::worn)
      items.insert(items.end(), stay.stack[i].count > 1 ? 2 : 1, i);
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
    // The one end that is stated of a fitting is the one that the stay is made fast to.
    // So it is with a junction: its other side is its centre.
    if ((part.role == Part::Role::boat_fitting || part.kind == PartKind::junction) &&
        part.upper.stated() != part.lower.stated())
      return part.upper.stated() ? &part.upper : &part.lower;
    return lower != turned ? &part.lower : &part.upper;
  }
  std::int64_t fit(std::size_t upper, bool upper_turned, std::size_t lower, bool lower_turned) const {
    const End* above = end(upper, true, upper_turned);
    const End* below = end(lower, false, lower_turned);
    if (above != nullptr && below != nullptr)
      return ends_mate(*above, *below) ? 1 : ends_never_join(*above, *below) ? impossible : 0;
    const End* only = above != nullptr ? above : below;
    const std::size_t line = above != nullptr ? lower : upper;
    if (only == nullptr)
      return 0;
    const LineMaterial::Kind kind = rig[stay.stack[line].material.value_or(stay.material)].kind;
    if (takes(*only, kind))
      return 1;
    const End* other = above != nullptr ? end(upper, false, upper_turned) : end(lower, true, lower_turned);
    return takes(*other, kind) ? impossible : 0; // a terminal is not used with its back to the wire
  }
};

/// Which of the items are turned round: the way with the fewest joints that can not be made, of these the
/// one with the most fits, as usually fitted where that is equal.
std::vector<bool> turned_items(const Facing& facing, const std::vector<std::size_t>& items) {
  // best[i][t]: most fits down to item i, item i turned or not; came[i][t]: how the item before was then.
  std::vector<std::array<std::int64_t, 2>> best(items.size(), {0, 0});
  std::vector<std::array<bool, 2>> came(items.size(), {false, false});
  for (std::size_t i = 1; i < items.size(); ++i)
    for (const bool turned : {false, true}) {
      const std::int64_t straight = best[i - 1][0] + facing.fit(items[i - 1], false, items[i], turned);
      const std::int64_t round = best[i - 1][1] + facing.fit(items[i - 1], true, items[i], turned);
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
    return facing.is_line(item) ? RemarkArgument(stay.stack[item].material.value_or(stay.material))
                                : RemarkArgument(stay.stack[item].part);
  };
  std::vector<Joint> result;
  for (std::size_t i = 1; i < items.size(); ++i) {
    Joint joint;
    joint.stay = id;
    joint.upper = items[i - 1];
    joint.lower = items[i];
    joint.name = {JointPhrase::from_to, {named(joint.upper), named(joint.lower)}};
    joint.upper_turned = turned[i - 1];
    joint.lower_turned = turned[i];
    if (joint.upper == joint.lower)
      joint.times = stay.stack[joint.upper].count - 1;
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

namespace {

const Part* part_at(const Rig& rig, const Stay& stay, std::size_t item) {
  return stay.stack[item].kind == StackItem::Kind::part ? &rig[stay.stack[item].part] : nullptr;
}

bool is_jaw(const End* end) {
  return end != nullptr && end->type == EndType::jaw;
}

/// The size by which a part is sold, as a dimension; nothing when it is not stated or is no size of a pin.
std::optional<EndDimension> size_of(const Part& part) {
  const Particular* size = find_fact(part.particulars, fact_names.size);
  if (size == nullptr)
    return std::nullopt;
  auto read = parse_named_size(size->text);
  if (!read.ok())
    return std::nullopt;
  return EndDimension{
      EndDimensionName::pin, {read.value().diameter, size->value.provenance, {}}, size->text};
}

/// A pin that lies among these items of the stack.
std::optional<JointPin> own_pin(const Rig& rig, const Stay& stay, std::size_t from, std::size_t to) {
  for (std::size_t i = from; i < to; ++i)
    if (const Part* part = part_at(rig, stay, i); part != nullptr && part->kind == PartKind::pin)
      return JointPin{.item = i, .part = part, .jaw = nullptr, .own = true, .size = size_of(*part)};
  return std::nullopt;
}

std::optional<JointPin> jaw_pin(const Rig& rig, const Stay& stay, std::size_t item, const End* end) {
  if (!is_jaw(end))
    return std::nullopt;
  JointPin pin{.item = item, .part = part_at(rig, stay, item), .jaw = end};
  if (const EndDimension* size = end->find(EndDimensionName::pin))
    pin.size = *size;
  return pin;
}

std::optional<JointPin> with_own(std::optional<JointPin> own, std::optional<JointPin> of_jaw) {
  if (!own)
    return of_jaw;
  if (of_jaw) {
    own->jaw = of_jaw->jaw;
    if (!own->size)
      own->size = of_jaw->size;
  }
  return own;
}

bool is_kind(const Rig& rig, const Stay& stay, std::size_t item, PartKind kind) {
  const Part* part = part_at(rig, stay, item);
  return part != nullptr && part->kind == kind;
}

} // namespace

std::optional<JointPin> pin_of(const Rig& rig, const Joint& joint) {
  const Stay& stay = rig[joint.stay];
  auto of_jaw = jaw_pin(rig, stay, joint.upper, upper_end(rig, joint));
  if (!of_jaw)
    of_jaw = jaw_pin(rig, stay, joint.lower, lower_end(rig, joint));
  if (auto pin = with_own(own_pin(rig, stay, joint.upper + 1, joint.lower), std::move(of_jaw)))
    return pin;
  // A shackle has one pin; where nothing says which way round it hangs, the pin is taken to be below.
  if (joined_by(rig, joint) != JoinedBy::shackle || !is_kind(rig, stay, joint.upper, PartKind::shackle))
    return std::nullopt;
  return JointPin{.item = joint.upper, .part = part_at(rig, stay, joint.upper), .jaw = nullptr};
}

std::optional<OuterEnd> outer_end(const Rig& rig, const Stay& stay, const std::vector<Joint>& joints,
                                  WhichEnd where) {
  const std::vector<std::size_t> items = bearing_items(rig, stay);
  if (items.empty())
    return std::nullopt;
  const bool upper = where == WhichEnd::upper;
  OuterEnd result;
  result.item = upper ? items.front() : items.back();
  result.part = part_at(rig, stay, result.item);
  if (result.part == nullptr || result.part->role == Part::Role::boat_fitting ||
      result.part->kind == PartKind::junction)
    return std::nullopt;
  bool turned = false;
  for (const Joint& joint : joints)
    if (upper ? joint.upper == result.item : joint.lower == result.item)
      turned = upper ? joint.upper_turned : joint.lower_turned;
  result.end = upper != turned ? &result.part->upper : &result.part->lower;
  result.pin = with_own(upper ? own_pin(rig, stay, 0, result.item)
                              : own_pin(rig, stay, result.item + 1, stay.stack.size()),
                        jaw_pin(rig, stay, result.item, result.end));
  return result;
}

JoinedBy joined_by(const Rig& rig, const Joint& joint) {
  const Stay& stay = rig[joint.stay];
  const End* above = upper_end(rig, joint);
  const End* below = lower_end(rig, joint);
  const auto either = [&](PartKind kind) {
    return is_kind(rig, stay, joint.upper, kind) || is_kind(rig, stay, joint.lower, kind);
  };
  if (above == nullptr || below == nullptr) {
    const std::size_t line = above == nullptr ? joint.upper : joint.lower;
    if (above == nullptr && below == nullptr)
      return JoinedBy::not_stated;
    if (either(PartKind::lashing))
      return JoinedBy::lashing;
    return rig[stay.stack[line].material.value_or(stay.material)].kind == LineMaterial::Kind::rope
               ? JoinedBy::rope_eye
           : rig[stay.stack[line].material.value_or(stay.material)].kind == LineMaterial::Kind::chain
               ? JoinedBy::not_stated
               : JoinedBy::terminal;
  }
  const auto has = [&](EndType type) { return above->type == type || below->type == type; };
  if (is_jaw(above) || is_jaw(below) || own_pin(rig, stay, joint.upper + 1, joint.lower))
    return JoinedBy::pin;
  if (either(PartKind::lashing))
    return JoinedBy::lashing;
  if (either(PartKind::shackle))
    return JoinedBy::shackle;
  if (has(EndType::stud) && has(EndType::socket))
    return JoinedBy::thread;
  if (has(EndType::hook))
    return JoinedBy::hook;
  if (has(EndType::tee) && has(EndType::slot))
    return JoinedBy::tee;
  if (above->type == EndType::holes && below->type == EndType::holes)
    return JoinedBy::lashing;
  return JoinedBy::not_stated;
}

} // namespace sheerpole
