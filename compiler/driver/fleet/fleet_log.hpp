#pragma once

#include "diagnostics/severity_counts.hpp"
#include "driver/fleet/fleet_boat.hpp"

#include <set>
#include <string>

namespace sheerpole {

/// Puts the findings of many boats together into one output, boat by boat as they come: of `text` and
/// `lines` one behind the other, of `json` and `sarif` one document.
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
