#include "calculate/geometry/deck_outline.hpp"
#include "calculate/geometry/stay_clearance.hpp"
#include "rules/by_side.hpp"
#include "rules/geometry_checks.hpp"
#include "units/format_length.hpp"

namespace sheerpole {

namespace {

/// A chainplate may stand a little below the edge of the deck.
constexpr Length spared_at_ends = Length::millimetres(200.0);

} // namespace

void check_stay_through_deck(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto outline = deck_outline(rig);
  if (!outline) {
    report.not_checked("this rig", "the edge of the deck is not stated (deck-edge of the boat)");
    return;
  }
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  if (stay.path.size() < 2) {
                    of_stay.not_checked("it has no path through points");
                    return;
                  }
                  const std::vector<SpaceSegment> segments = segments_of(rig, stay);
                  for (std::size_t i = 0; i < segments.size(); ++i)
                    if (const auto through = through_deck(segments[i], *outline, spared_at_ends))
                      of_stay.find(
                          diagnose("stay-through-deck",
                                   {{"stay", name}, {"depth", format_millimetres(through->below) + " mm"}})
                              .at(stay.path[i + 1].place, "on the way here")
                              .about(name));
                  if (of_stay.found().empty())
                    of_stay.pass("it does not go through the deck");
                });
}

} // namespace sheerpole
