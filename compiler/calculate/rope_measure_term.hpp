#pragma once

#include "calculate/length_sum.hpp"
#include "model/line_material.hpp"
#include "model/splice.hpp"

#include <string>

namespace sheerpole {

/// A measure in diameters becomes a length at the rope at hand: 72 d of 9 mm is 648 mm, and `how` says so.
/// The source stays that of the measure; the diameter adds its assumptions.
Term rope_measure_term(std::string name, const Sourced<RopeMeasure>& measure, const LineMaterial& material);

} // namespace sheerpole
