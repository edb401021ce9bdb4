#include "calculate/facts.hpp"
#include "calculate/geometry/stay_leads.hpp"
#include "rules/geometry_checks.hpp"
#include "rules/thresholds.hpp"
#include "units/format_length.hpp"

namespace sheerpole {

namespace {

std::string metres_text(Length length) {
  return format_fixed(length.metres(), 3) + " m";
}

struct TriangleSide {
  std::string_view property; ///< of the boat
  std::string_view words;
  std::optional<Length> from_points;
  std::string_view missing; ///< why the points do not give it
};

} // namespace

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

} // namespace sheerpole
