#include "driver/help_page.hpp"

#include "base/code_point.hpp"

#include <algorithm>
#include <sys/ioctl.h>
#include <unistd.h>
#include <vector>

namespace sheerpole {

namespace {

constexpr std::size_t least_width = 60;
constexpr std::size_t most_width = 120;
constexpr std::size_t name_width = 30; ///< of what an option is called, as the library has it

std::vector<std::string> help_lines(std::string_view page) {
  std::vector<std::string> lines;
  while (!page.empty()) {
    const std::size_t end = std::min(page.find('\n'), page.size());
    lines.emplace_back(page.substr(0, end));
    page.remove_prefix(std::min(end + 1, page.size()));
  }
  return lines;
}

/// `--form FORM:{text,lines}` is called `--form FORM`, and `WHAT TEXT:{words,units}` is called `WHAT`.
void drop_lists(std::string& line) {
  const std::size_t begin = line.find(":{");
  const std::size_t end = line.find('}', begin);
  if (!line.starts_with("  ") || begin == std::string::npos || end == std::string::npos)
    return;
  line.erase(begin, end + 1 - begin);
  line.erase(line.find_last_not_of(' ') + 1);
  if (line.ends_with(" TEXT"))
    line.erase(line.size() - std::string_view(" TEXT").size());
}

bool is_blank(std::string_view text) {
  return text.find_first_not_of(' ') == std::string_view::npos;
}

/// The text behind so many columns, the first line behind `lead`.
std::string hung(std::string lead, std::string_view text, std::size_t column, std::size_t width) {
  std::string result = std::move(lead);
  bool first = true;
  for (const std::string& line : wrap_text(text, width - column)) {
    result += (first ? "" : std::string(column, ' ')) + line + '\n';
    first = false;
  }
  return result;
}

std::string fitted(const std::string& line, std::size_t width) {
  if (screen_columns(line) <= width)
    return line + '\n';
  if (line.starts_with("  ") && line.size() > name_width && line[name_width - 1] == ' ')
    return hung(line.substr(0, name_width), std::string_view(line).substr(name_width), name_width, width);
  const std::size_t column = std::min(line.find_first_not_of(' '), line.size());
  return hung(std::string(column, ' '), std::string_view(line).substr(column), column, width);
}

} // namespace

std::size_t help_width() {
  winsize size{};
  if (isatty(STDOUT_FILENO) == 0 || ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0 || size.ws_col == 0)
    return most_width;
  return std::clamp<std::size_t>(size.ws_col, least_width, most_width);
}

std::string fitted_help(std::string_view page, std::size_t width) {
  std::vector<std::string> lines = help_lines(page);
  std::string result;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    std::string& line = lines[i];
    drop_lists(line);
    // A name that is short enough by now has what is said of it beside it.
    if (line.starts_with("  ") && !line.starts_with("   ") && line.size() + 1 < name_width &&
        i + 1 < lines.size() && lines[i + 1].size() > name_width &&
        is_blank(std::string_view(lines[i + 1]).substr(0, name_width))) {
      lines[i + 1].replace(0, line.size(), line);
      continue;
    }
    result += fitted(line, width);
  }
  return result;
}

} // namespace sheerpole
