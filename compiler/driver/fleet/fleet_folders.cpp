#include "driver/fleet/fleet_folders.hpp"

#include "diagnostics/excerpt.hpp"

#include <algorithm>
#include <filesystem>
#include <map>
#include <string_view>

namespace sheerpole {

namespace {

bool names_a_folder(const std::string& name) {
  return !name.empty() && name != "." && name != "..";
}

std::string without_ending(const std::filesystem::path& file) {
  const std::string name = file.filename().generic_string();
  const std::string stem = file.extension() == ".rig" ? file.stem().generic_string() : name;
  return names_a_folder(stem) ? stem : names_a_folder(name) ? name : "boat";
}

constexpr std::size_t largest_list = 16'000'000;

} // namespace

Result<std::vector<std::string>, std::string> fleet_folders(const std::vector<std::string>& files) {
  std::vector<std::string> names;
  std::map<std::string, int> count;
  for (const std::string& file : files)
    ++count[names.emplace_back(without_ending(file))];
  std::map<std::string, std::size_t> taken;
  for (std::size_t i = 0; i < files.size(); ++i) {
    if (count[names[i]] > 1) {
      const std::string folder =
          std::filesystem::path(files[i]).lexically_normal().parent_path().filename().generic_string();
      if (names_a_folder(folder))
        names[i] = folder + "-" + names[i];
    }
    const auto [other, fresh] = taken.try_emplace(names[i], i);
    if (!fresh)
      return "sheerpole: " + printable(files[other->second]) + " and " + printable(files[i]) +
             " would both be written to the folder " + printable(names[i]) +
             "; nothing was written. Rename one of them, or call twice with two folders\n";
  }
  return names;
}

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
      return "sheerpole: cannot read the list " + printable(word.substr(1)) +
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
