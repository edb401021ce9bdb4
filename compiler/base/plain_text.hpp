#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// True for what is no sign to be read but does something to whatever shows it, or is no character at all:
/// controls but for tab and line feed, the separators of lines and paragraphs, what turns the direction of
/// writing by force (Unicode Standard Annex 9, table 1), and noncharacters (Unicode 15.0, section 23.7).
bool is_hidden_control(char32_t value);

/// The text with U+FFFD for each of these and for each byte that is no UTF-8.
std::string plain_text(std::string_view text);

} // namespace sheerpole
