#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Breaks a text at blanks into lines of at most `width` screen columns. A word longer than that stands
/// alone on its line, uncut. Runs of blanks become one blank; an empty text gives one empty line.
std::vector<std::string> wrap_text(std::string_view text, std::size_t width);

} // namespace sheerpole
