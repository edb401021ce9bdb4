#include "diagnostics/excerpt.hpp"
#include "diagnostics/render.hpp"
#include "driver/rig_argument.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/replace_file.hpp"
#include "service/mend.hpp"

#include <algorithm>
#include <filesystem>
#include <system_error>

namespace sheerpole::mend_verb {

namespace {

struct Options {
  std::vector<std::string> files;
  bool print = false; ///< show the mended text of the one file and write nothing
};

using Path = std::filesystem::path;

/// Where a file really is, links followed; empty when it is not there.
Path real_path(const Path& path) {
  std::error_code error;
  const Path result = std::filesystem::canonical(path, error);
  return error ? Path() : result;
}

/// Whether the file, and not only a link to it, lies in the folder or below.
bool lies_inside(const Path& folder, const std::string& file) {
  const Path real = real_path(file);
  if (folder.empty() || real.empty())
    return false;
  const Path relative = real.lexically_relative(folder);
  return !relative.empty() && *relative.begin() != "..";
}

std::string counted(std::size_t count, const std::string& what) {
  return std::to_string(count) + " " + what + (count == 1 ? "" : "s");
}

/// What was done to the file, line by line, in the form of findings that have one line each.
std::string what_was_done(const Mending& mending, const std::string& file) {
  std::string result;
  for (const MadeEdit& edit : mending.made)
    if (edit.file == file)
      result += printable(edit.file) + ":" + std::to_string(edit.place.line) + ":" +
                std::to_string(edit.place.column) + ": " + printable(edit.title) + "\n";
  return result;
}

std::string what_is_left(const std::string& file, const Mending& mending) {
  if (mending.after.findings.empty())
    return {};
  const SeverityCounts counts = count_severities(mending.after.findings);
  return "left in " + printable(file) + ": " + counted(counts.errors, "error") + ", " +
         counted(counts.warnings, "warning") + ", " + counted(counts.notes, "note") +
         "; `sheerpole check` shows them\n";
}

int mend_file(const std::string& file, bool print) {
  const Path parent = Path(file).parent_path();
  const Path folder = real_path(parent.empty() ? Path(".") : parent);
  const RigArgument argument = file_or_standard_input(file);
  const std::string root = Path(file).lexically_normal().generic_string();
  const Mending mending = mend(file, *argument.reader, [&](const std::string& name) {
    return name == root || lies_inside(folder, name);
  });
  if (mending.after.trees.empty()) { // there was nothing to read
    print_error(show_findings(mending.after, "text", error_has_colour()));
    return exit_errors;
  }
  const int code = mending.after.has_errors ? exit_errors : exit_clean;
  if (print || !argument.on_disk) {
    print_out((*mending.after.sources)[SourceId{0}].bytes());
    print_error(what_was_done(mending, root) + what_is_left(file, mending));
    return code;
  }
  if (mending.files.empty())
    print_out("nothing to mend in " + printable(file) + "\n");
  for (const MendedFile& changed : mending.files) {
    if (!replace_file(changed.name, changed.bytes)) {
      print_error("sheerpole: cannot write " + printable(changed.name) + "; it is as it was\n");
      return exit_usage;
    }
    print_out(what_was_done(mending, changed.name) + "wrote " + printable(changed.name) + "\n");
  }
  print_out(what_is_left(file, mending));
  return code;
}

int run(const Options& options) {
  if (options.print && options.files.size() != 1) {
    print_error("sheerpole: --print shows one file\nsheerpole mend --help shows how it is used.\n");
    return exit_usage;
  }
  int result = exit_clean;
  for (const std::string& file : options.files)
    result = std::max(result, mend_file(file, options.print));
  return result;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand("mend", "put right in the file what can be read in one way only");
  Options& options = options_of(verb, asked, run);
  verb.add_option(
          "FILE", options.files,
          "rig files; those they use are mended too; of -, standard input, the mended text goes to the "
          "terminal")
      ->required();
  verb.add_flag("--print", options.print, "show the mended text of the one FILE and write nothing");
}

} // namespace sheerpole::mend_verb
