#include "rules/near_miss_words.hpp"

#include "units/format_length.hpp"

#include <cmath>

namespace sheerpole {

std::vector<std::vector<const NearMiss*>> misses_by_stay(const Rig& rig, const NearMisses& misses) {
  std::vector<std::vector<const NearMiss*>> result(rig.stays.size());
  for (const NearMiss& miss : misses.found)
    result[miss.stay.index()].push_back(&miss);
  return result;
}

std::string tenths_of(Length length) {
  return format_millimetres(length, 1) + " mm";
}

std::string height_text(const SpacePoint& place) {
  return format_fixed(std::abs(place.z.metres()), 2) +
         (place.z < Length{} ? " m below the waterline" : " m above the waterline");
}

} // namespace sheerpole
