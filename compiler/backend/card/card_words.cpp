#include "backend/card/card_words.hpp"

#include "calculate/facts.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

std::string side_words(Side side) {
  switch (side) {
  case Side::port:
    return "PORT side";
  case Side::starboard:
    return "STARBOARD side";
  case Side::centre:
    break;
  }
  return "centreline";
}

std::string shown(const std::string& name, const std::string& title) {
  return title.empty() ? name : name + " (" + title + ")";
}

std::vector<std::string> draft_lines(const std::vector<DraftReason>& reasons) {
  struct SameMend {
    std::string mend;
    std::vector<std::string> reasons;
  };
  std::vector<SameMend> groups;
  for (const DraftReason& reason : reasons) {
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const SameMend& one) { return one.mend == reason.mend; });
    if (group == groups.end())
      group = groups.insert(groups.end(), {reason.mend, {}});
    if (std::find(group->reasons.begin(), group->reasons.end(), reason.reason) == group->reasons.end())
      group->reasons.push_back(reason.reason);
  }
  std::vector<std::string> lines;
  for (const SameMend& group : groups) {
    std::string line;
    for (const std::string& reason : group.reasons)
      line += (line.empty() ? "" : "; ") + reason;
    lines.push_back(line + (group.mend.empty() ? "" : ": " + group.mend));
  }
  return lines;
}

std::string stack_words(const CardPiece& card) {
  std::string words;
  for (std::size_t i = 0; i < card.stay->stack.size(); ++i) {
    const StackItem& item = card.stay->stack[i];
    words += words.empty() ? "" : "  >  ";
    if (item.kind == StackItem::Kind::line) {
      words += i == card.item ? "THIS PIECE" : "line";
      continue;
    }
    words += (item.count > 1 ? std::to_string(item.count) + " x " : "") + (*card.rig)[item.part].name;
    if (item.set_length)
      words += " set to " + card.amount(item.set_length->value);
  }
  return words;
}

std::string splice_words(const CardPiece& card, const PieceEnd& end) {
  const auto splice = std::find_if(card.rig->splices.begin(), card.rig->splices.end(),
                                   [&](const Splice& one) { return one.name == end.splice; });
  if (end.splice.empty() || splice == card.rig->splices.end())
    return {};
  std::string text = fmt::format("{}, bury {}", splice->name,
                                 card.amount(splice->bury.value.at(card.line->diameter.value)));
  if (splice->bury.value.in_diameters)
    text += fmt::format(" ({} d)", format_number(splice->bury.value.amount));
  if (!splice->taper.empty())
    text += ", taper " + splice->taper;
  if (const std::string locking = fact_text(splice->particulars, "locking"); !locking.empty())
    text += ", " + locking;
  return text;
}

} // namespace sheerpole
