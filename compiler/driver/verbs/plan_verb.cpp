#include "diagnostics/excerpt.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/depends_file.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/write_bundle.hpp"
#include "service/compile.hpp"

#include <algorithm>
#include <exception>
#include <filesystem>

namespace sheerpole::plan_verb {

namespace {

struct Options {
  std::vector<std::string> files;
  CompileOptions rig; ///< for each of them
  std::string folder;
  std::string form = "text"; ///< of the findings
};

/// Each file of the rig by where it really lies, so that stock used by two boats is known to be one.
std::vector<std::string> keys_of(const SourceSet& sources, FileReader& reader) {
  std::vector<std::string> keys;
  for (std::uint32_t i = 0; i < sources.size(); ++i)
    keys.push_back(reader.real_path(sources[SourceId{i}].name()));
  return keys;
}

/// The first path that names a file that another one names too.
std::optional<std::string> given_twice(const std::vector<std::string>& files, FileReader& reader) {
  std::vector<std::string> seen;
  for (const std::string& file : files) {
    const std::string path = reader.real_path(file);
    if (std::find(seen.begin(), seen.end(), path) != seen.end())
      return file;
    seen.push_back(path);
  }
  return std::nullopt;
}

int run(const Options& options) {
  DiskFileReader reader;
  if (const auto twice = given_twice(options.files, reader)) {
    print_error("sheerpole: " + printable(*twice) +
                " is given twice; a sister ship has a file of her own\nsheerpole plan --help shows how it "
                "is used.\n");
    return exit_usage;
  }
  std::vector<Compilation> compilations;
  for (const std::string& file : options.files) {
    print_progress("reading " + file + "\n");
    compilations.push_back(compile(file, reader, options.rig));
    if (!compilations.back().findings.empty())
      print_error(show_findings(compilations.back(), options.form, error_has_colour(), file));
  }
  std::vector<FleetRig> fleet;
  for (std::size_t i = 0; i < compilations.size(); ++i)
    if (compilations[i].checked)
      fleet.push_back({&*compilations[i].checked,
                       std::filesystem::path(options.files[i]).filename().generic_string(),
                       keys_of(*compilations[i].sources, reader)});
  if (fleet.size() < compilations.size()) {
    print_error("nothing was written: an error stands\n");
    return exit_errors;
  }

  print_progress("making spool-plan\n");
  OutputBundle bundle;
  try {
    bundle = built_in_backend("spool-plan")->generate({*fleet.front().checked, fleet});
  } catch (const std::exception& error) {
    print_error("sheerpole: fault of the back end spool-plan: " + std::string(error.what()) + "\n");
    return exit_fault;
  }
  std::vector<std::string> read;
  for (const Compilation& compilation : compilations)
    add_files(read, *compilation.sources);
  return write_and_tell(bundle, options.folder, read);
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("plan", "plan what to cut from which stock, for one boat or several at once");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FILE", options.files, "the rig files")->required();
  verb.add_option("--into", options.folder, "folder to write to; it is made if it is not there")
      ->required();
  add_findings_form(verb, options.form);
  add_allowed_folders(verb, options.rig);
}

} // namespace sheerpole::plan_verb
