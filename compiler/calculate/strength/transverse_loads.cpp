#include "calculate/strength/transverse_loads.hpp"

#include "calculate/physics/physical_values.hpp"

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

std::optional<Force> forestay_break_load(double righting_moment_newton_metres, Length height_above_sheer,
                                         Length freeboard_at_mast, double factor) {
  const double height = height_above_sheer.metres() + freeboard_at_mast.metres();
  if (!(righting_moment_newton_metres > 0.0) || !(height > 0.0) || !(factor > 0.0))
    return std::nullopt;
  return finite_force(factor * righting_moment_newton_metres / height);
}

namespace {

bool is_share(double value) {
  return value >= 0.0 && value <= 1.0;
}

} // namespace

std::optional<Force> side_force_at(double righting_moment_newton_metres, Length above_waterline) {
  if (!(righting_moment_newton_metres > 0.0) || above_waterline <= Length())
    return std::nullopt;
  return finite_force(righting_moment_newton_metres / above_waterline.metres());
}

std::optional<ReefedMainLoad> reefed_main_load(double righting_moment_newton_metres, Length luff,
                                               Length boom, Length freeboard, const ReefedMain& reefed) {
  if (luff <= Length() || boom < Length() || !is_share(reefed.head_share) || !is_share(reefed.boom_share) ||
      !is_share(reefed.luff_left) || !is_share(reefed.centre_up_luff))
    return std::nullopt;
  const auto head = finite_length(boom.metres() + reefed.luff_left * luff.metres());
  const auto centre = finite_length(freeboard.metres() + boom.metres() +
                                    reefed.centre_up_luff * reefed.luff_left * luff.metres());
  const auto total = centre ? side_force_at(righting_moment_newton_metres, *centre) : std::nullopt;
  if (!head || !total)
    return std::nullopt;
  return ReefedMainLoad{.total = *total,
                        .head = reefed.head_share * *total,
                        .boom = reefed.boom_share * *total,
                        .head_height = *head,
                        .boom_height = boom};
}

std::optional<std::vector<Force>> share_between_levels(std::span<const Length> heights, Force force,
                                                       Length at) {
  Length below;
  for (const Length height : heights) {
    if (height <= below)
      return std::nullopt;
    below = height;
  }
  if (heights.empty() || at < Length() || at > heights.back())
    return std::nullopt;
  std::vector<Force> shares(heights.size());
  std::size_t upper = 0;
  while (heights[upper] < at)
    ++upper;
  const Length lower_height = upper == 0 ? Length() : heights[upper - 1];
  const double to_upper = (at - lower_height) / (heights[upper] - lower_height);
  shares[upper] = to_upper * force;
  if (upper > 0)
    shares[upper - 1] = (1.0 - to_upper) * force;
  return shares;
}

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

std::optional<Force> shroud_of_lying_mast(Force mast_weight, double share_at_head, double angle_radians) {
  if (mast_weight < Force() || !(share_at_head >= 0.0) || !(share_at_head <= 1.0) ||
      !(angle_radians > 0.0) || !(angle_radians <= std::numbers::pi / 2.0))
    return std::nullopt;
  return finite_force(share_at_head * mast_weight.newtons() / std::sin(angle_radians));
}

} // namespace sheerpole
