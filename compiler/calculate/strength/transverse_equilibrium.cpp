#include "calculate/strength/transverse_equilibrium.hpp"

#include "calculate/physics/physical_values.hpp"

#include <cmath>

namespace sheerpole {

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
