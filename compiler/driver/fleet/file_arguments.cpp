#include "driver/fleet/file_arguments.hpp"

#include "diagnostics/excerpt.hpp"

#include <algorithm>
#include <string_view>

namespace sheerpole {

namespace {

constexpr std::size_t largest_list = 16'000'000;

} // namespace

Result<std::vector<std::string>, std::string> file_arguments(const std::vector<std::string>& words,
                                                             FileReader& reader) {
  std::vector<std::string> files;
  for (const std::string& word : words) {
    if (!word.starts_with('@')) {
      files.push_back(word);
      continue;
    }
    const auto list = reader.read(word.substr(1), largest_list);
    if (!list.ok())
      return "sheerpole: can not read the list " + printable(word.substr(1)) +
             "; a file whose own name begins with @ is given as ./" + printable(word) + "\n";
    for (std::string_view rest = list.value(); !rest.empty();) {
      const std::size_t end = std::min(rest.find('\n'), rest.size());
      std::string_view line = rest.substr(0, end);
      if (line.ends_with('\r'))
        line.remove_suffix(1);
      if (!line.empty())
        files.emplace_back(line);
      rest.remove_prefix(std::min(end + 1, rest.size()));
    }
  }
  if (files.empty())
    return std::string("sheerpole: no list names a file\n");
  return files;
}

} // namespace sheerpole
