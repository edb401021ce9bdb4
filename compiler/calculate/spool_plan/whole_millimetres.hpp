#pragma once

#include "units/length.hpp"

#include <cmath>
#include <cstdint>

namespace sheerpole {

/// A nanometre: what a sum of a few lengths may be off by as floating-point numbers.
inline constexpr double millimetre_noise = 1e-6;

inline std::int64_t up_to_millimetres(Length length) {
  return static_cast<std::int64_t>(std::ceil(length.millimetres() - millimetre_noise));
}

inline std::int64_t down_to_millimetres(Length length) {
  return static_cast<std::int64_t>(std::floor(length.millimetres() + millimetre_noise));
}

} // namespace sheerpole
