#include "calculate/length/body.hpp"

namespace sheerpole {

namespace {

Term term_of(const Part& part, const StackItem& item) {
  const bool adjuster = part.role == Part::Role::adjuster;
  const Sourced<Length>& one = adjuster ? *item.set_length : *part.length;
  TakenPart taken{item.part, item.count};
  if (adjuster && item.open)
    taken.open = item.open->value;
  Term term{adjuster ? TermKind::setting : TermKind::part, -(one.value * item.count), one.provenance,
            taken};
  if (item.count != 1)
    term.how = {LengthPhrase::times, {Count{item.count}, one.value}};
  if (taken.open)
    add_assumptions(term.provenance.assumptions, item.open->provenance.assumptions);
  return term;
}

} // namespace

std::optional<Length> taken_length(const Rig& rig, const StackItem& item) {
  if (item.kind != StackItem::Kind::part)
    return std::nullopt;
  const Part& part = rig[item.part];
  if (part.role == Part::Role::worn)
    return Length{};
  if (part.role == Part::Role::adjuster && item.set_length)
    return item.set_length->value * item.count;
  if (part.role == Part::Role::fixed && part.length)
    return part.length->value * item.count;
  return std::nullopt;
}

Hardware hardware(const Rig& rig, const Stay& stay) {
  Hardware result;
  for (const StackItem& item : stay.stack) {
    if (item.kind != StackItem::Kind::part || rig[item.part].role == Part::Role::boat_fitting ||
        rig[item.part].role == Part::Role::worn)
      continue;
    const Part& part = rig[item.part];
    if (taken_length(rig, item))
      result.terms.push_back(term_of(part, item));
    else if (part.role == Part::Role::adjuster)
      result.missing.push_back(
          {{LengthPhrase::setting_missing, {item.part}}, LengthPhrase::setting_mend, item.place, true});
    else
      result.missing.push_back(
          {{LengthPhrase::length_missing, {item.part}}, LengthPhrase::length_mend, part.place, true});
  }
  return result;
}

LengthSum body(const LengthSum& pin_to_pin, const Hardware& hardware) {
  LengthSum result{SumKind::body, pin_to_pin.unknown, {}, pin_to_pin.unknown_source};
  // A bare X is no term: it is the unknown itself.
  if (!pin_to_pin.terms.empty())
    result.terms.push_back(term_of(pin_to_pin));
  result.terms.insert(result.terms.end(), hardware.terms.begin(), hardware.terms.end());
  return result;
}

std::vector<LengthSum> piece_bodies(const Stay& stay, const LengthSum& pin_to_pin,
                                    const Hardware& hardware) {
  std::vector<const StackItem*> lines;
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::line)
      lines.push_back(&item);
  std::vector<LengthSum> result;
  for (const StackItem* line : lines) {
    if (line->line_length) {
      const Sourced<Length>& length = *line->line_length;
      result.push_back(
          {SumKind::body, false, {{TermKind::line_as_stated, length.value, length.provenance}}, {}});
      continue;
    }
    LengthSum rest = body(pin_to_pin, hardware);
    for (std::size_t i = 0; i < lines.size(); ++i)
      if (lines[i]->line_length)
        rest.terms.push_back({TermKind::other_line, -lines[i]->line_length->value,
                              lines[i]->line_length->provenance,
                              LineOfStack{static_cast<int>(i + 1), static_cast<int>(lines.size())}});
    result.push_back(std::move(rest));
  }
  return result;
}

} // namespace sheerpole
