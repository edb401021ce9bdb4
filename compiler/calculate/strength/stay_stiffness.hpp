#pragma once

#include "model/remark.hpp"
#include "model/rig.hpp"
#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

struct DerivedStay;
struct Piece;

/// EA of a stay's lines together.
struct StayStiffness {
  std::optional<Force> stiffness; ///< EA of one even line that stretches as much
  Remark not_stated;              ///< why there is none: "stiffness of hmpe-9 is not stated"
};

/// One line: its EA, as stated or modulus times metallic area. Several pieces: those of
/// axial_stiffness_in_series over their bodies, the hardware between them being rigid. Source: Hooke's law.
StayStiffness stay_stiffness(const Rig& rig, const std::vector<Piece>& pieces);

/// The bodies of all pieces together; nothing when one is not known.
std::optional<Length> length_of_lines(const std::vector<Piece>& pieces);

/// What a stay loses of its dock tension when it is as cold as it gets.
struct ColdLoss {
  double kelvin = 0.0;
  Length slack; ///< how much longer the line gets than its path; less than nothing: it gets tighter
  Force dock_tension;
  Force lost;         ///< slack x EA / length; less than nothing: gained
  double share = 0.0; ///< lost over dock tension; more than 1: it hangs slack
  Remark how;
  std::vector<Remark> not_checked; ///< not empty: nothing above holds
};

/// The coldest day of the `take-up` record; nothing when it is not stated.
std::optional<double> stated_coldest(const Rig& rig);

/// Loss of tension at `kelvin` against the boat's reference-temperature, mast and hull being stiff: one
/// that gives loses less. Source: linear expansion (thermal_table.hpp) and Hooke's law.
ColdLoss cold_loss(const Rig& rig, const DerivedStay& stay, double kelvin);

} // namespace sheerpole
