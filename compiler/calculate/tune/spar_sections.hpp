#pragma once

#include "calculate/tune/tune_inputs.hpp"
#include "model/rig.hpp"
#include "statics/structure.hpp"

#include <string>
#include <vector>

namespace sheerpole {

inline constexpr double mm2_per_m2 = 1e6;
/// Places of a spar nearer to each other than this, in mm along it, are one.
inline constexpr double same_height_mm = 5.0;

/// The property that says it.
inline constexpr FactName from_heel = fact_names.from_heel;
/// How far from the heel a station is, as the file writes it.
std::string station_place(const Particular& at);

/// How stiff a spar is along its length, in the units of the statics: one section of a spar that is alike
/// all along, else one for each of its stations, from the heel up. Each stiffness is stated either of the
/// spar, for all of its length, or of every station; what is not stated is listed in `inputs` and 0. The
/// stations have to reach from the heel to the head, `head_mm` along the spar; else that is lacking. A spar
/// that `can_be_twisted` needs GJ; of another it is taken as that of a spar that does not twist.
std::vector<statics::Station> spar_sections(const Rig& rig, const Spar& spar, bool can_be_twisted,
                                            double head_mm, TuneInputs& inputs);

} // namespace sheerpole
