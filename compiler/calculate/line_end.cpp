#include "calculate/line_end.hpp"

namespace sheerpole {

const End* LineEnd::of_type(std::string_view type) const {
  const End& facing = where == Where::aloft ? part->lower : part->upper;
  return facing.type == type ? &facing : part->line_end(type);
}

LineEnd line_end(const Rig& rig, const Stay& stay, std::size_t line, Where where) {
  LineEnd end{.where = where};
  const StackItem* found = nullptr;
  for (std::size_t at = line; found == nullptr;) {
    const bool at_edge = where == Where::aloft ? at == 0 : at + 1 == stay.stack.size();
    if (at_edge)
      return end;
    at = where == Where::aloft ? at - 1 : at + 1;
    const StackItem& next = stay.stack[at];
    if (next.kind != StackItem::Kind::part)
      return end;
    if (rig[next.part].role != Part::Role::worn) // a foil or a boot sits on the line and ends nothing
      found = &next;
  }
  const StackItem& neighbour = *found;
  end.item = &neighbour;
  end.part = &rig[neighbour.part];
  return end;
}

} // namespace sheerpole
