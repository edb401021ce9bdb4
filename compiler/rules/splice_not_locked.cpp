#include "calculate/facts.hpp"
#include "rules/splice_checks.hpp"
#include "rules/splice_words.hpp"
#include "rules/stack_parts.hpp"

namespace sheerpole {

void check_splice_not_locked(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_buries(
      rig, derived, report,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const std::string locking = fact_text(end.splice->particulars, "locking");
        if (locking.empty()) {
          of_stay.not_checked("locking of " + end.splice->name + " is not stated");
        } else if (!says_none(locking)) {
          of_stay.pass(splice_name(end) + ": " + locking);
        } else {
          auto finding = diagnose("splice-not-locked", {{"stay", name}, {"splice", splice_name(end)}})
                             .at(stay.stack[end.item].place, "spliced here")
                             .about(name);
          if (const auto place = place_of(end.splice->particulars, "locking"))
            finding = std::move(finding).and_at(*place, "stated here");
          of_stay.find(std::move(finding));
        }
      });
}

} // namespace sheerpole
