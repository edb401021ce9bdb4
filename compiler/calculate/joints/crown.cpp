#include "calculate/joints/crown.hpp"

#include "calculate/facts.hpp"

#include <algorithm>

namespace sheerpole {

const JointCheck* pin_in_hole(const Joint& joint) {
  const auto pin = std::find_if(joint.checks.begin(), joint.checks.end(), [](const JointCheck& check) {
    return check.finding == JointFinding::pin_too_big;
  });
  return pin == joint.checks.end() || !pin->play ? nullptr : &*pin;
}

bool Crown::on_the_wrong_side() const {
  constexpr Length rounding = Length::millimetres(0.001);
  return beyond && length.value > -rounding;
}

std::optional<Crown> crown_at(const Rig& rig, const Stay& stay, const Joint& joint) {
  const auto is_thimble = [&](std::size_t item) {
    return stay.stack[item].kind == StackItem::Kind::part &&
           rig[stay.stack[item].part].kind == PartKind::thimble;
  };
  const End* above = upper_end(rig, joint);
  const End* below = lower_end(rig, joint);
  if (above == nullptr || below == nullptr || is_thimble(joint.upper) == is_thimble(joint.lower))
    return std::nullopt;
  const bool upper = is_thimble(joint.upper);
  const PartId id = stay.stack[upper ? joint.upper : joint.lower].part;
  const Part& part = rig[id];
  const End& pinned = upper ? *above : *below;
  const End& seat = &pinned == &part.lower ? part.upper : part.lower;
  if (!part.length || pinned.type != EndType::eye || seat.type != EndType::rope_seat)
    return std::nullopt;
  Crown crown{id, *part.length};
  const EndDimension* diameter = seat.find(EndDimensionName::diameter);
  const JointCheck* pin = pin_in_hole(joint);
  if (part.length->provenance.source_class != SourceClass::measured)
    crown.unknown = CrownUnknown::length_not_measured;
  else if (diameter == nullptr)
    crown.unknown = CrownUnknown::seat_not_stated;
  else if (pin == nullptr)
    crown.unknown = CrownUnknown::bore_not_stated;
  else
    crown.beyond = diameter->length.value / 2.0 - *pin->play / 2.0;
  return crown;
}

} // namespace sheerpole
