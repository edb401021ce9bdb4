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

namespace sheerpole::verify_verb {

namespace {

struct Options {
  std::string folder;
  std::string seal;   ///< SHA-256 of its list of sums, as written down elsewhere; may be empty
  bool again = false; ///< make the papers again and compare
};

namespace fs = std::filesystem;

std::optional<std::string> read_file(const fs::path& path) {
  std::ifstream stream(path, std::ios::binary);
  std::string bytes((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
  return stream.bad() || !stream.is_open() ? std::nullopt : std::optional(std::move(bytes));
}

/// Every file below the folder but the list of sums, with its sum. A link is no file of a seal: its sum is
/// that of where it leads, which no list holds.
SealSums sums_of_folder(const fs::path& folder) {
  SealSums sums;
  std::error_code ignored;
  for (fs::recursive_directory_iterator at(folder, ignored), end; at != end; at.increment(ignored)) {
    const std::string name = at->path().lexically_relative(folder).generic_string();
    if (at->is_symlink(ignored))
      sums[name] = "a link";
    else if (at->is_regular_file(ignored) && name != seal_sums)
      sums[name] = sha256(read_file(at->path()).value_or(""));
  }
  return sums;
}

void say(const char* what, const std::vector<std::string>& names) {
  for (const std::string& name : names)
    print_out(std::string(what) + " " + printable(name) + "\n");
}

/// The papers made again and compared with those that lie there; how many differ. Nothing when they can not
/// be made, which has been said.
std::optional<std::size_t> differing(const fs::path& folder, const Json& facts) {
  SealRequest request;
  request.file = (folder / facts.value("rig", "")).generic_string();
  request.rig.folders = {(folder / "rig").generic_string()};
  for (const Json& word : facts.value("made", Json::array())) {
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
    else
      request.pdf = request.pdf || text == "--pdf";
  }
  const auto made = make_seal(request);
  if (!made.ok())
    return std::nullopt;
  std::size_t count = 0;
  for (const OutputFile& file : made.value().files) {
    if (!file.name.starts_with("papers/"))
      continue;
    const auto there = read_file(folder / file.name);
    if (there && *there == file.bytes)
      continue;
    print_out("made again it differs: " + file.name + "\n");
    ++count;
  }
  return count;
}

int make_again(const fs::path& folder) {
  const Json facts = Json::parse(read_file(folder / seal_facts).value_or(""), nullptr, false);
  if (facts.is_discarded() || !facts.is_object()) {
    print_error("sheerpole: " + std::string(seal_facts) + " can not be read, so nothing was made again\n");
    return exit_errors;
  }
  if (const std::string version = facts.value("version", ""); version != SHEERPOLE_VERSION)
    print_out("sealed with version " + printable(version) + "; this is " SHEERPOLE_VERSION "\n");
  const auto count = differing(folder, facts);
  if (!count)
    return exit_errors;
  if (*count == 0)
    print_out("made again, every paper is the same\n");
  return *count == 0 ? exit_clean : exit_errors;
}

int run(const Options& options) {
  const fs::path folder(options.folder);
  const auto list = read_file(folder / seal_sums);
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
  if (!options.seal.empty() && options.seal != seal) {
    print_out("the seal is another: " + seal + "\n");
    well = false;
  }
  if (well)
    print_out(std::to_string(sums.size()) + " files are as they were sealed\nseal " + seal + "\n");
  if (!options.again || !well)
    return well ? exit_clean : exit_errors;
  return make_again(folder);
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("verify", "say what of a sealed folder is altered, missing or extra");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FOLDER", options.folder, "the sealed folder")->required();
  verb.add_option("--seal", options.seal, "the seal that was printed when it was sealed, as written down")
      ->type_name("DIGEST");
  verb.add_flag("--again", options.again, "make the papers again and compare every byte");
}

} // namespace sheerpole::verify_verb
