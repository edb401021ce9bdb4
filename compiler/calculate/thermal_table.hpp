#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

namespace sheerpole {

/// The temperatures of the table that everybody gets, from -10 to +40 degC by ten, in kelvin.
std::vector<double> usual_temperatures();

/// How the stay and what it is stretched on change with temperature, from the boat's reference-temperature.
/// Points on a spar move along its axis from its heel by its coefficient; the hull and the heels stay where
/// they are, spars do not bend, hardware does not grow. The body grows by the coefficient of its line.
/// Source: linear expansion; coefficients are those that the file states. What is not stated makes the
/// table not checked, and is said.
ThermalTable thermal_table(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces,
                           const std::vector<double>& kelvin);

} // namespace sheerpole
