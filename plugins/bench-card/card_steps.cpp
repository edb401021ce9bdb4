#include "plugins/bench-card/card_steps.hpp"

#include "backend/card/card_words.hpp"
#include "calculate/facts.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

/// "Splice the end aloft round thimble-16: long-bury, bury 648 mm (72 d), taper last third, lock stitch".
CardStep splice_step(const CardPiece& card, const PieceEnd& end, std::string_view where) {
  std::string text = fmt::format("Splice the end {}", where);
  if (!end.part.empty())
    text += " round " + shown(end.part, end.title);
  if (const std::string words = splice_words(card, end); !words.empty())
    text += ": " + words;
  return {text + ".", false};
}

CardStep terminal_step(const PieceEnd& end, std::string_view where) {
  return {fmt::format("Make the end {}: {}. Hold the wire at its mark while the terminal is closed.", where,
                      end.part.empty() ? "bare" : shown(end.part, end.title)),
          false};
}

std::string bench_tension(const CardPiece& card) {
  const auto tension = fact_force(card.stay->particulars, "bench-tension");
  return tension ? fmt::format("under {} N", format_fixed(tension->value.newtons(), 0))
                 : std::string("straight and hand-tight");
}

/// How the splices are loaded before the piece is measured again: of the last test splice on this rope.
std::string setting(const CardPiece& card) {
  const Record* test = last_record_of(*card.rig, "test-splice", card.line->name);
  const auto load = test == nullptr ? std::nullopt : fact_force(test->facts, "setting-load");
  if (load)
    return fmt::format("Set the splices at {} kN, as the test splice was, and note time and load.",
                       format_fixed(load->value.kilonewtons(), 1));
  return "Set the splices: load them as the test splice was loaded, and note load and time. No setting "
         "load is stated.";
}

} // namespace

std::vector<std::string> threaded_first(const CardPiece& card) {
  std::vector<std::string> names;
  const auto add = [&](const StackItem& item) {
    if (item.kind == StackItem::Kind::part)
      names.push_back(shown((*card.rig)[item.part].name, (*card.rig)[item.part].title));
  };
  const std::vector<StackItem>& stack = card.stay->stack;
  // Worn parts stand beside the line, on either side of it.
  for (std::size_t i = card.item; i-- > 0 && stack[i].kind == StackItem::Kind::part &&
                                  (*card.rig)[stack[i].part].role == Part::Role::worn;)
    if ((*card.rig)[stack[i].part].kind != "pin" && (*card.rig)[stack[i].part].kind != "bush")
      add(stack[i]);
  for (std::size_t i = card.item + 1; i < stack.size() && stack[i].kind == StackItem::Kind::part &&
                                      (*card.rig)[stack[i].part].role == Part::Role::worn;
       ++i)
    if ((*card.rig)[stack[i].part].kind != "pin" && (*card.rig)[stack[i].part].kind != "bush")
      add(stack[i]);
  return names;
}

std::vector<CardStep> card_steps(const CardPiece& card) {
  std::vector<CardStep> steps;
  const auto add = [&](std::string text) { steps.push_back({std::move(text), false}); };
  add(fmt::format("Read the label of the line: {}, {}. Lay it out {}.", card.line->construction,
                  card.line->size.name, bench_tension(card)));
  if (card.cut.unknown)
    add("Lay the messenger cord beside it, pin mark on the zero: X is from mark to mark of the cord, "
        "pulled as hard as when it was marked. Add or take what the table says.");
  add("Make every mark of the table from the one zero, the cut end aloft. Then check each from the other "
      "end.");
  const std::vector<std::string> first = threaded_first(card);
  if (!first.empty()) {
    std::string names;
    for (const std::string& name : first)
      names += (names.empty() ? "" : ", ") + name;
    add("Goes on before the second end is closed: " + names + ".");
  }
  if (card.has_dry_fit)
    add(fmt::format("Dry fit, nothing cut or {}: {} from bearing to bearing. Hang it in its place and "
                    "look at the adjuster.",
                    card.rope() ? "buried" : "pressed", card.amount(card.dry_fit)));
  else
    add("Dry fit, nothing cut: hang it in its place and look at the adjuster.");
  steps.push_back({"STOP. Sign before you cut; what is cut off can not be put back.", true});
  add(fmt::format("Cut to {}.", card.amount(card.cut)));
  if (card.rope()) {
    steps.push_back(splice_step(card, card.piece->upper, "aloft"));
    steps.push_back(splice_step(card, card.piece->lower, "below"));
    add(setting(card));
  } else {
    steps.push_back(terminal_step(card.piece->upper, "aloft"));
    steps.push_back(terminal_step(card.piece->lower, "below"));
  }
  add(fmt::format("Measure again, bearing to bearing: {} wanted{}.", card.amount(card.body),
                  card.rope() && card.behaves.parts != 0 ? " at the dock tension" : ""));
  return steps;
}

} // namespace sheerpole
