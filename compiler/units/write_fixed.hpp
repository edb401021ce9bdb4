#pragma once

#include <string>

namespace sheerpole {

/// format_fixed() at the end of a text, for whoever writes many numbers one behind the other.
void append_fixed(std::string& text, double value, int decimals);

} // namespace sheerpole
