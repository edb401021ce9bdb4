#pragma once

namespace sheerpole {

/// Source: SI Brochure, 9th edition, 2.2: exact by definition.
inline constexpr double boltzmann_joules_per_kelvin = 1.380649e-23;
/// Source: SI Brochure, 9th edition, 2.2: exact by definition.
inline constexpr double avogadro_per_mole = 6.02214076e23;
/// R = N_A k, exact since both are.
inline constexpr double gas_constant_joules_per_mole_kelvin =
    avogadro_per_mole * boltzmann_joules_per_kelvin;
/// Weight in newtons of one kilogram. Source: 3rd General Conference on Weights and Measures (1901), exact
/// by definition; real gravity differs from it by less than 0.3 %.
inline constexpr double standard_gravity_metres_per_second_squared = 9.80665;

} // namespace sheerpole
