#include "calculate/strength/forestay_break_load.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

std::optional<Force> forestay_break_load(double righting_moment_newton_metres, Length height_above_sheer,
                                         Length freeboard_at_mast, double factor) {
  const double height = height_above_sheer.metres() + freeboard_at_mast.metres();
  if (!(righting_moment_newton_metres > 0.0) || !(height > 0.0) || !(factor > 0.0))
    return std::nullopt;
  return finite_force(factor * righting_moment_newton_metres / height);
}

} // namespace sheerpole
