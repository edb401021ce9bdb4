#include "calculate/geometry/junctions.hpp"
#include "calculate/geometry/stay_leads.hpp"
#include "calculate/strength/stay_directions.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/geometry_phrases.hpp"
#include "wording/model_words.hpp"

#include <algorithm>
#include <cmath>

/// How stays lead away from the mast, to their chainplates and through a junction.
namespace sheerpole::leads {

namespace {

using Common = AnyCheckPhrase;

using P = GeometryCheckPhrase;

bool below(const Rig& rig, double angle, Limit limit) {
  const auto bound = rig.limits.value(limit);
  return bound && angle < *bound - threshold::negligible_radians;
}

Diagnostic angle_finding(const Rig& rig, const Stay& stay, const ShroudAtMast& at, const std::string& name,
                         std::string_view slug, Limit limit) {
  return diagnose(slug, {{"stay", name},
                         {"angle", angle_text(at.radians)},
                         {"against", say(rig, at.against)},
                         {"bound", limit_text(rig.limits, limit)},
                         {"pull", format_fixed(tension_over_side_force(at.radians).value_or(0.0), 1)}})
      .at(stay.path.front().place, say(rig, {P::angle_from, {Angle{at.radians}, Remarks{{at.against}}}}))
      .about(name)
      .build();
}

/// The two checks on the angle of a shroud at the mast, of which the one for a small angle speaks first.
template <Limit limit>
void check_shroud_angle(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const auto at = shroud_at_mast(rig, stay);
                  if (!at)
                    return;
                  if (limit != Limit::stay_angle_least && below(rig, at->radians, Limit::stay_angle_least))
                    return; // the other check speaks
                  if (below(rig, at->radians, limit))
                    of_stay.find(angle_finding(rig, stay, *at, name, report.check(), limit));
                  else
                    of_stay.pass({P::angle_from, {Angle{at->radians}, Remarks{{at->against}}}});
                });
}

bool leans_more(const Rig& rig, double off, Limit limit) {
  const auto bound = rig.limits.value(limit);
  return bound && off > *bound + threshold::negligible_radians;
}

Remark plane_of(const PlateLead& lead) {
  if (std::abs(lead.lean_radians) < threshold::negligible_radians)
    return P::stands_upright;
  if (lead.athwartships)
    return {lead.lean_radians < 0.0 ? P::leans_aft : P::leans_forward,
            {Angle{std::abs(lead.lean_radians)}}};
  return {lead.lean_radians < 0.0 ? P::leans_outboard : P::leans_inboard,
          {Angle{std::abs(lead.lean_radians)}}};
}

Diagnostic plate_finding(const Rig& rig, const Stay& stay, const PlateLead& lead, const std::string& name,
                         std::string_view slug) {
  const Part& plate = rig[lead.plate];
  Diagnostic finding =
      diagnose(slug, {{"stay", name},
                      {"plate", plate.name},
                      {"off", angle_text(lead.off_radians)},
                      {"plane", say(rig, plane_of(lead))},
                      {"share", percent_text(std::sin(lead.off_radians))}})
          .at(stay.path.back().place, say(rig, {P::out_of_plane, {Angle{lead.off_radians}}}))
          .about(name)
          .build();
  finding.others.push_back({plate.place, said(P::the_plate)});
  return finding;
}

/// The two checks on how a stay leads to its chainplate, of which the one for far off speaks first.
template <Limit limit>
void check_plate_lead(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report,
      [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
        const Stay& stay = rig[derived_stay.stay];
        const auto plate = plate_of(rig, stay);
        if (!plate)
          return;
        const auto lead = plate_lead(rig, stay);
        if (!lead) {
          of_stay.not_checked(stay.path.size() < 2
                                  ? Remark(Common::no_path_through_points)
                                  : Remark(Common::of_not_stated, {Words{"plane-lean"}, *plate}));
          return;
        }
        if (limit != Limit::plate_off_most && leans_more(rig, lead->off_radians, Limit::plate_off_most))
          return; // the other check speaks
        if (leans_more(rig, lead->off_radians, limit))
          of_stay.find(plate_finding(rig, stay, *lead, name, report.check()));
        else
          of_stay.pass({P::plane_of_plate, {*plate, Angle{lead->off_radians}, Remarks{{plane_of(*lead)}}}});
      });
}

