#pragma once

#include "calculate/derived.hpp"

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

/// The parts of a stack as terms: "2 x toggle-12", "turnbuckle-58, 50 % open", "lashing-9, gap 160 mm".
/// Source: pin-to-pin is bearing to bearing, so parts in a row add up; common practice, no source.
Hardware hardware(const Rig& rig, const Stay& stay);

} // namespace sheerpole
