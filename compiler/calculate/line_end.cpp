#include "calculate/line_end.hpp"

namespace sheerpole {

const End* LineEnd::of_type(std::string_view type) const {
  const End& facing = where == Where::aloft ? part->lower : part->upper;
  return facing.type == type ? &facing : part->line_end(type);
}

LineEnd line_end(const Rig& rig, const Stay& stay, std::size_t line, Where where) {
  LineEnd end{.where = where};
  const bool at_edge = where == Where::aloft ? line == 0 : line + 1 == stay.stack.size();
  if (at_edge)
    return end;
  const StackItem& neighbour = stay.stack[where == Where::aloft ? line - 1 : line + 1];
  if (neighbour.kind != StackItem::Kind::part)
    return end;
  end.item = &neighbour;
  end.part = &rig[neighbour.part];
  return end;
}

} // namespace sheerpole
