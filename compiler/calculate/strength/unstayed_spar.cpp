#include "calculate/strength/unstayed_spar.hpp"

#include "calculate/physics/finite_value.hpp"

#include <numbers>

namespace sheerpole {

std::optional<RoundSection> round_section(Length outer_diameter, Length inner_diameter) {
  if (inner_diameter < Length() || outer_diameter <= inner_diameter)
    return std::nullopt;
  const double outer = outer_diameter.metres() * outer_diameter.metres();
  const double inner = inner_diameter.metres() * inner_diameter.metres();
  const auto second_moment = finite_value(std::numbers::pi / 64.0 * (outer - inner) * (outer + inner));
  const auto modulus =
      second_moment ? finite_value(*second_moment / (outer_diameter.metres() / 2.0)) : std::nullopt;
  if (!modulus)
    return std::nullopt;
  return RoundSection{*second_moment, *modulus};
}

std::optional<SparBending> unstayed_spar_bending(const UnstayedSpar& spar, double moment_newton_metres) {
  const double arm = spar.arm.metres();
  if (!(spar.section.second_moment_metres4 > 0.0) || !(spar.section.section_modulus_metres3 > 0.0) ||
      !(arm > 0.0) || !(spar.modulus_pascals > 0.0) || !(spar.rupture_pascals > 0.0) ||
      !(moment_newton_metres > 0.0))
    return std::nullopt;
  const double stress_value = moment_newton_metres / spar.section.section_modulus_metres3;
  const auto force = finite_force(moment_newton_metres / arm);
  const auto stress = finite_value(stress_value);
  const auto times = finite_value(spar.rupture_pascals / stress_value);
  const auto deflection = finite_length(moment_newton_metres * arm * arm /
                                        (3.0 * spar.modulus_pascals * spar.section.second_moment_metres4));
  if (!force || !stress || !times || !deflection)
    return std::nullopt;
  return SparBending{*force, *stress, *times, *deflection};
}

} // namespace sheerpole
