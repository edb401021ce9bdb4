#include "base/internal_error.hpp"
#include "diagnostics/excerpt.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/show_findings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"
#include "driver/verbs/write_and_tell.hpp"

#include <algorithm>
#include <exception>
#include <filesystem>

namespace sheerpole {

namespace {

std::unique_ptr<Backend> spool_plan() {
  for (auto& backend : built_in_backends())
    if (backend->describe().name == "spool-plan")
      return std::move(backend);
  internal_error("the back end spool-plan is not linked in");
}

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

} // namespace

int plan_verb(const PlanOptions& options) {
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
      print_error(show_findings(compilations.back(), options.findings.form, error_has_colour()));
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
    bundle = spool_plan()->generate({*fleet.front().checked, fleet});
  } catch (const std::exception& error) {
    print_error("sheerpole: fault of the back end spool-plan: " + std::string(error.what()) + "\n");
    return exit_fault;
  }
  return write_and_tell(bundle, options.folder);
}

} // namespace sheerpole
