#include "rules/adjuster_checks.hpp"
#include "rules/by_side.hpp"
#include "rules/thresholds.hpp"
#include "units/parse_quantity.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

/// The end of the range as the part's maker wrote it, when that is a quantity by itself; else in
/// millimetres.
std::string spelling_of(const Sourced<Length>& end) {
  const std::string& written = end.provenance.written;
  return !written.empty() && parse_quantity(written).ok() ? written : length_text(end.value);
}

/// The place of the setting when it was written as a length and stands there alone.
std::optional<Span> written_length(const StackItem& item) {
  const Provenance& provenance = item.set_length->provenance;
  if (item.open || !provenance.place || provenance.written.empty() ||
      provenance.place->end - provenance.place->begin != provenance.written.size())
    return std::nullopt;
  return provenance.place;
}

Diagnostic range_finding(const Rig& rig, const Stay& stay, const TakeUp& adjuster,
                         const std::string& name) {
  const Part& part = rig[adjuster.part];
  const StackItem& item = stay.stack[adjuster.item];
  const bool short_of = adjuster.to_tighten < Length{};
  const Sourced<Length>& end = short_of ? *part.shortest : *part.longest;
  const Length beyond = -(short_of ? adjuster.to_tighten : adjuster.to_slacken);
  const std::string which = short_of ? "shortest" : "longest";
  Diagnostic finding = diagnose("adjuster-out-of-range", {{"stay", name},
                                                          {"part", part.name},
                                                          {"set", length_text(adjuster.set.value)},
                                                          {"amount", length_text(beyond)},
                                                          {"beyond", short_of ? "shorter" : "longer"},
                                                          {"which", which},
                                                          {"end", length_text(end.value)}})
                           .at(adjuster.set.provenance.place.value_or(item.place),
                               length_text(beyond) + " beyond the " + which)
                           .about(name)
                           .build();
  if (end.provenance.place)
    finding.others.push_back({*end.provenance.place, "its " + which + " is " + length_text(end.value)});
  if (const auto place = written_length(item))
    finding.edit = Edit{*place, spelling_of(end), "write " + spelling_of(end)};
  return finding;
}

} // namespace

void check_adjuster_out_of_range(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const TakeUp& adjuster : stay.adjusters)
          if (adjuster.to_tighten < -threshold::negligible || adjuster.to_slacken < -threshold::negligible)
            of_stay.find(range_finding(rig, rig[stay.stay], adjuster, name));
          else
            of_stay.pass(rig[adjuster.part].name + " at " + length_text(adjuster.set.value) + ": " +
                         length_text(adjuster.to_tighten) + " to tighten, " +
                         length_text(adjuster.to_slacken) + " to slacken");
      });
}

} // namespace sheerpole
