#include "gnu_units.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string_view>
#include <unistd.h>

namespace sheerpole::test {

std::optional<GnuUnitsAnswer> ask_gnu_units(const std::vector<Conversion>& conversions) {
  if (std::system("command -v units >/dev/null 2>&1") != 0)
    return std::nullopt;
  const std::filesystem::path questions =
      std::filesystem::temp_directory_path() / ("sheerpole-units-" + std::to_string(getpid()) + ".txt");
  {
    std::ofstream file(questions);
    for (const Conversion& conversion : conversions)
      file << conversion.have << '\n' << conversion.want << '\n';
  }
  const std::string command =
      "LC_ALL=C units --terse --output-format '%.17g' < '" + questions.string() + "' 2>&1";
  GnuUnitsAnswer answer;
  if (FILE* pipe = popen(command.c_str(), "r")) {
    std::array<char, 4096> buffer;
    while (const std::size_t size = std::fread(buffer.data(), 1, buffer.size(), pipe))
      answer.transcript.append(buffer.data(), size);
    pclose(pipe);
  }
  std::filesystem::remove(questions);

  std::string_view left = answer.transcript;
  while (!left.empty()) {
    const std::string_view line = left.substr(0, left.find('\n'));
    left.remove_prefix(std::min(left.size(), line.size() + 1));
    double value = 0.0;
    const auto [end, error] = std::from_chars(line.data(), line.data() + line.size(), value);
    if (error == std::errc{} && end == line.data() + line.size())
      answer.values.push_back(value);
  }
  return answer;
}

} // namespace sheerpole::test
