#include "calculate/strength/righting_moment.hpp"

#include "calculate/physics/finite_value.hpp"
#include "calculate/physics/physical_constants.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

namespace {

bool is_heel(double radians) {
  return radians >= 0.0 && radians <= std::numbers::pi / 2.0;
}

} // namespace

std::optional<double> small_angle_righting_moment(double displacement_kilograms, Length metacentric_height,
                                                  double heel_radians) {
  if (!(displacement_kilograms > 0.0) || !is_heel(heel_radians))
    return std::nullopt;
  return finite_value(displacement_kilograms * standard_gravity_metres_per_second_squared *
                      metacentric_height.metres() * std::sin(heel_radians));
}

std::optional<double> righting_moment_of_weight_aloft(Force weight, Length height, double heel_radians) {
  if (weight < Force() || !is_heel(heel_radians))
    return std::nullopt;
  return finite_value(weight.newtons() * height.metres() * std::sin(heel_radians));
}

std::optional<RightingMomentEstimate> righting_moment_by_waterline(const RightingMomentCurve& curve,
                                                                   Length waterline) {
  if (curve.shorter_waterline <= Length() || curve.longer_waterline <= curve.shorter_waterline ||
      !(curve.shorter_newton_metres > 0.0) || !(curve.longer_newton_metres > curve.shorter_newton_metres) ||
      !(curve.scatter >= 0.0) || !(curve.scatter < 1.0) || waterline <= Length())
    return std::nullopt;
  const double power = std::log(curve.longer_newton_metres / curve.shorter_newton_metres) /
                       std::log(curve.longer_waterline / curve.shorter_waterline);
  const double moment = curve.shorter_newton_metres * std::pow(waterline / curve.shorter_waterline, power);
  if (!std::isfinite(moment * (1.0 + curve.scatter)))
    return std::nullopt;
  return RightingMomentEstimate{moment, moment * (1.0 - curve.scatter), moment * (1.0 + curve.scatter)};
}

} // namespace sheerpole
