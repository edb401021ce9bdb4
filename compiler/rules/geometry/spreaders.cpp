#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/spreader_tips.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>

/// How spreaders stand to the lines over their tips.
namespace sheerpole::spreaders {

namespace {

bool off_by_more(const Rig& rig, double off, Limit limit) {
  const auto bound = rig.limits.value(limit);
  return bound && std::abs(off) > *bound + threshold::negligible_radians;
}

Length spreader_length(const Rig& rig, const SpreaderTip& tip) {
  const Spreader& spreader = rig.spreaders[tip.spreader];
  const Vector3& root = rig[spreader.root].position;
  const Vector3& end = rig[spreader.tip].position;
  return Length::metres(
      std::hypot((end.x - root.x).metres(), (end.y - root.y).metres(), (end.z - root.z).metres()));
}

/// "rises 5.9 deg", "falls 0.5 deg": outwards from the mast.
std::string rise_text(double radians) {
  return (radians < 0.0 ? "falls " : "rises ") + angle_text(std::abs(radians));
}

/// "intermediate 5.6 deg": how far off the other lines over the tip find it.
std::string others_at(const Rig& rig, const SpreaderTip& tip, const LineOverTip& judged) {
  std::string words;
  for (const LineOverTip& line : tip.lines)
    if (line.stay != judged.stay && line.halving_radians)
      words += "; " + rig[line.stay].base + (line.clamped ? " (clamped) " : " (free) ") +
               angle_text(std::abs(line.off_bisector())) + " off";
  return words;
}

Diagnostic bisector_finding(const Rig& rig, const TipOfStay& at, const std::string& name,
                            std::string_view slug) {
  const LineOverTip& line = *at.line;
  const std::string spreader = without_side(rig.spreaders[at.tip->spreader].name);
  const double off = line.off_bisector();
  const Length at_tip = spreader_length(rig, *at.tip) *
                        std::abs(std::sin(*line.halving_radians) - std::sin(line.rise_radians));
  Diagnostic finding = diagnose(slug, {{"stay", name},
                                       {"spreader", spreader},
                                       {"rise", rise_text(line.rise_radians)},
                                       {"halving", rise_text(*line.halving_radians)},
                                       {"off", angle_text(std::abs(off))},
                                       {"way", off < 0.0 ? "low" : "high"},
                                       {"lift", format_fixed(at_tip.millimetres(), 0) + " mm"}})
                           .at(rig[line.stay].path[line.stop].place, rise_text(line.rise_radians))
                           .about(name)
                           .build();
  finding.others.push_back({rig.spreaders[at.tip->spreader].place,
                            "one that " + rise_text(*line.halving_radians) + " would halve the angle"});
  return finding;
}

/// The two checks on the rise of a spreader, of which the one for far off the bisector speaks first.
template <Limit limit>
void check_bisector(const Rig& rig, const Derived& derived, CheckReport& report) {
  const std::vector<SpreaderTip> tips = spreader_tips(rig);
  const auto by_stay = tips_by_stay(rig, tips);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const TipOfStay& at : by_stay[stay.stay.index()]) {
                    if (line_that_sets(*at.tip) != at.line)
                      continue;
                    const double off = at.line->off_bisector();
                    if (limit != Limit::bisector_most && off_by_more(rig, off, Limit::bisector_most))
                      continue; // the other check speaks
                    if (off_by_more(rig, off, limit))
                      of_stay.find(bisector_finding(rig, at, name, report.check()));
                    else
                      of_stay.pass(without_side(rig.spreaders[at.tip->spreader].name) + " rises " +
                                   angle_text(at.line->rise_radians) + ", " + angle_text(std::abs(off)) +
                                   " off the bisector" + others_at(rig, *at.tip, *at.line));
                  }
                });
}

/// A thrust that the third decimal does not show: the line goes straight past the tip.
constexpr double no_thrust = 0.0005;

std::string spreader_of(const Rig& rig, const TipOfStay& at) {
  return without_side(rig.spreaders[at.tip->spreader].name);
}

std::string bend_words(const TipBend& bend) {
  if (std::abs(bend.thrust_share) < no_thrust)
    return "goes past the tip without bending towards the mast";
  return "pulls the tip outwards with " + share_text(-bend.thrust_share) + " of its tension";
}

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
                         {{"stay", name}, {"spreader", spreader_of(rig, at)}, {"words", bend_words(bend)}})
                    .at(rig[stay.stay].path[at.line->stop].place, "the tip")
                    .and_at(rig.spreaders[at.tip->spreader].place, "the spreader")
                    .about(name));
        }
      });
}

bool is_held(const SpreaderTip& tip) {
  return !tip.ending.empty() || std::any_of(tip.lines.begin(), tip.lines.end(),
                                            [](const LineOverTip& line) { return line.clamped; });
}

void check_tip_not_held(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  look_at_tips(rig, report, [&](const SpreaderTip& tip, const std::string& name, StayReport& of_tip) {
    const Spreader& spreader = rig.spreaders[tip.spreader];
    const std::string who = who_carries(rig, tip);
    if (is_held(tip)) {
      of_tip.pass(who);
    } else if (spreader.hold == "swinging") {
      of_tip.find(diagnose("tip-not-held",
                           {{"spreader", name}, {"words", who.empty() ? "no stay goes over its tip" : who}})
                      .at(spreader.place, "it swings at its root")
                      .about(name));
    } else if (spreader.hold == "fixed") {
      of_tip.pass("it is fixed at its root" + (who.empty() ? "" : "; " + who));
    } else {
      of_tip.not_checked("whether it swings or is fixed at its root is not stated (hold)" +
                         (who.empty() ? "" : "; " + who));
    }
  });
}

void check_tip_held_twice(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  look_at_tips(rig, report, [&](const SpreaderTip& tip, const std::string& name, StayReport& of_tip) {
    if (tip.lines.size() < 2)
      return;
    const auto clamped = std::count_if(tip.lines.begin(), tip.lines.end(),
                                       [](const LineOverTip& line) { return line.clamped; });
    const std::string who = who_carries(rig, tip);
    if (clamped < 2)
      of_tip.pass(who);
    else
      of_tip.find(diagnose("tip-held-twice", {{"spreader", name}, {"words", who}})
                      .at(rig.spreaders[tip.spreader].place)
                      .about(name));
  });
}

constexpr std::array rows{
    CheckRow{"spreader-off-bisector", check_bisector<Limit::bisector_usual>, {Limit::bisector_usual}},
    CheckRow{"spreader-far-off-bisector", check_bisector<Limit::bisector_most>, {Limit::bisector_most}},
    CheckRow{"tip-pulled-out", check_tip_pulled_out},
    CheckRow{"tip-not-held", check_tip_not_held},
    CheckRow{"tip-held-twice", check_tip_held_twice},
};

} // namespace

std::span<const CheckRow> checks() {
  return rows;
}

} // namespace sheerpole::spreaders
