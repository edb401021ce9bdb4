#pragma once

#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// What the hardware of a stack takes from the pin-to-pin length, from aloft to deck.
struct Hardware {
  std::vector<Term> terms; ///< one a part, negative
  std::vector<MissingInput> missing;
};

/// Length of one stack item: its count times the length of the part, an adjuster at its setting. Nothing
/// when the file states none, and for lines and boat fittings, which take nothing; zero for what sits on
/// the line.
std::optional<Length> taken_length(const Rig& rig, const StackItem& item);

/// The parts of a stack as terms, from aloft to deck; adjusters as they are set.
/// Source: pin-to-pin is bearing to bearing, so parts in a row add up; common practice, no source.
Hardware hardware(const Rig& rig, const Stay& stay);

/// All bodies of a stay together: pin-to-pin less the hardware. Source: calculations of any loft sheet;
/// common practice, no source.
LengthSum body(const LengthSum& pin_to_pin, const Hardware& hardware);

/// The body of each line in the stack, from aloft to deck. A line with a length of its own has that length;
/// the one without takes what the hardware and the other lines leave.
std::vector<LengthSum> piece_bodies(const Stay& stay, const LengthSum& pin_to_pin,
                                    const Hardware& hardware);

} // namespace sheerpole
