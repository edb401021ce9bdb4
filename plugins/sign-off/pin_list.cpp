#include "plugins/sign-off/pin_list.hpp"

#include "calculate/facts.hpp"
#include "calculate/joints/joint.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <limits>

namespace sheerpole {

namespace {

/// The item of a joint that brings the pin: the one with the jaw, else whatever has a pin of its own by
/// its kind.
struct PinBearer {
  const Part* part = nullptr;
  std::string pin; ///< "5/8 in"; empty: not stated
  std::string split_pin;
};

const Part* part_of(const Rig& rig, const StackItem& item) {
  return item.kind == StackItem::Kind::part ? &rig[item.part] : nullptr;
}

/// What brings the pin when this end of the part is a jaw.
std::optional<PinBearer> of_jaw(const Part* part, const End* end) {
  if (end == nullptr || part == nullptr || end->type != "jaw")
    return std::nullopt;
  PinBearer bearer{part, {}, {}};
  if (const EndDimension* pin = end->find("pin"))
    bearer.pin = pin->text;
  if (const EndDimension* split = end->find("split-pin"))
    bearer.split_pin = split->text;
  return bearer;
}

std::optional<PinBearer> pin_at(const Rig& rig, const Stay& stay, const Joint& joint) {
  if (auto bearer = of_jaw(part_of(rig, stay.stack[joint.upper]), upper_end(rig, joint)))
    return bearer;
  return of_jaw(part_of(rig, stay.stack[joint.lower]), lower_end(rig, joint));
}

std::size_t first_line(const Stay& stay) {
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line)
      return i;
  return stay.stack.size();
}

/// Where on the boat an item of the stack is: at the upper end of the path above the line, else at the
/// lower.
Fastening placed(const Rig& rig, const Stay& stay, std::size_t item) {
  Fastening fastening;
  fastening.stay = stay.name;
  fastening.aloft = item < first_line(stay);
  if (stay.path.size() >= 2) {
    const Point& point = rig[fastening.aloft ? stay.path.front().point : stay.path.back().point];
    fastening.height = point.position.z;
    fastening.place = point.name;
  }
  return fastening;
}

Fastening pin_of(const Rig& rig, const Stay& stay, std::size_t item, const PinBearer& bearer,
                 std::string joint) {
  Fastening pin = placed(rig, stay, item);
  pin.joint = std::move(joint);
  pin.what = bearer.pin.empty() ? "pin, size not stated" : "pin " + bearer.pin;
  pin.secured = fact_text(bearer.part->particulars, "secured");
  if (!bearer.split_pin.empty())
    pin.secured += (pin.secured.empty() ? "split pin " : ", ") + bearer.split_pin;
  return pin;
}

/// The end of an outermost part that faces away from the stay; null for what belongs to the boat, whose
/// other end is fast to it.
const End* outward_end(const Part* part, bool upper, bool turned) {
  if (part == nullptr || part->role == Part::Role::boat_fitting)
    return nullptr;
  return upper != turned ? &part->upper : &part->lower;
}

/// A stack that ends with a jaw hangs on something that the file does not state, by a pin all the same.
void add_outermost_pins(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list) {
  const Stay& stay = rig[derived.stay];
  if (stay.stack.empty())
    return;
  const std::size_t last = stay.stack.size() - 1;
  bool first_turned = false;
  bool last_turned = false;
  for (const Joint& joint : derived.joints) {
    first_turned = joint.upper == 0 ? joint.upper_turned : first_turned;
    last_turned = joint.lower == last ? joint.lower_turned : last_turned;
  }
  for (const bool upper : {true, false}) {
    const std::size_t item = upper ? 0 : last;
    const Part* part = part_of(rig, stay.stack[item]);
    if (const auto bearer = of_jaw(part, outward_end(part, upper, upper ? first_turned : last_turned)))
      list.push_back(
          pin_of(rig, stay, item, *bearer,
                 upper ? "what it hangs on to " + part->name : part->name + " to what holds it"));
  }
}

void add_pins(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list) {
  const Stay& stay = rig[derived.stay];
  for (const Joint& joint : derived.joints)
    if (const auto bearer = pin_at(rig, stay, joint))
      list.push_back(pin_of(rig, stay, joint.upper, *bearer, say(rig, joint.name)));
  add_outermost_pins(rig, derived, list);
}

/// A shackle brings a pin of its own, whatever its ends are said to be.
void add_shackles(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list) {
  const Stay& stay = rig[derived.stay];
  for (std::size_t i = 0; i < stay.stack.size(); ++i) {
    const Part* part = part_of(rig, stay.stack[i]);
    if (part == nullptr || part->kind != "shackle" || part->upper.type == "jaw" ||
        part->lower.type == "jaw")
      continue;
    Fastening pin = placed(rig, stay, i);
    pin.joint = part->name;
    pin.what = "pin of the shackle";
    pin.secured = fact_text(part->particulars, "secured");
    list.push_back(std::move(pin));
  }
}

void add_threads(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list) {
  const Stay& stay = rig[derived.stay];
  for (const TakeUp& adjuster : derived.adjusters) {
    const Part& part = rig[adjuster.part];
    if (part.kind != "turnbuckle")
      continue;
    Fastening thread = placed(rig, stay, adjuster.item);
    thread.joint = part.name;
    thread.what = part.screw ? "thread " + part.screw->thread.designation +
                                   (part.screw->pair ? ", right and left hand" : "")
                             : "thread, not stated";
    thread.secured = fact_text(part.particulars, "locked");
    list.push_back(std::move(thread));
  }
}

} // namespace

std::vector<Fastening> pin_list(const CheckedRig& checked) {
  std::vector<Fastening> list;
  for (const DerivedStay& stay : checked.derived().stays) {
    add_pins(checked.rig(), stay, list);
    add_shackles(checked.rig(), stay, list);
    add_threads(checked.rig(), stay, list);
  }
  const auto height = [](const Fastening& one) {
    return one.height ? one.height->metres() : -std::numeric_limits<double>::max();
  };
  std::stable_sort(list.begin(), list.end(), [&](const Fastening& a, const Fastening& b) {
    if (height(a) != height(b))
      return height(a) > height(b);
    return a.aloft && !b.aloft;
  });
  return list;
}

} // namespace sheerpole
