#pragma once

#include <cstddef>

namespace sheerpole {

/// Room that write_fixed() needs.
inline constexpr std::size_t most_fixed_signs = 16;

/// What format_fixed() says of a number, written at a place with room for `most_fixed_signs`, for whoever
/// writes many numbers one behind the other. Where it ends; null, and nothing written, for the few numbers
/// that only format_fixed() can write: huge ones, and those near the middle between two roundings.
char* write_fixed(char* at, double value, int decimals);

} // namespace sheerpole
