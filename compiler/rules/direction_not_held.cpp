#include "calculate/facts.hpp"
#include "calculate/geometry/junctions.hpp"
#include "rules/geometry_checks.hpp"
#include "units/format_length.hpp"
#include "wording/phrase_table.hpp"

namespace sheerpole {

namespace {

std::string listed(const std::vector<std::string>& names) {
  std::string result;
  for (const std::string& name : names)
    result += (result.empty() ? "" : ", ") + name;
  return result;
}

std::string words_of(const HeldDirections& held) {
  std::string result;
  for (std::size_t way = 0; way < pull_directions.size(); ++way)
    result += (result.empty() ? "" : "; ") + std::string(words(pull_directions[way])) + ": " +
              listed(held.by_direction[way]);
  return result;
}

} // namespace

void check_direction_not_held(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  if (fact_text(rig.boat.particulars, "covers") != "whole-rig") {
    report.not_checked("this rig", "that the files hold all stays is not stated (covers of the boat)");
    return;
  }
  const std::vector<HeldDirections> masts = held_directions(rig);
  if (masts.empty())
    report.not_checked("this rig", "no stay ends on a spar of the sort mast");
  for (const HeldDirections& held : masts) {
    const Spar& spar = rig.spars[held.spar];
    std::string missing;
    for (std::size_t way = 0; way < pull_directions.size(); ++way)
      if (held.by_direction[way].empty())
        missing += (missing.empty() ? "" : " or ") + std::string(words(pull_directions[way]));
    if (missing.empty())
      report.pass(spar.name, words_of(held));
    else
      report.find(
          diagnose("direction-not-held", {{"spar", spar.name},
                                          {"missing", missing},
                                          {"height", format_fixed(held.half_height_metres, 2) + " m"}})
              .at(spar.place)
              .about(spar.name));
  }
}

} // namespace sheerpole
