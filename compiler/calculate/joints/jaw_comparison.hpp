#pragma once

#include "units/named_size.hpp"

#include <optional>
#include <string>

namespace sheerpole {

/// The split pin that a standard gives to a clevis pin.
struct SplitPin {
  Length diameter;      ///< nominal: that of the hole in a metric pin
  std::string name;     ///< "3.2 mm", "1/8 in"
  std::string standard; ///< "ISO 1234", "ASME B18.8.1"
};

/// By the diameter of the clevis pin: for a metric pin over 2 to 44 mm from the table of ISO 1234, whose
/// ranges reach from over one bound up to and with the next; for an inch pin of 3/16 to 1 in from that of
/// ASME B18.8.1-1994. Nothing for a pin that is not in its table. Sources: IS 549, which is equal to ISO
/// 1234; ASME B18.8.1-1994.
std::optional<SplitPin> split_pin_for(const NamedSize& clevis_pin);

} // namespace sheerpole
