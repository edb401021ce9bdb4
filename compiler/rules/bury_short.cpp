#include "calculate/strength/force_text.hpp"
#include "rules/splice_checks.hpp"
#include "rules/splice_words.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

/// Said with the finding: hardly any rule that was found goes below it for a straight bury. Common
/// practice, no source.
constexpr double hardly_any = 50.0;

} // namespace

void check_bury_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double least = rig.limits.value(Limit::bury_least).value_or(0.0);
  look_at_buries(
      rig, derived, report,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const double diameters = bury_diameters(end);
        const std::string words =
            splice_name(end) + " buries " + length_text(end.bury()) + ", " + diameters_text(diameters);
        if (!is_below(diameters, least)) {
          of_stay.pass(words);
          return;
        }
        std::string bound = diameters_text(least);
        if (is_below(diameters, hardly_any))
          bound += ", and hardly any rule goes below " + diameters_text(hardly_any);
        auto finding = diagnose("bury-short", {{"stay", name}, {"words", words}, {"bound", bound}})
                           .at(stay.stack[end.item].place, "spliced here")
                           .about(name);
        if (end.splice->bury.provenance.place)
          finding = std::move(finding).and_at(*end.splice->bury.provenance.place, "the bury");
        of_stay.find(std::move(finding));
      });
}

} // namespace sheerpole
