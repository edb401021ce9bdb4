#include "calculate/length/body.hpp"

#include "calculate/length/length_sum.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

std::string setting_text(const Part& part, const StackItem& item) {
  if (item.open)
    return ", " + percent_text(item.open->value) + " open";
  const Provenance& provenance = item.set_length->provenance;
  const std::string amount =
      provenance.written.empty() ? length_text(item.set_length->value) : provenance.written;
  return (part.kind == "lashing" ? ", gap " : ", set to ") + amount;
}

Term term_of(const Part& part, const StackItem& item) {
  const Sourced<Length>& one = part.role == Part::Role::adjuster ? *item.set_length : *part.length;
  const std::string times = item.count == 1 ? "" : std::to_string(item.count) + " x ";
  Term term{times + part.name, -(one.value * item.count), "", one.provenance};
  if (item.count != 1)
    term.how = times + length_text(one.value);
  if (part.role == Part::Role::adjuster) {
    term.name += setting_text(part, item);
    if (item.open)
      add_assumptions(term.provenance.assumptions, item.open->provenance.assumptions);
  }
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
          {"setting of " + part.name, "state how far it is open, or its length as set", item.place});
    else
      result.missing.push_back(
          {"length of " + part.name, "measure it from bearing to bearing and state length", part.place});
  }
  return result;
}

LengthSum body(const LengthSum& pin_to_pin, const Hardware& hardware) {
  LengthSum result{.name = "body",
                   .unknown = pin_to_pin.unknown,
                   .terms = {},
                   .unknown_source = pin_to_pin.unknown_source};
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
      result.push_back({.name = "body",
                        .unknown = false,
                        .terms = {{"length as stated", length.value, "", length.provenance}},
                        .unknown_source = {}});
      continue;
    }
    LengthSum rest = body(pin_to_pin, hardware);
    for (std::size_t i = 0; i < lines.size(); ++i)
      if (lines[i]->line_length)
        rest.terms.push_back({"line " + std::to_string(i + 1) + " of " + std::to_string(lines.size()),
                              -lines[i]->line_length->value, "", lines[i]->line_length->provenance});
    result.push_back(std::move(rest));
  }
  return result;
}

} // namespace sheerpole
