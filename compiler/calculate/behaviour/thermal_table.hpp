#pragma once

#include "calculate/behaviour/behaviour_phrase.hpp"
#include "calculate/cut/piece.hpp"
#include "model/rig.hpp"

#include <vector>

namespace sheerpole {

/// How a stay and its path change with temperature.
struct ThermalRow {
  double kelvin = 0.0;
  Length line; ///< how much longer the bodies get
  Length path; ///< how much longer the way gets that they are to span
  /// What the stay gains: more than nothing is slack, less is tighter.
  Length slack() const { return line - path; }
};

struct ThermalTable {
  std::vector<ThermalRow> rows;    ///< empty when it is not checked
  std::vector<Remark> not_checked; ///< why there are no rows
};

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
