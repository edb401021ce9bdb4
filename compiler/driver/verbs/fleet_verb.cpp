#include "diagnostics/excerpt.hpp"
#include "driver/exit_code.hpp"
#include "driver/fleet/file_arguments.hpp"
#include "driver/fleet/fleet_folders.hpp"
#include "driver/fleet/fleet_log.hpp"
#include "driver/fleet/in_order.hpp"
#include "driver/fleet/progress_line.hpp"
#include "driver/fleet/workers.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"
#include "syntax/prepare_for_threads.hpp"

#include <algorithm>
#include <filesystem>
#include <optional>

namespace sheerpole {

namespace {

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
  if (!std::filesystem::is_directory(into)) {
    print_error("sheerpole: can not make or write to the folder " + into + "; nothing was written\n");
    return std::nullopt;
  }
  for (std::string& name : names.value())
    name = (std::filesystem::path(into) / name).generic_string();
  return std::move(names.value());
}

} // namespace

int fleet_verb(const FleetOptions& options) {
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
                 .form = options.findings.form,
                 .colour = out_has_colour(),
                 .write = writes,
                 .backends = &chosen.backends,
                 .paper = options.paper == "letter" ? PaperSize::letter : PaperSize::a4,
                 .pdf = options.pdf};
  const unsigned workers = workers_for(options.workers);
  if (workers > 1 && files.value().size() > 1)
    work.rig.threads = 1; // each boat has one processor
  prepare_for_threads();
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
             worst = std::max<int>(worst, outcome.code);
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

} // namespace sheerpole
