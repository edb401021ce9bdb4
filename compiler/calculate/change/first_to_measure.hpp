#pragma once

#include "calculate/change/sensitivity.hpp"
#include "calculate/derived.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What one input of a length is.
enum class MeasuredThing : std::uint8_t {
  reading,     ///< the reading that makes the length
  pin_to_pin,  ///< the stated length
  cord,        ///< the length X that stands on a cord
  place,       ///< of a point, in the direction that moves the stay most
  lean,        ///< of a spar
  height,      ///< of a spar
  part,        ///< its length, or an adjuster's as set
  contraction, ///< of the bury at one end
  nothing      ///< no way to the length is stated at all
};

/// By how much an input is taken to be off.
enum class SmallStep : std::uint8_t { millimetre, degree, percent };

/// What a small step of an input does to the finished stay.
struct StepOfInput {
  MeasuredThing thing = MeasuredThing::nothing;
  std::string name; ///< of the point, spar or part; of a contraction the splice
  SmallStep step = SmallStep::millimetre;
  Length moves;                               ///< without its sign
  std::optional<WhichEnd> end = std::nullopt; ///< of a contraction: whose
};

/// For a stay of whose inputs none has a bound: every input that moves its length, that which moves it most
/// for one millimetre, one degree or one per cent first. Source: sums of the whole path (sensitivity.hpp);
/// a contraction is a share of its bury.
std::vector<StepOfInput> steps_of_inputs(const Rig& rig, const DerivedStay& stay,
                                         const std::vector<Sensitivity>& sensitivities);

} // namespace sheerpole
