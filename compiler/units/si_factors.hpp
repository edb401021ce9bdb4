#pragma once

#include <numbers>

namespace sheerpole {

// What one of these is in the SI: for calculations and tables that need it as a number. Text of a rig file
// is read by units/unit.hpp.
inline constexpr double degree = std::numbers::pi / 180.0; ///< radians
inline constexpr double day = 86400.0;                     ///< seconds
inline constexpr double year = 365.25 * day;               ///< seconds: a Julian year

} // namespace sheerpole
