#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// SHA-256 of the bytes (FIPS 180-4) as 64 small hexadecimal digits.
std::string sha256(std::string_view bytes);

} // namespace sheerpole
