#include "elaborate/elaboration.hpp"
#include "elaborate/read_fields.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace sheerpole {

namespace {

/// The stack of the stay as its declaration gives it; null when it has none.
const ResolvedDeclaration* stack_of(const ResolvedDeclaration& stay) {
  for (const ResolvedDeclaration& block : stay.blocks)
    if (block.kind->category == Category::stack)
      return &block;
  return nullptr;
}

void add_position(Elaboration& elaboration, const ResolvedDeclaration& block, State& state) {
  if (block.of == poison_symbol)
    return;
  const Name& of = block.syntax->of;
  for (const StayId id : elaboration.stays_named(of, block.syntax->of_side, of.span)) {
    const Stay& stay = elaboration.rig[id];
    StatePosition position;
    position.stay = id;
    position.place = of.span;
    position.note = elaboration.text(block, "note");
    if (const ResolvedProperty* stowed = block.find("stowed-at"))
      position.stowed_at = elaboration.point_on(stowed->syntax->value.expression(), stay.side, stay.name);
    for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
      if (declaration.symbol != block.of || declaration.kind->category != Category::stay)
        continue;
      const ResolvedDeclaration* stack = stack_of(declaration);
      if (stack == nullptr || block.items.empty())
        break;
      const std::vector<StackItem> moved = elaborate_stack(elaboration, stay, *stack, {&block});
      for (std::size_t i = 0; i < moved.size() && i < stay.stack.size(); ++i) {
        const bool named = std::any_of(block.items.begin(), block.items.end(), [&](const auto& item) {
          const auto part = elaboration.parts.find(item.part.value);
          return moved[i].kind == StackItem::Kind::part && part != elaboration.parts.end() &&
                 part->second == moved[i].part;
        });
        if (!named || !moved[i].set_length)
          continue;
        position.items.push_back(i);
        position.as_set.push_back(moved[i]);
      }
      break;
    }
    state.positions.push_back(std::move(position));
  }
}

/// What is lowered, how far and which way belong together.
bool is_whole_lowering(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                       const State& state) {
  const std::array words{std::string_view("lowers"), std::string_view("by"), std::string_view("towards")};
  const auto stated = [&](std::string_view word) { return declaration.find(word) != nullptr; };
  const auto missing = std::find_if_not(words.begin(), words.end(), stated);
  if (missing == words.end() || std::none_of(words.begin(), words.end(), stated))
    return true;
  elaboration.sink.report(
      diagnose("lowering-not-whole", {{"state", state.name}, {"property", std::string(*missing)}})
          .at(state.place)
          .about(state.name));
  return false;
}

} // namespace

void elaborate_states(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    if (declaration.kind->category != Category::state || declaration.symbol == poison_symbol)
      continue;
    State state;
    state.name = elaboration.name_of(declaration);
    state.title = declaration.syntax->title ? declaration.syntax->title->text : "";
    read_fields(elaboration, declaration, state.name, state);
    state.place = elaboration.place_of(declaration);
    if (!is_whole_lowering(elaboration, declaration, state))
      continue;
    for (const ResolvedDeclaration& block : declaration.blocks)
      add_position(elaboration, block, state);
    elaboration.rig.states.push_back(std::move(state));
  }
}

} // namespace sheerpole
