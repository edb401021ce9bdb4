#pragma once

#include "calculate/hardware.hpp"

#include <vector>

namespace sheerpole {

/// A whole sum as one term of another. Its amount is what is known of the sum.
Term term_of(const LengthSum& sum);

/// All bodies of a stay together: pin-to-pin less the hardware. Source: calculations of any loft sheet;
/// common practice, no source.
LengthSum body(const LengthSum& pin_to_pin, const Hardware& hardware);

/// The body of each line in the stack, from aloft to deck. A line with a length of its own has that length;
/// the one without takes what the hardware and the other lines leave.
std::vector<LengthSum> piece_bodies(const Stay& stay, const LengthSum& pin_to_pin,
                                    const Hardware& hardware);

} // namespace sheerpole
