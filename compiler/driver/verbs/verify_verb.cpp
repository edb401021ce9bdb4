#include "backend/json/json.hpp"
#include "backend/process/byte_text.hpp"
#include "diagnostics/excerpt.hpp"
#include "driver/seal/sealed_folder.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <set>

namespace sheerpole::verify_verb {

namespace {

struct Options {
  std::string folder;
  std::string seal; ///< SHA-256 of its list of sums, as written down elsewhere
  bool seal_given = false;
  bool again = false; ///< make the papers again and compare
};

namespace fs = std::filesystem;

std::optional<std::string> read_file(const fs::path& path) {
  std::ifstream stream(path, std::ios::binary);
  std::string bytes((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
  return stream.bad() || !stream.is_open() ? std::nullopt : std::optional(std::move(bytes));
}

/// Every file below the folder but the list of sums, with its sum. A link, a pipe or a device is no file of
/// a seal: what stands for its sum is on no list.
SealSums sums_of_folder(const fs::path& folder) {
  SealSums sums;
  std::error_code ignored;
  for (fs::recursive_directory_iterator at(folder, ignored), end; at != end; at.increment(ignored)) {
    const std::string name = at->path().lexically_relative(folder).generic_string();
    if (at->is_symlink(ignored) || !(at->is_regular_file(ignored) || at->is_directory(ignored)))
      sums[name] = "no file";
    else if (at->is_regular_file(ignored) && name != seal_sums)
      sums[name] = sha256(read_file(at->path()).value_or(""));
  }
  return sums;
}

void say(const char* what, const std::vector<std::string>& names) {
  for (const std::string& name : names)
    print_out(std::string(what) + " " + printable(name) + "\n");
}

/// What seal.json says that is needed to make the papers again. Nothing when it is not what a seal holds.
std::optional<SealRequest> request_of(const fs::path& folder, const SealSums& sums, const Json& facts) {
  const Json rig = facts.value("rig", Json());
  const Json made = facts.value("made", Json());
  // A rig outside the folder, or one that is not on the list, is not the one that was sealed.
  if (!rig.is_string() || !made.is_array() || !sums.contains(rig.get<std::string>()))
    return std::nullopt;
  SealRequest request;
  request.file = (folder / rig.get<std::string>()).generic_string();
  request.rig.folders = {(folder / "rig").generic_string()};
  for (const Json& word : made) {
    if (!word.is_string())
      return std::nullopt;
    const std::string text = word.get<std::string>();
    const auto value_of = [&](std::string_view option) {
      return text.starts_with(option) ? std::optional(text.substr(option.size())) : std::nullopt;
    };
    if (const auto only = value_of("--only="))
      request.only.push_back(*only);
    else if (const auto paper = value_of("--paper="))
      request.paper = *paper;
    else if (const auto shop = value_of("--shop="))
      request.rig.shop = *shop;
    else if (text == "--pdf")
      request.pdf = true;
    else
      return std::nullopt;
  }
  return request;
}

/// Every file of the folder made again and compared with the one that lies there, both ways: a paper that
/// is not made again was put there by somebody. How many differ.
std::size_t differing(const fs::path& folder, const SealSums& sums, const OutputBundle& made,
                      bool same_version) {
  std::size_t count = 0;
  std::set<std::string> names;
  for (const OutputFile& file : made.files) {
    names.insert(file.name);
    const bool names_the_version = file.name == seal_facts || file.name == seal_sums;
    if (names_the_version && !same_version)
      continue;
    const auto there = read_file(folder / file.name);
    if (there && *there == file.bytes)
      continue;
    print_out(std::string(there ? "made again it differs: " : "made again there is one more: ") +
              printable(file.name) + "\n");
    ++count;
  }
  for (const auto& [name, sum] : sums)
    if (!names.contains(name)) {
      print_out("not made again: " + printable(name) + "\n");
      ++count;
    }
  return count;
}

int make_again(const fs::path& folder, const SealSums& sums) {
  const Json facts = Json::parse(read_file(folder / seal_facts).value_or(""), nullptr, false);
  const auto request = facts.is_object() ? request_of(folder, sums, facts) : std::nullopt;
  if (!request) {
    print_error("sheerpole: " + std::string(seal_facts) +
                " is not what a seal holds, so nothing was made again\n");
    return exit_errors;
  }
  const Json version = facts.value("version", Json());
  const bool same_version = version == SHEERPOLE_VERSION;
  if (!same_version)
    print_out("sealed with version " +
              printable(version.is_string() ? version.get<std::string>() : "unknown") +
              "; this is " SHEERPOLE_VERSION "\n");
  const auto made = make_seal(*request);
  if (!made.ok())
    return exit_errors;
  if (differing(folder, sums, made.value(), same_version) > 0)
    return exit_errors;
  print_out("made again, every paper is the same\n");
  return exit_clean;
}

int run(const Options& options) {
  const auto written_down = digest(options.seal);
  if (options.folder.empty() || (options.seal_given && !written_down)) {
    print_error(options.folder.empty() ? "sheerpole: an empty name is no folder\n"
                                       : "sheerpole: `" + printable(options.seal) +
                                             "` is no seal: a seal is 64 digits 0 to 9 and a to f\n");
    return exit_usage;
  }
  const fs::path folder(options.folder);
  std::error_code ignored;
  const bool is_file = fs::is_regular_file(fs::symlink_status(folder / seal_sums, ignored));
  const auto list = is_file ? read_file(folder / seal_sums) : std::nullopt;
  if (!list) {
    print_error("sheerpole: there is no " + std::string(seal_sums) + " in " + printable(options.folder) +
                ": it is no sealed folder, or its list is missing\n");
    return exit_errors;
  }
  SealFaults faults;
  const SealSums sums = read_sums(*list, faults.bad_lines);
  const std::vector<std::string> bad_lines = faults.bad_lines;
  faults = compare_with_sums(sums, sums_of_folder(folder));
  say("altered", faults.altered);
  say("missing", faults.missing);
  say("extra  ", faults.extra);
  say("no line of a list of sums:", bad_lines);
  bool well = faults.none() && bad_lines.empty();
  const std::string seal = sha256(*list);
  if (written_down && *written_down != seal) {
    print_out("the seal is another: " + seal + "\n");
    well = false;
  }
  if (well)
    print_out(std::to_string(sums.size()) + " files are as they were sealed\nseal " + seal + "\n");
  if (!options.again || !well)
    return well ? exit_clean : exit_errors;
  return make_again(folder, sums);
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("verify", "say what of a sealed folder is altered, missing or extra");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FOLDER", options.folder, "the sealed folder")->required();
  verb.add_option("--seal", options.seal, "the seal that was printed when it was sealed, as written down")
      ->type_name("DIGEST")
      ->each([&options](const std::string&) { options.seal_given = true; });
  verb.add_flag("--again", options.again, "make the papers again and compare every byte");
}

} // namespace sheerpole::verify_verb
