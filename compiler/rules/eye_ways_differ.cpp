#include "rules/splice_checks.hpp"
#include "rules/splice_words.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_eye_ways_differ(const Rig& rig, const Derived& derived, CheckReport& report) {
  const Length apart = rig.limits.length(Limit::eye_ways_apart).value_or(Length{});
  look_at_eyes(rig, derived, report,
               [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
                 const auto ways = eye_ways(end);
                 if (!ways)
                   return; // one way only, or none
                 const Length difference = ways->wrap > ways->geometry ? ways->wrap - ways->geometry
                                                                       : ways->geometry - ways->wrap;
                 const std::string words = eye_name(end) + ": the test wrap gives " +
                                           length_text(ways->wrap) + ", the geometry of the seat " +
                                           length_text(ways->geometry);
                 if (difference < apart + threshold::negligible)
                   of_stay.pass(words);
                 else
                   of_stay.find(diagnose("eye-ways-differ", {{"stay", name},
                                                             {"words", words},
                                                             {"difference", length_text(difference)},
                                                             {"most", length_text(apart)}})
                                    .at(end.end.part->wrap->provenance.place.value_or(end.end.part->place),
                                        "the test wrap")
                                    .and_at(stay.stack[end.item].place, "spliced here")
                                    .about(name));
               });
}

} // namespace sheerpole
