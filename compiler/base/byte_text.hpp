#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// SHA-256 of the bytes (FIPS 180-4) as 64 small hexadecimal digits.
std::string sha256(std::string_view bytes);

// Base 64 with padding, RFC 4648 section 4: how bytes that are no text travel in JSON.

std::string to_base64(std::string_view bytes);

/// Nothing when it is not base 64: another letter, a line end, padding that is missing, or last bits that
/// say nothing and are not zero (section 3.5).
std::optional<std::string> from_base64(std::string_view text);

} // namespace sheerpole
