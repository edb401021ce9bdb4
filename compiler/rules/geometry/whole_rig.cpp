#include "calculate/facts.hpp"
#include "calculate/geometry/junctions.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "calculate/geometry/stay_leads.hpp"
#include "model/fact_name.hpp"
#include "rules/check_table.hpp"
#include "units/format_length.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/geometry_phrases.hpp"
#include "wording/model_words.hpp"
#include "wording/phrase_table.hpp"

#include <algorithm>
#include <cmath>

/// The rig as a whole: whether each mast is held every way, and the foretriangle.
namespace sheerpole::whole_rig {

namespace {

using Common = AnyCheckPhrase;

using P = GeometryCheckPhrase;

/// "forward: triatic, which rests on the main; aft: shroud"
std::string held_words(const Rig& rig, const HeldDirections& held) {
  std::vector<std::string> ways;
  for (std::size_t way = 0; way < pull_directions.size(); ++way) {
    std::vector<std::string> names;
    for (const StayId id : held.stays_by_direction[way]) {
      const Stay& stay = rig[id];
      const Spar* on = rests_on(rig, stay, rig.spars[held.spar]);
      std::string name =
          on == nullptr ? stay.base : say(rig, {P::rests_on, {Words{stay.base}, Words{spar_words(*on)}}});
      if (std::find(names.begin(), names.end(), name) == names.end())
        names.push_back(std::move(name));
    }
    ways.push_back(std::string(words(pull_directions[way])) + ": " + joined(names, Join::comma));
  }
  return joined(ways, Join::semicolon);
}

/// What stands on the spar and holds it nowhere may have a slip in its height, or in how far it is off.
DiagnosticBuilder with_tangs_that_do_not_count(const Rig& rig, const HeldDirections& held,
                                               DiagnosticBuilder finding) {
  const Spar& spar = rig.spars[held.spar];
  std::vector<std::string> told; // of both sides one
  for (const Stay& stay : rig.stays) {
    if (stay.path.size() < 2)
      continue;
    for (const PointId end : {stay.path.front().point, stay.path.back().point}) {
      const Point& tang = rig[end];
      const auto on = mast_of(rig, tang);
      const bool counts =
          on && on->mast == &spar &&
          from_spar(spar_line(spar), space_point(tang.position)).along.metres() >= held.half_height_metres;
      if (tang.spar != spar.name || counts || !tang.provenance.place ||
          std::find(told.begin(), told.end(), tang.base) != told.end())
        continue;
      told.push_back(tang.base);
      finding = std::move(finding).and_at(*tang.provenance.place,
                                          say(rig, {P::does_not_count, {Words{tang.base}}}));
    }
  }
  // A stay that counts and leads straight down pulls no way at all.
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    const Stay& stay = rig.stays[i];
    if (stay.path.size() < 2 || rig[stay.path.front().point].spar != spar.name)
      continue;
    const Point& foot = rig[stay.path.back().point];
    const bool leads =
        std::any_of(held.stays_by_direction.begin(), held.stays_by_direction.end(), [&](const auto& ids) {
          return std::find(ids.begin(), ids.end(), StayId{static_cast<std::uint32_t>(i)}) != ids.end();
        });
    if (leads || foot.spar == spar.name || !foot.provenance.place ||
        std::find(told.begin(), told.end(), foot.base) != told.end() ||
        std::find(told.begin(), told.end(), rig[stay.path.front().point].base) != told.end())
      continue;
    told.push_back(foot.base);
    finding = std::move(finding).and_at(*foot.provenance.place,
                                        say(rig, {P::leads_no_way, {Words{stay.base}, Words{foot.base}}}));
  }
  return finding;
}

void check_direction_not_held(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  if (fact_text(rig.boat.particulars, fact_names.covers) != "whole-rig") {
    report.not_checked(said(Common::this_rig), {P::covers_not_stated});
    return;
  }
  const std::vector<HeldDirections> masts = held_directions(rig);
  if (masts.empty())
    report.not_checked(said(Common::this_rig), {P::no_mast});
  for (const HeldDirections& held : masts) {
    const Spar& spar = rig.spars[held.spar];
    if (held.stays == 0) {
      report.not_checked(spar.name, {P::no_stay_on_spar});
      continue;
    }
    std::string missing;
    for (std::size_t way = 0; way < pull_directions.size(); ++way)
      if (held.by_direction[way].empty())
        missing = joined({missing, std::string(words(pull_directions[way]))}, Join::or_word);
    if (missing.empty())
      report.pass(spar.name, held_words(rig, held));
    else
      report.find(with_tangs_that_do_not_count(
          rig, held,
          diagnose("direction-not-held",
                   {{"spar", spar.name},
                    {"missing", missing},
                    {"height", say(rig, {P::metres, {Fixed{held.half_height_metres, 2}}})}})
              .at(spar.place)
              .about(spar.name)));
  }
}

/// In metres, to a millimetre.
Fixed in_metres(Length length) {
  return {length.metres(), 3};
}

struct TriangleSide {
  std::string_view property; ///< of the boat
  P words;
  std::optional<Length> from_points;
  P missing; ///< why the points do not give it
};

void check_foretriangle_differs(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const auto bound = rig.limits.length(Limit::foretriangle_apart);
  if (!bound)
    return;
  const auto triangle = foretriangle(rig);
  const TriangleSide sides[] = {{"foretriangle-height", P::height_of_foretriangle,
                                 triangle ? triangle->height : std::nullopt, P::no_sheer},
                                {"foretriangle-base", P::base_of_foretriangle,
                                 triangle ? triangle->base : std::nullopt, P::end_on_no_mast}};
  for (const TriangleSide& side : sides) {
    const auto stated = fact_length(rig.boat.particulars, side.property);
    if (!stated)
      continue;
    if (!triangle) {
      report.not_checked(said(Common::this_rig), {P::no_headstay});
      return;
    }
    const std::string subject = rig[triangle->forestay].name;
    if (!side.from_points) {
      report.not_checked(subject, {Common::of_something, {Remarks{{side.words}}, Remarks{{side.missing}}}});
      continue;
    }
    const Length apart = stated->value > *side.from_points ? stated->value - *side.from_points
                                                           : *side.from_points - stated->value;
    if (!(apart > *bound + threshold::negligible)) {
      report.pass(subject,
                  {P::stated_and_points,
                   {Remarks{{side.words}}, in_metres(stated->value), in_metres(*side.from_points)}});
      continue;
    }
    const Stay& forestay = rig[triangle->forestay];
    report.find(
        diagnose("foretriangle-differs", {{"what", said(side.words)},
                                          {"stated", say(rig, {P::metres, {in_metres(stated->value)}})},
                                          {"points", say(rig, {P::metres, {in_metres(*side.from_points)}})},
                                          {"stay", forestay.name},
                                          {"difference", format_fixed(apart.millimetres(), 0) + " mm"}})
            .at(stated->provenance.place.value_or(forestay.place),
                say(rig, {P::stated_metres, {in_metres(stated->value)}}))
            .and_at(forestay.path.back().place,
                    say(rig, {P::points_metres, {in_metres(*side.from_points)}}))
            .and_at(rig[forestay.path.front().point].provenance.place.value_or(forestay.place),
                    said(P::its_upper_end))
            .and_at(rig[forestay.path.back().point].provenance.place.value_or(forestay.place),
                    said(P::its_lower_end))
            .about(forestay.name));
  }
}

/// A point this near to a plane lies in it: a drawing is read no finer. Choice of the project, no source.
constexpr Length in_the_plane = Length::millimetres(1.0);

/// How much longer a stay is whose lower end stands out to the side at half the beam.
Length longer_at_the_side(Length length, Length half_beam) {
  return Length::metres(std::hypot(length.metres(), half_beam.metres())) - length;
}

void check_points_in_one_plane(const Rig& rig, const Derived& derived, CheckReport& report) {
  constexpr std::size_t least_points =
      6; // of fewer nothing can be said: a bowsprit rig has as many in line
  if (rig.points.size() < least_points)
    return;
  const bool flat = std::all_of(rig.points.begin(), rig.points.end(), [](const Point& point) {
    return magnitude(point.position.y) <= in_the_plane;
  });
  if (!flat) {
    report.pass(said(Common::this_rig), passed(report.check(), {}));
    return;
  }
  const DerivedStay* longest = nullptr;
  for (const DerivedStay& stay : derived.stays)
    if (stay.route == LengthRoute::path &&
        (longest == nullptr || stay.pin_to_pin.known() > longest->pin_to_pin.known()))
      longest = &stay;
  const auto beam = fact_length(rig.boat.particulars, fact_names.beam);
  if (longest == nullptr)
    return;
  const Length length = longest->pin_to_pin.known();
  const Remark by = beam ? Remark(P::would_be_longer, {Words{rig[longest->stay].name},
                                                       longer_at_the_side(length, beam->value * 0.5)})
                         : Remark(P::beam_not_stated);
  report.find(
      diagnose(report.check(), {{"points", std::to_string(rig.points.size())}, {"by", say(rig, by)}})
          .at(rig.points.front().provenance.place.value_or(rig[longest->stay].place))
          .about(said(Common::this_rig)));
}

} // namespace

const CheckTable checks{
    CheckRow{"direction-not-held", check_direction_not_held},
    CheckRow{"foretriangle-differs", check_foretriangle_differs, {Limit::foretriangle_apart}},
    CheckRow{"points-in-one-plane", check_points_in_one_plane}};

} // namespace sheerpole::whole_rig
