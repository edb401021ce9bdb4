#include "driver/depends_file.hpp"

#include "diagnostics/excerpt.hpp"
#include "driver/terminal.hpp"
#include "driver/writing/write_bundle.hpp"

#include <algorithm>
#include <filesystem>

namespace sheerpole {

namespace {

/// Whether the form has a way to write the name.
bool can_be_said(const std::string& name) {
  return !name.empty() && name.back() != '\\' && name.find_first_of("\n\r\t") == std::string::npos;
}

std::string escaped(const std::string& name) {
  std::string result;
  std::size_t backslashes = 0; // that stand before this place
  for (const char c : name) {
    if (c == ' ') // backslashes before a blank count as pairs, and one more is for the blank
      result.append(backslashes + 1, '\\');
    else if (c == '#' || c == ':')
      result += '\\';
    else if (c == '$')
      result += '$';
    result += c;
    backslashes = c == '\\' ? backslashes + 1 : 0;
  }
  return result;
}

} // namespace

void add_files(std::vector<std::string>& paths, const SourceSet& sources) {
  for (std::uint32_t i = 0; i < sources.size(); ++i) {
    const std::string& name = sources[SourceId{i}].name();
    if (name != "command line" && std::find(paths.begin(), paths.end(), name) == paths.end())
      paths.push_back(name);
  }
}

void add_files(std::vector<std::string>& paths, const Compilation& compilation) {
  add_files(paths, *compilation.sources);
  for (const Photograph& photograph : *compilation.photographs)
    if (std::find(paths.begin(), paths.end(), photograph.path) == paths.end())
      paths.push_back(photograph.path);
}

std::optional<std::string> write_dependencies(const Dependencies& dependencies) {
  std::string text;
  for (const std::string& output : dependencies.outputs) {
    if (!can_be_said(output))
      return std::nullopt;
    text += (text.empty() ? "" : " \\\n ") + escaped(output);
  }
  text += ":";
  for (const std::string& input : dependencies.inputs) {
    if (!can_be_said(input))
      return std::nullopt;
    text += " \\\n " + escaped(input);
  }
  text += "\n";
  for (std::size_t i = 1; i < dependencies.inputs.size(); ++i)
    text += "\n" + escaped(dependencies.inputs[i]) + ":\n";
  return text;
}

int write_depends(const Dependencies& dependencies, const std::string& file) {
  const auto text = write_dependencies(dependencies);
  if (!text) {
    print_error("sheerpole: " + printable(file) +
                " cannot be written: the name of a file that was read or made has a line end, a tab or a "
                "backslash at its end\n");
    return exit_usage;
  }
  const std::filesystem::path path(file);
  OutputBundle bundle;
  bundle.files.push_back({path.filename().generic_string(), *text});
  const std::string folder = path.parent_path().generic_string();
  std::vector<std::string> taken = dependencies.inputs;
  taken.insert(taken.end(), dependencies.outputs.begin(), dependencies.outputs.end());
  const auto written = write_bundle(bundle, folder.empty() ? "." : folder, taken);
  if (written.ok())
    return exit_clean;
  print_error("sheerpole: " + describe(written.error()) +
              "; the papers are written, what was made from what is not\n");
  return exit_usage;
}

} // namespace sheerpole
