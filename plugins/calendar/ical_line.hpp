#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// A text value of iCalendar: backslash, semicolon, comma and newline are written with a backslash (RFC
/// 5545, 3.3.11). Other control characters become blanks.
std::string ical_text(std::string_view text);

/// One content line, folded so that no line has more than 75 octets and no UTF-8 character is torn, with
/// its CRLF (RFC 5545, 3.1).
std::string ical_line(std::string_view line);

} // namespace sheerpole
