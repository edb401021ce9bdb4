#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/adjuster_checks.hpp"
#include "rules/by_side.hpp"
#include "rules/stack_parts.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_knot_factor_high(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = rig.limits.value(Limit::knot_factor).value_or(1.0);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (const StackPart& one : parts_of(rig, stay)) {
                    if (one.part->kind != "lashing")
                      continue;
                    const auto factor = fact_number(one.part->particulars, "knot-factor");
                    if (!factor) {
                      of_stay.not_checked("knot-factor of " + one.part->name + " is not stated");
                    } else if (!is_below(most, factor->value)) {
                      of_stay.pass(one.part->name + ": " + percent_text(factor->value) + " in the knot");
                    } else {
                      auto finding = diagnose("knot-factor-high", {{"stay", name},
                                                                   {"part", one.part->name},
                                                                   {"factor", percent_text(factor->value)},
                                                                   {"most", percent_text(most)}})
                                         .at(stay.stack[one.item].place, "this one")
                                         .about(name);
                      if (factor->provenance.place)
                        finding = std::move(finding).and_at(*factor->provenance.place, "stated here");
                      of_stay.find(std::move(finding));
                    }
                  }
                });
}

} // namespace sheerpole
