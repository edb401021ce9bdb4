#pragma once

#include "backend/page/paper.hpp"
#include "diagnostics/render.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/terminal.hpp"
#include "service/compile.hpp"

#include <set>
#include <string>

namespace sheerpole {

/// What is done with each boat.
struct FleetWork {
  CompileOptions rig;
  std::string form = "text"; ///< of the findings: text, lines, json, sarif, junit, code-quality
  std::string fail_on = "error";
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

/// Puts the findings of many boats together into one output, boat by boat as they come: of `text` and
/// `lines` one behind the other, of the others one document.
class FleetLog {
public:
  FleetLog(std::string form, bool writes) : form_(std::move(form)), writes_(writes) {}

  /// What stands before the first boat.
  std::string begin() const;
  std::string add(const std::string& file, const FleetOutcome& outcome);
  /// What stands behind the last one.
  std::string end() const;

  /// A line for each boat and one for all of them.
  std::string table() const;

private:
  std::string add_json(const std::string& file, const FleetOutcome& outcome) const;
  std::string add_sarif(const FleetOutcome& outcome);
  std::string add_list(const FleetOutcome& outcome);

  struct Line {
    std::string file;
    SeverityCounts counts;
    std::size_t drafts = 0;
    std::size_t files = 0;
  };
  std::string form_;
  bool writes_;
  std::vector<Line> lines_;
  Line total_;
  std::set<std::string> rules_known_; ///< of a SARIF log: their ids
  std::string rules_;                 ///< and what is to be said of them
  bool any_result_ = false;
};

} // namespace sheerpole
