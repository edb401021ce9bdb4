#include "calculate/physics/thermal_growth.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

std::optional<Length> thermal_growth(Length length, double expansion_per_kelvin, double warming_kelvin) {
  const double strain = expansion_per_kelvin * warming_kelvin;
  if (length < Length() || !(strain > -1.0))
    return std::nullopt;
  return finite_length(length.metres() * strain);
}

std::optional<Length> spar_growth_beyond_line(const ThermalMember& spar, const ThermalMember& line,
                                              double warming_kelvin) {
  const auto of_spar = thermal_growth(spar.length, spar.expansion_per_kelvin, warming_kelvin);
  const auto of_line = thermal_growth(line.length, line.expansion_per_kelvin, warming_kelvin);
  if (!of_spar || !of_line)
    return std::nullopt;
  return finite_length(of_spar->metres() - of_line->metres());
}

} // namespace sheerpole
