#include "rules/by_side.hpp"
#include "rules/geometry_checks.hpp"
#include "rules/tip_words.hpp"
#include "units/quantity_text.hpp"

#include <cmath>

namespace sheerpole {

namespace {

/// A thrust that the third decimal does not show: the line goes straight past the tip.
constexpr double no_thrust = 0.0005;

std::string spreader_of(const Rig& rig, const TipOfStay& at) {
  return without_side(rig.spreaders[at.tip->spreader].name);
}

std::string words_of(const TipBend& bend) {
  if (std::abs(bend.thrust_share) < no_thrust)
    return "goes past the tip without bending towards the mast";
  return "pulls the tip outwards with " + share_text(-bend.thrust_share) + " of its tension";
}

} // namespace

void check_tip_pulled_out(const Rig& rig, const Derived& derived, CheckReport& report) {
  const std::vector<SpreaderTip> tips = spreader_tips(rig);
  const auto by_stay = tips_by_stay(rig, tips);
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const TipOfStay& at : by_stay[stay.stay.index()]) {
          if (!at.line->bend)
            continue; // two places are one: said elsewhere
          const TipBend& bend = *at.line->bend;
          if (bend.thrust_share >= no_thrust)
            of_stay.pass(spreader_of(rig, at) + ": pressed inwards by " + share_text(bend.thrust_share) +
                         " of its tension");
          else
            of_stay.find(
                diagnose("tip-pulled-out",
                         {{"stay", name}, {"spreader", spreader_of(rig, at)}, {"words", words_of(bend)}})
                    .at(rig[stay.stay].path[at.line->stop].place, "the tip")
                    .and_at(rig.spreaders[at.tip->spreader].place, "the spreader")
                    .about(name));
        }
      });
}

} // namespace sheerpole
