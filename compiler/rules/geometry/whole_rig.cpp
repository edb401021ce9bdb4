#include "calculate/facts.hpp"
#include "calculate/geometry/foretriangle.hpp"
#include "calculate/geometry/held_directions.hpp"
#include "rules/check_table.hpp"
#include "units/format_length.hpp"

#include <array>

/// The rig as a whole: whether each mast is held every way, and the foretriangle.
namespace sheerpole::whole_rig {

namespace {

std::string listed(const std::vector<std::string>& names) {
  std::string result;
  for (const std::string& name : names)
    result += (result.empty() ? "" : ", ") + name;
  return result;
}

std::string held_words(const HeldDirections& held) {
  std::string result;
  for (std::size_t way = 0; way < direction_names.size(); ++way)
    result += (result.empty() ? "" : "; ") + std::string(direction_names[way]) + ": " +
              listed(held.by_direction[way]);
  return result;
}

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
    for (std::size_t way = 0; way < direction_names.size(); ++way)
      if (held.by_direction[way].empty())
        missing += (missing.empty() ? "" : " or ") + std::string(direction_names[way]);
    if (missing.empty())
      report.pass(spar.name, held_words(held));
    else
      report.find(
          diagnose("direction-not-held", {{"spar", spar.name},
                                          {"missing", missing},
                                          {"height", format_fixed(held.half_height_metres, 2) + " m"}})
              .at(spar.place)
              .about(spar.name));
  }
}

std::string metres_text(Length length) {
  return format_fixed(length.metres(), 3) + " m";
}

struct TriangleSide {
  std::string_view property; ///< of the boat
  std::string_view words;
  std::optional<Length> from_points;
  std::string_view missing; ///< why the points do not give it
};

void check_foretriangle_differs(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const auto bound = rig.limits.length(Limit::foretriangle_apart);
  if (!bound)
    return;
  const auto triangle = foretriangle(rig);
  const TriangleSide sides[] = {
      {"foretriangle-height", "height of the foretriangle", triangle ? triangle->height : std::nullopt,
       "sheer-at-mast of the boat is not stated"},
      {"foretriangle-base", "base of the foretriangle", triangle ? triangle->base : std::nullopt,
       "the upper end of the forestay is on no stated mast"}};
  for (const TriangleSide& side : sides) {
    const auto stated = fact_length(rig.boat.particulars, side.property);
    if (!stated)
      continue;
    if (!triangle) {
      report.not_checked("this rig", "no stay on the centreline is said to carry a sail (duty)");
      return;
    }
    const std::string subject = rig[triangle->forestay].name;
    if (!side.from_points) {
      report.not_checked(subject, std::string(side.words) + ": " + std::string(side.missing));
      continue;
    }
    const Length apart = stated->value > *side.from_points ? stated->value - *side.from_points
                                                           : *side.from_points - stated->value;
    if (!(apart > *bound + threshold::negligible)) {
      report.pass(subject, std::string(side.words) + " stated " + metres_text(stated->value) +
                               ", from points " + metres_text(*side.from_points));
      continue;
    }
    const Stay& forestay = rig[triangle->forestay];
    report.find(
        diagnose("foretriangle-differs", {{"what", std::string(side.words)},
                                          {"stated", metres_text(stated->value)},
                                          {"points", metres_text(*side.from_points)},
                                          {"stay", forestay.name},
                                          {"difference", format_fixed(apart.millimetres(), 0) + " mm"}})
            .at(stated->provenance.place.value_or(forestay.place), "stated " + metres_text(stated->value))
            .and_at(forestay.path.back().place, "from points " + metres_text(*side.from_points))
            .about(forestay.name));
  }
}

constexpr std::array rows{
    CheckRow{"direction-not-held", check_direction_not_held},
    CheckRow{"foretriangle-differs", check_foretriangle_differs, {Limit::foretriangle_apart}},
};

} // namespace

std::span<const CheckRow> checks() {
  return rows;
}

} // namespace sheerpole::whole_rig
