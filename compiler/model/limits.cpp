#include "model/limits.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

void Limits::state(StatedLimit stated) {
  std::erase_if(stated_, [&](const StatedLimit& earlier) { return earlier.limit == stated.limit; });
  stated_.push_back(std::move(stated));
}

const StatedLimit* Limits::find(Limit limit) const {
  const auto found = std::find_if(stated_.begin(), stated_.end(),
                                  [&](const StatedLimit& one) { return one.limit == limit; });
  return found == stated_.end() ? nullptr : &*found;
}

std::optional<double> Limits::value(Limit limit) const {
  const StatedLimit* stated = find(limit);
  return stated != nullptr ? stated->value : row_of(limit).value;
}

std::optional<Length> Limits::length(Limit limit) const {
  const auto metres = value(limit);
  return metres ? std::optional(Length::metres(*metres)) : std::nullopt;
}

bool Limits::switched_off(Limit limit) const {
  const StatedLimit* stated = find(limit);
  return stated != nullptr && !stated->value;
}

} // namespace sheerpole
