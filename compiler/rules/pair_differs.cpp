#include "rules/by_side.hpp"
#include "rules/length_checks.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// By how much the two bodies of a pair may differ: as the boat says, else by the limits. Nothing when all
/// of that is switched off.
std::optional<Length> allowed(const Rig& rig, Length body) {
  if (rig.boat.pair_tolerance)
    return rig.boat.pair_tolerance->value;
  const auto length = rig.limits.length(Limit::pair_apart);
  const auto share = rig.limits.value(Limit::pair_apart_share);
  if (!length && !share)
    return std::nullopt;
  return std::max(length.value_or(Length{}), body * share.value_or(0.0));
}

Diagnostic finding_of(const Rig& rig, const Stay& stay, Length port, Length starboard, Length bound) {
  const bool port_longer = port > starboard;
  Diagnostic finding =
      diagnose("pair-differs",
               {{"stay", stay.base},
                {"longer", port_longer ? "port" : "starboard"},
                {"shorter", port_longer ? "starboard" : "port"},
                {"difference", length_text(port_longer ? port - starboard : starboard - port)},
                {"longer-body", length_text(port_longer ? port : starboard)},
                {"shorter-body", length_text(port_longer ? starboard : port)},
                {"tolerance", length_text(bound)}})
          .at(stay.place, "port " + length_text(port) + ", starboard " + length_text(starboard))
          .about(stay.base)
          .build();
  if (rig.boat.pair_tolerance && rig.boat.pair_tolerance->provenance.place)
    finding.others.push_back(
        {*rig.boat.pair_tolerance->provenance.place, "alike within " + length_text(bound)});
  return finding;
}

} // namespace

void check_pair_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const DerivedStay& port : derived.stays) {
    const Stay& stay = rig[port.stay];
    if (stay.side != Side::port)
      continue;
    const DerivedStay* starboard = other_side(rig, derived, port);
    if (starboard == nullptr)
      continue;
    // Two marks on two cords can not be compared in a file.
    if (port.body.unknown || starboard->body.unknown) {
      report.not_checked(stay.base, "the length of a side is X");
      continue;
    }
    const Length to_port = port.body.known();
    const Length to_starboard = starboard->body.known();
    const auto bound = allowed(rig, to_port);
    if (!bound)
      continue;
    const Length difference = to_port > to_starboard ? to_port - to_starboard : to_starboard - to_port;
    if (difference > *bound + threshold::negligible)
      report.find(finding_of(rig, stay, to_port, to_starboard, *bound));
    else
      report.pass(stay.base, "port " + length_text(to_port) + ", starboard " + length_text(to_starboard));
  }
}

} // namespace sheerpole
