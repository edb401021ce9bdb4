#include "rules/splice_checks.hpp"
#include "rules/splice_words.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_eye_angle_wide(const Rig& rig, const Derived& derived, CheckReport& report) {
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
                 const EyeSize size = eye_size(rig, *shape);
                 const std::string words = eye_name(end) + ": each leg leaves the throat at " +
                                           angle_text(shape->half_angle_radians) + " from the pull";
                 if (size == EyeSize::angle_wide)
                   of_stay.find(diagnose("eye-angle-wide",
                                         {{"stay", name},
                                          {"words", words},
                                          {"most", angle_text(*rig.limits.value(Limit::eye_angle))}})
                                    .at(stay.stack[end.item].place, "spliced here")
                                    .about(name));
                 else if (size != EyeSize::too_short) // of which the wide angle comes
                   of_stay.pass(words);
               });
}

} // namespace sheerpole
