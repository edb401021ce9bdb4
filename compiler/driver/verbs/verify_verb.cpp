#include "backend/json/json.hpp"
#include "base/byte_text.hpp"
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
  Signer signer;
};

namespace fs = std::filesystem;

std::optional<std::string> read_file(const fs::path& path) {
  std::ifstream stream(path, std::ios::binary);
  std::string bytes((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
  return stream.bad() || !stream.is_open() ? std::nullopt : std::optional(std::move(bytes));
}

/// Every file below the folder but the list of sums and its signature, with its sum. A link, a pipe or a
/// device is no file of a seal: what stands for its sum is on no list.
SealSums sums_of_folder(const fs::path& folder) {
  SealSums sums;
  std::error_code ignored;
  for (fs::recursive_directory_iterator at(folder, ignored), end; at != end; at.increment(ignored)) {
    const std::string name = at->path().lexically_relative(folder).generic_string();
    if (at->is_symlink(ignored) || !(at->is_regular_file(ignored) || at->is_directory(ignored)))
      sums[name] = "no file";
    else if (at->is_regular_file(ignored) && name != seal_sums && name != seal_signature)
      sums[name] = sha256(read_file(at->path()).value_or(""));
  }
  return sums;
}

void say(const char* what, const std::vector<std::string>& names) {
  for (const std::string& name : names)
    print_out(std::string(what) + " " + printable(name) + "\n");
}

/// Whether the facts that lie there are those that are made now, but for the version and the commit that
/// name them.
bool same_facts(const std::string& there, const std::string& made) {
  Json facts = Json::parse(made);
  const Json found = Json::parse(there, nullptr, false);
  for (const char* member : {"version", "commit"})
    if (found.is_object() && found.contains(member))
      facts[member] = found[member];
    else
      facts.erase(member); // a folder that was sealed before there was one
  return write_json(facts) == there;
}

/// Every file of the folder made again and compared with the one that lies there, both ways: a paper that
/// is not made again was put there by somebody. How many differ.
std::size_t differing(const fs::path& folder, const SealSums& sums, const OutputBundle& made,
                      bool same_version) {
  std::size_t count = 0;
  std::set<std::string> names;
  for (const OutputFile& file : made.files) {
    names.insert(file.name);
    const auto there = read_file(folder / file.name);
    if (there && *there == file.bytes)
      continue;
    // Another version has another name, and so the sum of the facts is another.
    if (there && !same_version &&
        (file.name == seal_sums || (file.name == seal_facts && same_facts(*there, file.bytes))))
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
  const std::string facts_text = read_file(folder / seal_facts).value_or("");
  const auto request = request_in(facts_text, sums, folder.generic_string());
  if (!request) {
    print_error("sheerpole: " + std::string(seal_facts) +
                " is not what a seal holds, so nothing was made again\n");
    return exit_errors;
  }
  const Json facts = Json::parse(facts_text);
  const Json version = facts.value("version", Json());
  const bool same_version = version == SHEERPOLE_VERSION;
  if (!same_version)
    print_out("sealed with version " +
              printable(version.is_string() ? version.get<std::string>() : "unknown") +
              "; this is " SHEERPOLE_VERSION "\n");
  const auto made = make_seal(*request);
  if (!made.ok()) {
    print_error("sheerpole: what is sealed there cannot be made again\n");
    return exit_errors;
  }
  if (differing(folder, sums, made.value(), same_version) > 0)
    return exit_errors;
  print_out("made again, every paper is the same\n");
  return exit_clean;
}

/// Says what there is to say about the signature. False when one was to be checked and is not well.
bool signature_well(const Options& options, const fs::path& folder, const std::string& list) {
  std::error_code ignored;
  const fs::path signature = folder / seal_signature;
  const bool there = fs::is_regular_file(fs::symlink_status(signature, ignored));
  if (options.signer.program.empty()) {
    print_out(there ? "signed, which was not checked: --sign-with, --signers and --signer look by whom\n"
                    : "not signed: a sum says whether anything was altered, not who made it\n");
    return true;
  }
  if (!there) {
    print_out("not signed: there is no " + std::string(seal_signature) + "\n");
    return false;
  }
  if (const auto fault = signature_fault(options.signer, list, signature.string())) {
    print_out("not signed by " + printable(options.signer.name) + ": " + printable(*fault) + "\n");
    return false;
  }
  print_out("signed by " + printable(options.signer.name) + "\n");
  return true;
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
  well = well && signature_well(options, folder, *list);
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
  CLI::Option* const program =
      verb.add_option("--sign-with", options.signer.program,
                      "a program that checks signatures as ssh-keygen -Y does, by its path");
  CLI::Option* const known = verb.add_option("--signers", options.signer.known,
                                             "the file of names and their public keys, as it reads it");
  CLI::Option* const name =
      verb.add_option("--signer", options.signer.name, "who is to have signed, as named in that file");
  program->type_name("PROGRAM")->needs(known)->needs(name);
  known->type_name("FILE")->needs(program);
  name->type_name("NAME")->needs(program);
  verb.add_flag("--again", options.again, "make the papers again and compare every byte");
}

} // namespace sheerpole::verify_verb
