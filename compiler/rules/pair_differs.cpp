#include "calculate/length_text.hpp"
#include "rules/by_side.hpp"
#include "rules/checks.hpp"
#include "rules/thresholds.hpp"

namespace sheerpole {

void check_pair_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  if (!rig.boat.pair_tolerance)
    return;
  const Sourced<Length>& tolerance = *rig.boat.pair_tolerance;
  for (const DerivedStay& port : derived.stays) {
    if (rig[port.stay].side != Side::port)
      continue;
    const DerivedStay* starboard = other_side(rig, derived, port);
    // Two marks on two cords can not be compared in a file.
    if (starboard == nullptr || port.body.unknown || starboard->body.unknown)
      continue;
    const Length to_port = port.body.known();
    const Length to_starboard = starboard->body.known();
    const bool port_longer = to_port > to_starboard;
    const Length difference = port_longer ? to_port - to_starboard : to_starboard - to_port;
    if (difference <= tolerance.value + threshold::negligible)
      continue;
    const Stay& stay = rig[port.stay];
    Diagnostic finding =
        diagnose("pair-differs", {{"stay", stay.base},
                                  {"longer", port_longer ? "port" : "starboard"},
                                  {"shorter", port_longer ? "starboard" : "port"},
                                  {"difference", length_text(difference)},
                                  {"longer-body", length_text(port_longer ? to_port : to_starboard)},
                                  {"shorter-body", length_text(port_longer ? to_starboard : to_port)},
                                  {"tolerance", length_text(tolerance.value)}})
            .at(stay.place, "port " + length_text(to_port) + ", starboard " + length_text(to_starboard))
            .about(stay.base)
            .build();
    if (tolerance.provenance.place)
      finding.others.push_back(
          {*tolerance.provenance.place, "alike within " + length_text(tolerance.value)});
    sink.report(std::move(finding));
  }
}

} // namespace sheerpole
