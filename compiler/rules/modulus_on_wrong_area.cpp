#include "calculate/facts.hpp"
#include "calculate/physics/line_deformation.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/lines_in_use.hpp"
#include "rules/strength_checks.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// Laid up of round wires, so that the metal fills a share of the circle only.
bool is_stranded(const LineMaterial& material) {
  const Construction& made = material.construction;
  return material.kind == LineMaterial::Kind::wire && made.lay == Lay::strand &&
         (made.wires_in_strand == 19 || (made.strands == 7 && made.wires_in_strand == 7));
}

std::string gigapascals(double pascals) {
  return format_fixed(pascals / 1e9, 1) + " GPa";
}

} // namespace

void check_modulus_on_wrong_area(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto most = rig.limits.value(Limit::gross_modulus);
  if (!most)
    return;
  for (const MaterialId id : lines_in_use(rig, derived)) {
    const LineMaterial& wire = rig[id];
    if (!is_stranded(wire))
      continue;
    const auto stiffness = line_stiffness(wire);
    const auto area = gross_area(wire.diameter.value);
    if (!stiffness || !area || !(*area > 0.0)) {
      report.not_checked(wire.name, "stiffness is not stated");
      continue;
    }
    const double on_circle = stiffness->value.newtons() / *area;
    const std::string words = "EA " + force_text(stiffness->value) + " is " + gigapascals(on_circle) +
                              " on the full circle of " + length_text(wire.diameter.value);
    if (is_below(*most, on_circle))
      report.find(diagnose("modulus-on-wrong-area",
                           {{"line", wire.name}, {"words", words}, {"most", gigapascals(*most)}})
                      .at(stiffness->provenance.place.value_or(wire.place))
                      .and_at(wire.place, wire.construction.text)
                      .about(wire.name));
    else
      report.pass(wire.name, words + "; at most " + gigapascals(*most));
  }
}

} // namespace sheerpole
