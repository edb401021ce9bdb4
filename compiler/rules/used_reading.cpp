#include "rules/used_reading.hpp"

namespace sheerpole {

const Reading* used_reading(const Rig& rig, const DerivedStay& stay) {
  if (stay.route != LengthRoute::reading)
    return nullptr;
  const std::vector<Reading>& readings = rig[stay.stay].readings;
  for (std::size_t i = readings.size(); i-- > 0;)
    if (!readings[i].runs.empty())
      return &readings[i];
  return nullptr;
}

} // namespace sheerpole
