#include "calculate/length/length_sum.hpp"

#include <algorithm>

namespace sheerpole {

void add_assumptions(std::vector<std::string>& assumptions, const std::vector<std::string>& more) {
  for (const std::string& name : more)
    if (std::find(assumptions.begin(), assumptions.end(), name) == assumptions.end())
      assumptions.push_back(name);
}

Provenance combine(const std::vector<const Provenance*>& parts, Remark derivation) {
  Provenance result;
  result.source_class = parts.front()->source_class;
  result.derivation = std::move(derivation);
  for (const Provenance* part : parts) {
    if (part->source_class != result.source_class)
      result.source_class = SourceClass::computed;
    if (!result.place)
      result.place = part->place;
    add_assumptions(result.assumptions, part->assumptions);
  }
  return result;
}

Remark with_unknown(const LengthSum& sum) {
  if (!sum.unknown)
    return {};
  const Length known = sum.known();
  constexpr Length least_printed = Length::millimetres(0.005); // half of the last digit of a sentence
  if (magnitude(known) < least_printed)
    return LengthPhrase::x;
  return {known < Length{} ? LengthPhrase::x_less : LengthPhrase::x_plus, {magnitude(known)}};
}

Term rope_measure_term(TermKind kind, WhichEnd end, const Sourced<RopeMeasure>& measure,
                       const LineMaterial& material) {
  Term term{kind, measure.value.at(material.diameter.value), measure.provenance, end};
  if (measure.value.in_diameters) {
    term.how = {LengthPhrase::diameters, {Number{measure.value.amount}, material.diameter.value}};
    add_assumptions(term.provenance.assumptions, material.diameter.provenance.assumptions);
  }
  return term;
}

namespace {

/// A sum as a term of the next: pins in a body, the body in a cut.
TermKind whole(SumKind kind) {
  return kind == SumKind::body ? TermKind::body : TermKind::pin_to_pin;
}

} // namespace

Provenance provenance_of(const LengthSum& sum) {
  std::vector<const Provenance*> parts;
  if (sum.unknown)
    parts.push_back(&sum.unknown_source);
  for (const Term& part : sum.terms)
    parts.push_back(&part.provenance);
  if (parts.empty())
    return {};
  if (parts.size() == 1)
    return *parts.front();
  Provenance result = combine(parts, parts.front()->derivation);
  result.note = parts.front()->note;
  return result;
}

Term term_of(const LengthSum& sum) {
  return {whole(sum.kind), sum.known(), provenance_of(sum), {}, with_unknown(sum)};
}

} // namespace sheerpole
