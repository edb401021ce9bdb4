#include "calculate/strength/shroud_load_share.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

std::optional<Force> transverse_shroud_load(double righting_moment_newton_metres, Length half_beam,
                                            double factor) {
  if (!(righting_moment_newton_metres > 0.0) || half_beam <= Length() || !(factor > 0.0))
    return std::nullopt;
  return finite_force(factor * righting_moment_newton_metres / half_beam.metres());
}

std::optional<Force> shroud_load(Force transverse_load, double share) {
  if (transverse_load <= Force() || !(share > 0.0) || !(share <= 1.0))
    return std::nullopt;
  return finite_force(share * transverse_load.newtons());
}

std::optional<Force> required_break_load(Force load, double factor) {
  if (load <= Force() || !(factor > 0.0))
    return std::nullopt;
  return finite_force(factor * load.newtons());
}

} // namespace sheerpole
