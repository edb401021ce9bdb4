#pragma once

#include "backend/page/paper.hpp"
#include "diagnostics/severity_counts.hpp"
#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/make_papers.hpp"

#include <string>

namespace sheerpole {

/// What is done with each boat.
struct FleetWork {
  CompileOptions rig;
  std::string form = "text"; ///< of the findings: text, lines, json, sarif
  bool colour = false;
  bool write = false; ///< else she is only checked
  const Backends* backends = nullptr;
  PaperSize paper = PaperSize::a4;
  bool pdf = false;
};

/// What is kept of a boat when she is done: texts and numbers, so that a thousand boats have room.
struct FleetOutcome {
  std::string
      findings;       ///< in the form asked for, as `check` shows them; of one without any still the counts
  std::string errors; ///< what is to be said of a paper or a folder that failed; empty: nothing
  SeverityCounts counts;
  std::size_t drafts = 0; ///< reasons not to cut yet
  std::size_t files = 0;  ///< that were written
  ExitCode code = exit_clean;
};

/// Checks one boat and, when it is asked for and no error stands, writes her papers into the folder. Called
/// from several threads at once; prints nothing.
FleetOutcome do_boat(const std::string& file, const std::string& folder, const FleetWork& work);

} // namespace sheerpole
