#include "diagnostics/excerpt.hpp"
#include "driver/fleet/fleet_boat.hpp"
#include "driver/fleet/fleet_folders.hpp"
#include "driver/fleet/in_order.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"

#include <algorithm>
#include <filesystem>
#include <optional>

namespace sheerpole::fleet_verb {

namespace {

struct Options {
  std::vector<std::string> files; ///< or `@list.txt`
  CompileOptions rig;             ///< for each of them
  std::string folder;             ///< empty: the boats are only checked
  std::vector<std::string> only;  ///< back ends; empty: the usual ones
  std::string form = "text";      ///< of the findings
  std::string fail_on = "error";
  PaperOptions papers;
  unsigned workers = 0; ///< 0: as many as processors
};

/// Where the papers of each boat go; empty strings when none are made. Nothing, and what is wrong has been
/// said, when they can not go there.
std::optional<std::vector<std::string>> folders_for(const std::vector<std::string>& files,
                                                    const std::string& into) {
  if (into.empty())
    return std::vector<std::string>(files.size());
  auto names = fleet_folders(files);
  if (!names.ok()) {
    print_error(names.error());
    return std::nullopt;
  }
  std::error_code error;
  std::filesystem::create_directories(into, error);
  if (!std::filesystem::is_directory(into, error)) {
    print_error("sheerpole: cannot make or write to the folder " + printable(into) +
                "; nothing was written\n");
    return std::nullopt;
  }
  for (std::string& name : names.value())
    name = (std::filesystem::path(into) / name).generic_string();
  return std::move(names.value());
}

int run(const Options& options) {
  DiskFileReader reader;
  const auto files = file_arguments(options.files, reader);
  if (!files.ok()) {
    print_error(files.error());
    return exit_usage;
  }
  const bool writes = !options.folder.empty();
  ChosenBackends chosen;
  if (writes)
    chosen = choose_backends(options.only, {}, false);
  if (!chosen.unknown.empty()) {
    print_error(chosen.unknown);
    return exit_usage;
  }
  const auto folders = folders_for(files.value(), options.folder);
  if (!folders)
    return exit_usage;
  FleetWork work{.rig = options.rig,
                 .form = options.form,
                 .fail_on = options.fail_on,
                 .colour = out_has_colour(),
                 .write = writes,
                 .backends = &chosen.backends,
                 .paper = options.papers.size(),
                 .pdf = options.papers.pdf};
  const unsigned workers = workers_for(options.workers);
  if (workers > 1 && files.value().size() > 1)
    work.rig.threads = 1; // each boat has one processor
  keep_memory();
  FleetLog log(work.form, writes);
  ProgressLine progress(files.value().size());
  int worst = exit_clean;
  print_out(log.begin());
  in_order<FleetOutcome>(
      files.value().size(), workers,
      {.work = [&](std::size_t i) { return do_boat(files.value()[i], (*folders)[i], work); },
       .deliver =
           [&](std::size_t i, FleetOutcome outcome) {
             progress.clear();
             print_out(log.add(files.value()[i], outcome));
             if (!outcome.errors.empty())
               print_error(printable(files.value()[i]) + ":\n" + outcome.errors);
             worst = std::max(
                 {worst, static_cast<int>(outcome.code), code_for(outcome.counts, options.fail_on)});
           },
       .progress = [&](std::size_t done) { progress.show(done); }});
  progress.clear();
  print_out(log.end());
  if (work.form == "text")
    print_out("\n" + log.table());
  else // what is on the other stream is for programs
    print_error(log.table());
  return worst;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand("fleet", "check many boats at once, and write the papers of each");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FILE", options.files,
                  "the rig files; @list.txt stands for those that list.txt names, one a line")
      ->required();
  CLI::Option* into = verb.add_option(
      "--into", options.folder,
      "folder to write to, in it a folder for each boat; not given: the boats are only checked");
  into->type_name("FOLDER");
  add_only(verb, options.only, "cut-list,diagram")->needs(into);
  add_papers(verb, options.papers, "papers as PDF as well", into);
  add_workers(verb, options.workers);
  add_findings_form(verb, options.form);
  add_fail_on(verb, options.fail_on);
  add_allowed_folders(verb, options.rig);
}

} // namespace sheerpole::fleet_verb
