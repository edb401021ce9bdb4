#include "rules/pretension.hpp"

#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/by_side.hpp"
#include "rules/lines_in_use.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void report_pretension(const Rig& rig, const Derived& derived, std::string_view slug, Limit limit,
                       bool at_least, CheckReport& report) {
  const auto bound = rig.limits.value(limit);
  if (!bound)
    return;
  const std::string bound_words = (at_least ? "; at least " : "; at most ") + percent_text(*bound);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (const MaterialId id : lines_of(derived_stay)) {
                    const LineMaterial& line = rig[id];
                    if (line.kind != LineMaterial::Kind::wire && line.kind != LineMaterial::Kind::rod)
                      continue;
                    const auto dock = fact_force(stay.particulars, "dock-tension");
                    if (!dock || !line.break_load) {
                      of_stay.not_checked(!dock ? "dock-tension is not stated"
                                                : "break-load of " + line.name + " is not stated");
                      continue;
                    }
                    const double share = dock->value / line.break_load->value;
                    const std::string words =
                        "dock tension " + force_text(dock->value) + " is " + percent_text(share) +
                        " of the " + force_text(line.break_load->value) + " of " + line.name + bound_words;
                    if (at_least ? is_below(share, *bound) : is_below(*bound, share))
                      of_stay.find(diagnose(slug, {{"stay", name}, {"words", words}})
                                       .at(dock->provenance.place.value_or(stay.place))
                                       .about(name));
                    else
                      of_stay.pass(words);
                  }
                });
}

} // namespace sheerpole
