#include "calculate/strength/mast_compression.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

std::optional<Force> mast_compression(Force transverse_load, double factor) {
  if (transverse_load <= Force() || !(factor > 0.0))
    return std::nullopt;
  return finite_force(factor * transverse_load.newtons());
}

} // namespace sheerpole
