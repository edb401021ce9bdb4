#include "plugins/calendar/ical_line.hpp"

namespace sheerpole {

std::string ical_text(std::string_view text) {
  std::string result;
  for (const char c : text) {
    if (c == '\\' || c == ';' || c == ',')
      result += '\\';
    if (c == '\n')
      result += "\\n";
    else
      result += static_cast<unsigned char>(c) < 0x20 || c == 0x7f ? ' ' : c;
  }
  return result;
}

std::string ical_line(std::string_view line) {
  constexpr std::size_t most = 75;
  std::string result;
  std::size_t room = most;
  while (line.size() > room) {
    std::size_t end = room;
    while (end > 1 && (static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U)
      --end; // not inside a character
    result += line.substr(0, end);
    result += "\r\n ";
    line.remove_prefix(end);
    room = most - 1; // the blank that the next line begins with counts
  }
  return result + std::string(line) + "\r\n";
}

} // namespace sheerpole
