#include "calculate/cut/line_stretch.hpp"

#include "calculate/cut/cut_phrase.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/length/pin_to_pin.hpp"
#include "model/fact_name.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// The length that stretches: the body, or what the expected length makes of it.
std::optional<Sourced<Length>> stretching(const Rig& rig, const Stay& stay, const LengthSum& body) {
  Sourced<Length> result;
  result.value = body.known();
  std::vector<const Provenance*> parts;
  for (const Term& term : body.terms)
    parts.push_back(&term.provenance);
  if (body.unknown) {
    const auto expected = expected_pin_to_pin(rig, stay);
    if (!expected)
      return std::nullopt;
    result.value += expected->value;
    if (fact_length(stay.particulars, fact_names.estimate))
      result.provenance.assumptions = {std::string(fact_names.estimate) + " of " + stay.base};
    else // known well enough for a share of it
      result.provenance = expected->provenance;
    return result;
  }
  if (!parts.empty())
    result.provenance = combine(parts);
  return result;
}

/// By how much less than plain rope a buried part stretches.
Length less_stretch(Length buried, double strain, double share) {
  return buried * (strain / (1.0 + strain) - strain * share / (1.0 + strain * share));
}

/// Two legs that shared the pull evenly would stretch half as much.
constexpr double stiffest_share = 0.5;

/// Adds to `left`, what is cut so far, what the buried parts give back.
void add_spliced(LineStretch& result, std::span<const SplicedPart> spliced, double strain, Length& left) {
  Length not_counted;
  for (const SplicedPart& part : spliced) {
    if (!(part.buried > Length{}))
      continue;
    if (!part.stretch_share) {
      not_counted += less_stretch(part.buried, strain, stiffest_share);
      continue;
    }
    const double share = part.stretch_share->value;
    const Length less = less_stretch(part.buried, strain, share);
    result.terms.push_back({TermKind::stretch_spliced,
                            less,
                            part.stretch_share->provenance,
                            {},
                            {CutPhrase::stretch_of_buries, {part.buried, Number{share * 100.0}}}});
    left += less;
  }
  if (not_counted >= Length::millimetres(0.5))
    result.not_counted.push_back({CutPhrase::buries_stretch_less, {Fixed{not_counted.millimetres(), 0}}});
}

bool has_adjuster(const Rig& rig, const Stay& stay) {
  return std::any_of(stay.stack.begin(), stay.stack.end(), [&](const StackItem& item) {
    return item.kind == StackItem::Kind::part && rig[item.part].role == Part::Role::adjuster;
  });
}

} // namespace

LineStretch line_stretch(const Rig& rig, const Stay& stay, const LineMaterial& material,
                         const LengthSum& body, std::span<const SplicedPart> spliced) {
  LineStretch result;
  if (material.kind == LineMaterial::Kind::chain)
    return result;
  const auto dock = fact_force(stay.particulars, fact_names.dock_tension);
  const auto bench = fact_force(stay.particulars, fact_names.bench_tension);
  const auto bedding = fact_number(material.particulars, fact_names.bedding);
  const bool bedding_cut = fact_text(stay.particulars, fact_names.bedding_from) == "cut";
  const auto length = stretching(rig, stay, body);
  if (!length && (dock || bench || bedding_cut)) {
    result.missing.push_back(
        {{CutPhrase::stretch_missing, {Words{stay.base}}}, CutPhrase::stretch_mend, stay.place, true});
    return result;
  }
  if (!dock && !bench)
    result.not_counted.push_back(CutPhrase::stretch_not_counted);
  if (bedding && length && !bedding_cut && !has_adjuster(rig, stay))
    result.not_counted.push_back(
        {CutPhrase::bedding_not_taken_up, {Fixed{(length->value * bedding->value).millimetres(), 1}}});
  Length left = length ? length->value : Length{};
  if (dock || bench) {
    const auto stiffness = line_stiffness(material);
    if (!dock)
      result.missing.push_back({{CutPhrase::dock_tension_missing, {Words{stay.base}}},
                                CutPhrase::dock_tension_mend,
                                stay.place,
                                true});
    if (!bench)
      result.missing.push_back({{CutPhrase::bench_tension_missing, {Words{stay.base}}},
                                CutPhrase::bench_tension_mend,
                                stay.place,
                                true});
    if (!stiffness)
      result.missing.push_back({{CutPhrase::stiffness_missing, {Words{material.name}}},
                                CutPhrase::stiffness_mend,
                                material.place});
    if (dock && bench && stiffness) {
      const double strain = (dock->value - bench->value) / stiffness->value;
      const Length stretch = left * (strain / (1.0 + strain));
      Term term{
          TermKind::stretch,
          -stretch,
          combine({&dock->provenance, &bench->provenance, &stiffness->provenance, &length->provenance},
                  Derivation::hookes_law),
          {},
          {CutPhrase::stretch_over_stiffness,
           {Fixed{dock->value.newtons(), 0}, Fixed{bench->value.newtons(), 0},
            Fixed{stiffness->value.kilonewtons(), 0}, left}}};
      term.provenance.source_class = SourceClass::computed;
      left = left - stretch;
      result.terms.push_back(std::move(term));
      add_spliced(result, spliced, strain, left);
    }
  }
  if (bedding_cut && !bedding)
    result.missing.push_back(
        {{CutPhrase::bedding_missing, {Words{material.name}}}, CutPhrase::bedding_mend, material.place});
  if (bedding_cut && bedding) {
    Term term{TermKind::bedding,
              -(left * (bedding->value / (1.0 + bedding->value))),
              bedding->provenance,
              {},
              {CutPhrase::bedding_of_cut, {Number{bedding->value * 100.0}}}};
    add_assumptions(term.provenance.assumptions, length->provenance.assumptions);
    result.terms.push_back(std::move(term));
  }
  return result;
}

} // namespace sheerpole
