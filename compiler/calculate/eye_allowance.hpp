#pragma once

#include "calculate/length_sum.hpp"
#include "calculate/line_end.hpp"

#include <optional>
#include <string>

namespace sheerpole {

/// Rope that an eye uses beyond the bearing, and what the other ways to it would have given.
struct EyeAllowance {
  std::optional<Term> term; ///< empty when there is no way to it
  std::string note;         ///< the other ways and their difference; empty when there is one way only
};

/// A test wrap measured round the part wins over the allowance that the splice states, that over the
/// geometry of the rope-seat (its diameter, and throat: the distance from the seat's centre to the throat).
/// Source: a measured wrap contains the real seat, rope and throat; common practice, no source.
EyeAllowance eye_allowance(const LineMaterial& material, const Splice& splice, const LineEnd& end);

} // namespace sheerpole
