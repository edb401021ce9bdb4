#include "calculate/cut/line_stretch.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

std::string newtons(Force force) {
  return format_fixed(force.newtons(), 0) + " N";
}

/// The length that stretches: the body, or what the estimate makes of it.
std::optional<Sourced<Length>> stretching(const Stay& stay, const LengthSum& body) {
  Sourced<Length> result;
  result.value = body.known();
  std::vector<const Provenance*> parts;
  for (const Term& term : body.terms)
    parts.push_back(&term.provenance);
  if (body.unknown) {
    const auto estimate = fact_length(stay.particulars, "estimate");
    if (!estimate)
      return std::nullopt;
    result.value += estimate->value;
    result.provenance.assumptions = {"estimate of " + stay.base};
    return result;
  }
  if (!parts.empty())
    result.provenance = combine(parts, "");
  return result;
}

} // namespace

LineStretch line_stretch(const Stay& stay, const LineMaterial& material, const LengthSum& body) {
  LineStretch result;
  if (material.kind == LineMaterial::Kind::chain)
    return result;
  const auto dock = fact_force(stay.particulars, "dock-tension");
  const auto bench = fact_force(stay.particulars, "bench-tension");
  const auto bedding = fact_number(material.particulars, "bedding");
  const bool bedding_cut = fact_text(stay.particulars, "bedding-from") == "cut";
  const auto length = stretching(stay, body);
  if (!length && (dock || bench || bedding_cut)) {
    result.missing.push_back({"stretch of the unknown length of " + stay.base,
                              "state estimate in the stay, or measure it", stay.place});
    return result;
  }
  if (!dock && !bench)
    result.not_counted.push_back("stretch from bench to dock: dock-tension is not stated");
  Length left = length ? length->value : Length{};
  if (dock || bench) {
    const auto stiffness = line_stiffness(material);
    if (!dock)
      result.missing.push_back({"dock-tension of " + stay.base,
                                "state the tension for which the pin-to-pin length holds", stay.place});
    if (!bench)
      result.missing.push_back(
          {"bench-tension of " + stay.base, "state the pull under which the line is marked", stay.place});
    if (!stiffness)
      result.missing.push_back({"stiffness of " + material.name,
                                "state stiffness from its maker, or modulus and metallic-area",
                                material.place});
    if (dock && bench && stiffness) {
      const double strain = (dock->value - bench->value) / stiffness->value;
      const Length stretch = left * (strain / (1.0 + strain));
      Term term{
          "stretch from bench to dock", -stretch,
          newtons(dock->value) + " less " + newtons(bench->value) + " over EA " +
              format_fixed(stiffness->value.kilonewtons(), 0) + " kN" + ", of " + length_text(left),
          combine({&dock->provenance, &bench->provenance, &stiffness->provenance, &length->provenance},
                  "Hooke's law")};
      term.provenance.source_class = SourceClass::computed;
      term.of_standing_part = true;
      left = left - stretch;
      result.terms.push_back(std::move(term));
    }
  }
  if (bedding_cut && !bedding)
    result.missing.push_back({"bedding of " + material.name,
                              "state bedding from its maker, or say bedding-from: adjuster",
                              material.place});
  if (bedding_cut && bedding) {
    Term term{"bedding to come", -(left * (bedding->value / (1.0 + bedding->value))),
              format_number(bedding->value * 100.0) + " % of what is cut", bedding->provenance};
    add_assumptions(term.provenance.assumptions, length->provenance.assumptions);
    term.of_standing_part = true;
    result.terms.push_back(std::move(term));
  }
  return result;
}

} // namespace sheerpole