/// In millimetres, to a tenth.
Words tenths(Length length) {
  return {format_millimetres(length, 1)};
}

P line_words(const JunctionBalance& balance) {
  constexpr double alike_millimetres = 0.5; // then the line says what the plane says
  if (balance.legs_are_a_pair &&
      std::abs(balance.from_middle.millimetres() - balance.off.millimetres()) < alike_millimetres)
    return P::line_to_middle;
  return P::plane_of_ends;
}

/// "each leg at 16 deg carries 0.52 of its tension"
Remarks legs_words(const Rig& rig, const JunctionBalance& balance) {
  Remarks legs;
  for (const JunctionLeg& leg : balance.loaded)
    legs.all.push_back(
        {P::one_leg,
         {Words{rig[leg.stay].name}, Angle{leg.angle_radians}, Fixed{leg.share.value_or(0.0), 2}}});
  const auto& both = balance.loaded;
  if (balance.legs_are_a_pair && both.size() == 2 &&
      say(rig, {P::each_leg, {Angle{both[0].angle_radians}, Fixed{both[0].share.value_or(0.0), 2}}}) ==
          say(rig, {P::each_leg, {Angle{both[1].angle_radians}, Fixed{both[1].share.value_or(0.0), 2}}}))
    return {{{P::each_leg, {Angle{both[0].angle_radians}, Fixed{both[0].share.value_or(0.0), 2}}}}};
  return legs;
}

Remark junction_words(const JunctionBalance& balance, bool off) {
  if (off)
    return {P::stands_off, {tenths(balance.off), Words{said(line_words(balance))}}};
  return P::would_push;
}

void check_junction_off_line(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const auto bound = rig.limits.length(Limit::junction_off);
  if (!bound)
    return;
  for (const JunctionBalance& balance : junction_balances(rig)) {
    const Stay& single = rig[balance.single];
    const Point& at = rig[balance.at];
    if (!balance.not_checked.empty()) {
      report.not_checked(single.name, balance.not_checked);
      continue;
    }
    const bool off = balance.off > *bound + threshold::negligible;
    if (!off && balance.leg_share) {
      report.pass(single.name, {P::on_its_line,
                                {Words{at.base}, tenths(balance.off), Words{said(line_words(balance))},
                                 legs_words(rig, balance)}});
      continue;
    }
    auto finding = diagnose("junction-off-line", {{"stay", single.name},
                                                  {"point", at.base},
                                                  {"words", say(rig, junction_words(balance, off))}})
                       .at(at.provenance.place.value_or(single.place), at.base)
                       .and_at(single.place, said(P::stay_that_ends))
                       .about(single.name);
    std::vector<std::string> told; // a mirrored end is stated once
    for (const StayId leg : balance.legs)
      for (const PointId end : {rig[leg].path.front().point, rig[leg].path.back().point})
        if (const auto place = rig[end].provenance.place;
            end != balance.at && place &&
            std::find(told.begin(), told.end(), rig[end].base) == told.end()) {
          told.push_back(rig[end].base);
          finding = std::move(finding).and_at(*place, rig[end].base);
        }
    report.find(std::move(finding));
  }
}

} // namespace

const CheckTable checks{
    CheckRow{"stay-angle-small", check_shroud_angle<Limit::stay_angle_least>, {Limit::stay_angle_least}},
    CheckRow{
        "stay-angle-below-usual", check_shroud_angle<Limit::stay_angle_usual>, {Limit::stay_angle_usual}},
    CheckRow{"plate-off-lead", check_plate_lead<Limit::plate_off_usual>, {Limit::plate_off_usual}},
    CheckRow{"plate-far-off-lead", check_plate_lead<Limit::plate_off_most>, {Limit::plate_off_most}},
    CheckRow{"junction-off-line", check_junction_off_line, {Limit::junction_off}},
};

} // namespace sheerpole::leads
