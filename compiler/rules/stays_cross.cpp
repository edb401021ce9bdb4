#include "calculate/geometry/stay_clearance.hpp"
#include "rules/by_side.hpp"
#include "rules/geometry_checks.hpp"
#include "rules/near_miss_words.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_stays_cross(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto limit = rig.limits.length(Limit::stays_apart);
  if (!limit)
    return;
  const NearMisses misses = crossing_stays(rig, *limit);
  const auto by_stay = misses_by_stay(rig, misses);
  std::vector<bool> met(rig.stays.size(), false); // each two are told of the first of them
  for (const NearMiss& miss : misses.found)
    met[miss.stay.index()] = met[miss.other] = true;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  if (stay.path.size() < 2) {
                    of_stay.not_checked("it has no path through points");
                    return;
                  }
                  for (const NearMiss* miss : by_stay[derived_stay.stay.index()]) {
                    const Stay& other = rig.stays[miss->other];
                    const std::string other_name = other.side == stay.side ? other.base : other.name;
                    of_stay.find(diagnose("stays-cross",
                                          {{"stay", name},
                                           {"other", other_name},
                                           {"distance", tenths_of(miss->distance)},
                                           {"least", length_text(least_distance(rig, stay, other, *limit))},
                                           {"height", height_text(miss->place)}})
                                     .at(stay.path[miss->segment].place, "from here down")
                                     .and_at(other.place, "the other stay")
                                     .about(name));
                  }
                  if (!met[derived_stay.stay.index()])
                    of_stay.pass("no other stay within " + length_text(*limit));
                });
  if (!misses.complete)
    report.not_checked("this rig",
                       "so many stays lie close together that not all were held against each other");
}

} // namespace sheerpole
