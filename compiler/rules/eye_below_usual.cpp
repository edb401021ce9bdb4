#include "calculate/strength/force_text.hpp"
#include "rules/splice_checks.hpp"
#include "rules/splice_words.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_eye_below_usual(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_eyes(rig, derived, report,
               [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
                 if (end.on_pear()) {
                   of_stay.pass(eye_name(end) + ": pear-shaped, both legs lie in its groove");
                   return;
                 }
                 const auto shape = eye_shape(end);
                 if (!shape) {
                   of_stay.not_checked(eye_not_known(end));
                   return;
                 }
                 const std::string words = eye_name(end) + ": " + length_text(shape->bearing_to_throat) +
                                           " from bearing to throat, " + times_text(shape->seats) +
                                           " times the seat of " + length_text(shape->seat);
                 const EyeSize size = eye_size(rig, *shape);
                 if (size == EyeSize::below_usual)
                   of_stay.find(
                       diagnose("eye-below-usual",
                                {{"stay", name},
                                 {"words", words},
                                 {"bound", length_text(shape->seat * *rig.limits.value(Limit::eye_usual))}})
                           .at(stay.stack[end.item].place, "spliced here")
                           .about(name));
                 else if (size == EyeSize::fine)
                   of_stay.pass(words);
               });
}

} // namespace sheerpole
