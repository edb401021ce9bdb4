#include "calculate/spool_plan/rest_names.hpp"

namespace sheerpole {

namespace {

constexpr std::string_view ending = "-rest";

/// The name without `-rest` or `-rest-2` at its end.
std::string without_ending(const std::string& name) {
  const std::size_t last = name.find_last_not_of("0123456789");
  std::size_t end = name.size();
  if (last != std::string::npos && last + 1 < name.size() && name[last] == '-')
    end = last;
  const std::string head = name.substr(0, end);
  if (head.size() > ending.size() && head.ends_with(ending))
    return head.substr(0, head.size() - ending.size());
  return name;
}

} // namespace

void RestNames::avoid(const Rig& rig) {
  const auto take = [&](const auto& things) {
    for (const auto& thing : things)
      taken_.insert(thing.name);
  };
  take(rig.spars);
  take(rig.materials);
  take(rig.splices);
  take(rig.parts);
  take(rig.states);
  take(rig.records);
  take(rig.rules);
  for (const Point& point : rig.points)
    taken_.insert(point.base);
  for (const Stay& stay : rig.stays)
    taken_.insert(stay.base);
  take(rig.spreaders);
}

std::string RestNames::next(const std::string& stock) {
  const std::string first = without_ending(stock) + std::string(ending);
  std::string name = first;
  for (int number = 2; !taken_.insert(name).second; ++number)
    name = first + "-" + std::to_string(number);
  return name;
}

} // namespace sheerpole
