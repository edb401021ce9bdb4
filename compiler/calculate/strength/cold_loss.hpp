#pragma once

#include "calculate/derived.hpp"
#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What a stay loses of its dock tension when it is as cold as it gets.
struct ColdLoss {
  double kelvin = 0.0;
  Length slack; ///< how much longer the line gets than its path; less than nothing: it gets tighter
  Force dock_tension;
  Force lost;         ///< slack x EA / length; less than nothing: gained
  double share = 0.0; ///< lost over dock tension; more than 1: it hangs slack
  std::string how;
  std::vector<std::string> not_checked; ///< not empty: nothing above holds
};

/// The coldest day of the `take-up` record; nothing when it is not stated.
std::optional<double> stated_coldest(const Rig& rig);

/// Loss of tension at `kelvin` against the boat's reference-temperature, mast and hull being stiff: one
/// that gives loses less. Source: linear expansion (thermal_table.hpp) and Hooke's law.
ColdLoss cold_loss(const Rig& rig, const DerivedStay& stay, double kelvin);

} // namespace sheerpole
