#include "calculate/geometry/junctions.hpp"
#include "rules/geometry_checks.hpp"
#include "rules/thresholds.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

std::string tenths(Length length) {
  return format_millimetres(length, 1) + " mm";
}

std::string line_words(const JunctionBalance& balance) {
  if (balance.legs_are_a_pair)
    return "the straight line from its other end to the middle between the ends of its legs";
  return "the plane through the ends of its three stays";
}

std::string words_of(const JunctionBalance& balance, bool off) {
  if (off)
    return "it stands " + tenths(balance.off) + " off " + line_words(balance);
  return "one of its legs would have to push to hold it where it stands";
}

} // namespace

void check_junction_off_line(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const auto bound = rig.limits.length(Limit::junction_off);
  if (!bound)
    return;
  for (const JunctionBalance& balance : junction_balances(rig)) {
    const Stay& single = rig[balance.single];
    const Point& at = rig[balance.at];
    if (!balance.not_checked.empty()) {
      report.not_checked(single.name, say(rig, balance.not_checked));
      continue;
    }
    const bool off = balance.off > *bound + threshold::negligible;
    if (!off && balance.leg_share) {
      report.pass(single.name, at.base + ": " + tenths(balance.off) + " off " + line_words(balance) +
                                   "; each leg carries " + format_fixed(*balance.leg_share, 2) +
                                   " of its tension");
      continue;
    }
    report.find(diagnose("junction-off-line",
                         {{"stay", single.name}, {"point", at.base}, {"words", words_of(balance, off)}})
                    .at(at.provenance.place.value_or(single.place), at.base)
                    .and_at(single.place, "the stay that ends there")
                    .about(single.name));
  }
}

} // namespace sheerpole
