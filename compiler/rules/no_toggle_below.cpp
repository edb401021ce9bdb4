#include "rules/by_side.hpp"
#include "rules/lacks_toggle.hpp"
#include "rules/securing_checks.hpp"

namespace sheerpole {

void check_no_toggle_below(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const auto end = articulation(rig, stay, WhichEnd::lower);
                  if (!end)
                    return;
                  switch (swing_of(rig, stay, *end, WhichEnd::lower)) {
                  case Swing::no_matter:
                  case Swing::parallel:
                    break;
                  case Swing::lets:
                    of_stay.pass(*end->swings + " lets it swing both ways");
                    break;
                  case Swing::not_checked:
                    of_stay.not_checked("how far " + rig[stay.stack[*end->tee].part].name +
                                        " swings in its slot is not stated");
                    break;
                  case Swing::lacks:
                    of_stay.find(
                        diagnose("no-toggle-below", {{"stay", name}, {"line", rig[stay.material].name}})
                            .at(stay.stack[end->items.back()].place, "nothing above it swings both ways")
                            .about(name));
                    break;
                  }
                });
}

} // namespace sheerpole
