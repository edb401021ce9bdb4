#include "rules/splice_checks.hpp"
#include "rules/splice_words.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_taper_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double least = rig.limits.value(Limit::taper_least).value_or(0.0);
  look_at_buries(
      rig, derived, report,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const auto tapered = end.tapered();
        if (!tapered) {
          of_stay.not_checked("taper-over of " + end.splice->name + " is not stated");
          return;
        }
        const std::string words = splice_name(end) + " is tapered over " + length_text(*tapered) + " of " +
                                  length_text(end.bury());
        if (*tapered > end.bury() * least - threshold::negligible)
          of_stay.pass(words);
        else
          of_stay.find(diagnose("taper-short", {{"stay", name},
                                                {"words", words},
                                                {"least", length_text(end.bury() * least)},
                                                {"share", percent_text(least)}})
                           .at(stay.stack[end.item].place, "spliced here")
                           .about(name));
      });
}

} // namespace sheerpole
