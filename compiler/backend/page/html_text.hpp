#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// The text with the signs that HTML reads as markup written out; other control characters become blanks.
std::string html_text(std::string_view text);

} // namespace sheerpole
