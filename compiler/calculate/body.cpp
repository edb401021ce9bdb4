#include "calculate/body.hpp"

#include "calculate/computed_provenance.hpp"
#include "calculate/length_text.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

Term term_of(const LengthSum& sum) {
  Term term{sum.name, sum.known(), sum.unknown ? sum_text(sum) : "", {}};
  std::vector<const Provenance*> parts;
  if (sum.unknown)
    parts.push_back(&sum.unknown_source);
  for (const Term& part : sum.terms)
    parts.push_back(&part.provenance);
  if (parts.size() == 1)
    term.provenance = *parts.front();
  else if (!parts.empty())
    term.provenance = combine(parts, parts.front()->note);
  return term;
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
