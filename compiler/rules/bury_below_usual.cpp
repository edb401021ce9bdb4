#include "calculate/strength/force_text.hpp"
#include "rules/splice_checks.hpp"
#include "rules/splice_words.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_bury_below_usual(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double usual = rig.limits.value(Limit::bury_usual).value_or(0.0);
  const double least = rig.limits.value(Limit::bury_least).value_or(0.0);
  look_at_buries(
      rig, derived, report,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const double diameters = bury_diameters(end);
        if (is_below(diameters, least))
          return; // said by the finding that it is short
        const std::string words =
            splice_name(end) + " buries " + length_text(end.bury()) + ", " + diameters_text(diameters);
        if (!is_below(diameters, usual))
          of_stay.pass(words);
        else
          of_stay.find(diagnose("bury-below-usual",
                                {{"stay", name}, {"words", words}, {"usual", diameters_text(usual)}})
                           .at(stay.stack[end.item].place, "spliced here")
                           .about(name));
      });
}

} // namespace sheerpole
