#include "calculate/length/length_sum.hpp"

#include "calculate/length/body.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

void add_assumptions(std::vector<std::string>& assumptions, const std::vector<std::string>& more) {
  for (const std::string& name : more)
    if (std::find(assumptions.begin(), assumptions.end(), name) == assumptions.end())
      assumptions.push_back(name);
}

Provenance combine(const std::vector<const Provenance*>& parts, std::string note) {
  Provenance result;
  result.source_class = parts.front()->source_class;
  result.note = std::move(note);
  for (const Provenance* part : parts) {
    if (part->source_class != result.source_class)
      result.source_class = SourceClass::computed;
    if (!result.place)
      result.place = part->place;
    add_assumptions(result.assumptions, part->assumptions);
  }
  return result;
}

std::string sum_text(const LengthSum& sum) {
  const Length known = sum.known();
  if (!sum.unknown)
    return length_text(known);
  const std::string amount = length_text(known < Length{} ? -known : known);
  if (amount == length_text(Length{}))
    return "X";
  return (known < Length{} ? "X - " : "X + ") + amount;
}

Term rope_measure_term(std::string name, const Sourced<RopeMeasure>& measure,
                       const LineMaterial& material) {
  Term term{std::move(name), measure.value.at(material.diameter.value), "", measure.provenance};
  if (measure.value.in_diameters) {
    term.how = format_number(measure.value.amount) + " d x " + length_text(material.diameter.value);
    add_assumptions(term.provenance.assumptions, material.diameter.provenance.assumptions);
  }
  return term;
}

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

} // namespace sheerpole
