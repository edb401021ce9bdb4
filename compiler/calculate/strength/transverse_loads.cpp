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

namespace {

/// A place across the boat, in metres.
struct Spot {
  double out, up;
};

/// A pull on a joint, in newtons.
struct Pull {
  double in, up;
};

/// The tip at this level.
Spot tip_of(const MastLevel& level) {
  return {level.spreader_tip.metres(), level.height.metres() + level.tip_rise.metres()};
}

/// How far a line leans outwards on its way down; nothing for one that does not run down.
std::optional<double> lean(Spot from, Spot to) {
  if (!(from.up > to.up))
    return std::nullopt;
  return std::atan2(to.out - from.out, from.up - to.up);
}

bool are_in_range(std::span<const MastLevel> levels, Length chainplate_from_axis) {
  Length below;
  for (std::size_t k = 0; k < levels.size(); ++k) {
    const MastLevel& level = levels[k];
    const bool has_spreader = k + 1 < levels.size();
    if (level.height <= below || level.side_force < Force() ||
        (has_spreader && level.spreader_tip <= Length()))
      return false;
    below = level.height;
  }
  return !levels.empty() && chainplate_from_axis > Length();
}

struct TipForces {
  double vertical, compression;
};

/// Equilibrium of a tip: the line below and the spreader hold what pulls from above. The line never has to
/// push: A_in is the sum of the side forces above and A_up their moment about the tip over its distance,
/// all from places above the spreader's root. Nothing when the spreader droops so steeply that it points
/// the way the line goes on.
std::optional<TipForces> hold_tip(Pull above, double rise, double gamma) {
  const double across = std::cos(gamma - rise);
  if (!(across > 0.0))
    return std::nullopt;
  return TipForces{(above.up * std::cos(rise) + above.in * std::sin(rise)) / across,
                   (above.in * std::cos(gamma) - above.up * std::sin(gamma)) / across};
}

} // namespace

std::optional<TransverseEquilibrium> transverse_equilibrium(std::span<const MastLevel> levels,
                                                            Length chainplate_from_axis) {
  if (!are_in_range(levels, chainplate_from_axis))
    return std::nullopt;
  TransverseEquilibrium result;
  result.levels.resize(levels.size());
  Pull on_tip{0.0, 0.0}; // of the lines that come down to the tip in hand
  double compression = 0.0;
  double moment = 0.0;
  for (std::size_t k = levels.size(); k-- > 0;) {
    const MastLevel& level = levels[k];
    LevelEquilibrium& held = result.levels[k];
    const Spot anchor = k == 0 ? Spot{chainplate_from_axis.metres(), 0.0} : tip_of(levels[k - 1]);
    const auto beta = lean({0.0, level.height.metres()}, anchor);
    if (!beta)
      return std::nullopt;
    Pull below{0.0, 0.0};
    double push_to_lee = level.side_force.newtons();
    if (k + 1 < levels.size()) {
      const double rise = std::atan2(level.tip_rise.metres(), level.spreader_tip.metres());
      const auto gamma = lean(tip_of(level), anchor);
      const auto tip = gamma ? hold_tip(on_tip, rise, *gamma) : std::nullopt;
      if (!tip)
        return std::nullopt;
      const auto vertical = finite_force(tip->vertical);
      const auto spreader = finite_force(tip->compression);
      if (!vertical || !spreader)
        return std::nullopt;
      held.vertical = *vertical;
      held.vertical_lean_radians = *gamma;
      held.spreader_compression = *spreader;
      push_to_lee += tip->compression * std::cos(rise);
      compression += tip->compression * std::sin(rise);
      below = {tip->vertical * std::sin(*gamma), tip->vertical * std::cos(*gamma)};
    }
    if (!(push_to_lee >= 0.0))
      return std::nullopt;
    const double diagonal = push_to_lee / std::sin(*beta);
    below = {below.in + push_to_lee, below.up + diagonal * std::cos(*beta)};
    compression += diagonal * std::cos(*beta);
    moment += level.side_force.newtons() * level.height.metres();
    const auto diagonal_force = finite_force(diagonal);
    const auto mast = finite_force(compression);
    if (!diagonal_force || !mast)
      return std::nullopt;
    held.diagonal = *diagonal_force;
    held.diagonal_to_mast_radians = *beta;
    held.mast_compression = *mast;
    on_tip = below;
  }
  const auto pull = finite_force(on_tip.up);
  if (!pull || !std::isfinite(moment))
    return std::nullopt;
  result.chainplate_pull = *pull;
  result.moment_newton_metres = moment;
  return result;
}

} // namespace sheerpole
