#include "calculate/joints/articulation.hpp"

#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <iterator>

namespace sheerpole {

namespace {

constexpr PartKind loose_or_soft[] = {PartKind::toggle,  PartKind::shackle,  PartKind::hook,
                                      PartKind::thimble, PartKind::soft_eye, PartKind::lashing,
                                      PartKind::deadeye, PartKind::tackle};

bool is_stiff(const LineMaterial& line) {
  return line.kind == LineMaterial::Kind::wire || line.kind == LineMaterial::Kind::rod;
}

bool is_loose_or_soft(const Part& part) {
  return std::find(std::begin(loose_or_soft), std::end(loose_or_soft), part.kind) !=
         std::end(loose_or_soft);
}

/// Of an adjuster: a toggle at this end, or at both.
bool own_toggle(const Part& part, WhichEnd where) {
  const std::string toggle = fact_text(part.particulars, fact_names.toggle);
  return toggle == "both" || toggle == (where == WhichEnd::upper ? "upper" : "lower");
}

bool swings(const Part& part, WhichEnd where) {
  const std::string pins = fact_text(part.particulars, fact_names.pins);
  if (pins == "parallel")
    return false;
  return pins == "crossed" || own_toggle(part, where) || is_loose_or_soft(part) ||
         part.upper.type == EndType::hook || part.lower.type == EndType::hook;
}

void look_at(const Part& part, std::size_t item, WhichEnd where, Articulation& result) {
  if (!result.swings && swings(part, where))
    result.swings = part.name;
  if (!own_toggle(part, where) &&
      own_toggle(part, where == WhichEnd::upper ? WhichEnd::lower : WhichEnd::upper))
    result.toggled_to_line = part.name;
  const std::string pins = fact_text(part.particulars, fact_names.pins);
  if (!result.parallel && pins == "parallel")
    result.parallel = item;
  if (!result.two_pins && pins.empty() && part.kind == PartKind::link)
    result.two_pins = item;
  if (!result.tee && (part.upper.type == EndType::tee || part.lower.type == EndType::tee))
    result.tee = item;
}

} // namespace

std::optional<Articulation> articulation(const Rig& rig, const Stay& stay, WhichEnd where) {
  if (!is_stiff(rig[stay.material]))
    return std::nullopt;
  const auto own_line = [&](const StackItem& item) {
    return item.kind == StackItem::Kind::line && item.material.value_or(stay.material) == stay.material;
  };
  const auto first = std::find_if(stay.stack.begin(), stay.stack.end(), own_line);
  if (first == stay.stack.end())
    return std::nullopt;
  const auto last = std::find_if(stay.stack.rbegin(), stay.stack.rend(), own_line).base(); // one beyond
  const auto from = static_cast<std::size_t>(where == WhichEnd::upper ? 0 : last - stay.stack.begin());
  const auto to =
      where == WhichEnd::upper ? static_cast<std::size_t>(first - stay.stack.begin()) : stay.stack.size();

  Articulation result;
  for (std::size_t i = from; i < to; ++i) {
    const StackItem& item = stay.stack[i];
    if (item.kind == StackItem::Kind::line) {
      result.items.push_back(i);
      const LineMaterial& line = rig[item.material.value_or(stay.material)];
      if (!result.swings && !is_stiff(line))
        result.swings = line.name; // rope or chain
      continue;
    }
    const Part& part = rig[item.part];
    if (part.role == Part::Role::worn)
      continue;
    result.items.push_back(i);
    look_at(part, i, where, result);
  }
  return result;
}

} // namespace sheerpole
