#include "rules/lacks_toggle.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

const Part* part_at(const Rig& rig, const Stay& stay, std::size_t item) {
  return stay.stack[item].kind == StackItem::Kind::part ? &rig[stay.stack[item].part] : nullptr;
}

bool carries_sail(const Stay& stay) {
  return std::find(stay.duties.begin(), stay.duties.end(), "carries-sail") != stay.duties.end();
}

/// Whether it comes down on a chainplate with a screw or a terminal.
bool ends_on_deck(const Rig& rig, const Stay& stay, const Articulation& end) {
  const auto is = [&](std::size_t item, std::string_view kind) {
    const Part* part = part_at(rig, stay, item);
    return part != nullptr && part->kind == kind;
  };
  return !end.items.empty() && is(end.items.back(), "chainplate") &&
         std::any_of(end.items.begin(), end.items.end(),
                     [&](std::size_t item) { return is(item, "turnbuckle") || is(item, "terminal"); });
}

} // namespace

Swing swing_of(const Rig& rig, const Stay& stay, const Articulation& end, WhichEnd where) {
  if (where == WhichEnd::upper ? !carries_sail(stay) : !ends_on_deck(rig, stay, end))
    return Swing::no_matter;
  if (end.swings)
    return Swing::lets;
  if (end.parallel && part_at(rig, stay, *end.parallel)->kind == "toggle")
    return Swing::parallel;
  return end.tee ? Swing::not_checked : Swing::lacks;
}

} // namespace sheerpole
