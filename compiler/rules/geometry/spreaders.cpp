#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/spreader_tips.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/geometry_phrases.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

/// How spreaders stand to the lines over their tips.
namespace sheerpole::spreaders {

namespace {

using P = GeometryCheckPhrase;

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
Remark rise_words(double radians) {
  return {radians < 0.0 ? P::falls : P::rises, {Angle{std::abs(radians)}}};
}

/// "intermediate 5.6 deg": how far off the other lines over the tip find it.
Remarks others_at(const Rig& rig, const SpreaderTip& tip, const LineOverTip& judged) {
  Remarks words{{}, Join::semicolon};
  for (const LineOverTip& line : tip.lines)
    if (line.stay != judged.stay && line.halving_radians)
      words.all.push_back({line.clamped ? P::off_clamped : P::off_free,
                           {Words{rig[line.stay].base}, Angle{std::abs(line.off_bisector())}}});
  return words;
}

Diagnostic bisector_finding(const Rig& rig, const TipOfStay& at, const std::string& name,
                            std::string_view slug) {
  const LineOverTip& line = *at.line;
  const std::string spreader = without_side(rig.spreaders[at.tip->spreader].name);
  const double off = line.off_bisector();
  const Length at_tip = spreader_length(rig, *at.tip) *
                        std::abs(std::sin(*line.halving_radians) - std::sin(line.rise_radians));
  Diagnostic finding =
      diagnose(slug, {{"stay", name},
                      {"spreader", spreader},
                      {"rise", say(rig, rise_words(line.rise_radians))},
                      {"halving", say(rig, rise_words(*line.halving_radians))},
                      {"off", angle_text(std::abs(off))},
                      {"way", off < 0.0 ? "low" : "high"},
                      {"lift", format_fixed(at_tip.millimetres(), 0) + " mm"}})
          .at(rig[line.stay].path[line.stop].place, say(rig, rise_words(line.rise_radians)))
          .about(name)
          .build();
  finding.others.push_back({rig.spreaders[at.tip->spreader].place,
                            say(rig, {P::would_halve, {Remarks{{rise_words(*line.halving_radians)}}}})});
  return finding;
}

/// With how far off the other lines over the tip find it.
Remark pass_words(const Rig& rig, const TipOfStay& at) {
  Remarks others = others_at(rig, *at.tip, *at.line);
  Remark and_others;
  if (!others.all.empty())
    and_others = {P::and_others, {std::move(others)}};
  return {P::rises_off_bisector,
          {Words{without_side(rig.spreaders[at.tip->spreader].name)}, Angle{at.line->rise_radians},
           Angle{std::abs(at.line->off_bisector())}, Remarks{{and_others}}}};
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
                      of_stay.pass(pass_words(rig, at));
                  }
                });
}

/// A thrust that the third decimal does not show: the line goes straight past the tip.
constexpr double no_thrust = 0.0005;

std::string spreader_of(const Rig& rig, const TipOfStay& at) {
  return without_side(rig.spreaders[at.tip->spreader].name);
}

Remark bend_words(const TipBend& bend) {
  if (std::abs(bend.thrust_share) < no_thrust)
    return P::past_without_bending;
  return {P::pulls_outwards, {Fixed{-bend.thrust_share, 3}}};
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
          if (bend.thrust_share >= no_thrust) {
            of_stay.pass({P::pressed_inwards, {Words{spreader_of(rig, at)}, Fixed{bend.thrust_share, 3}}});
            continue;
          }
          const std::vector<PathStop>& path = rig[stay.stay].path;
          auto finding = diagnose("tip-pulled-out", {{"stay", name},
                                                     {"spreader", spreader_of(rig, at)},
                                                     {"words", say(rig, bend_words(bend))}})
                             .at(path[at.line->stop].place, said(P::the_tip))
                             .and_at(rig.spreaders[at.tip->spreader].place, said(P::the_spreader))
                             .about(name);
          for (const PointId end : {path[at.line->stop].point, path.back().point})
            if (const auto place = rig[end].provenance.place)
              finding = std::move(finding).and_at(*place, rig[end].base);
          of_stay.find(std::move(finding));
        }
      });
}

bool is_held(const SpreaderTip& tip) {
  return !tip.ending.empty() || std::any_of(tip.lines.begin(), tip.lines.end(),
                                            [](const LineOverTip& line) { return line.clamped; });
}

/// A remark before who carries the tip.
Remarks with(P first, const Remarks& who) {
  Remarks all{{first}, Join::semicolon};
  all.all.insert(all.all.end(), who.all.begin(), who.all.end());
  return all;
}

void check_tip_not_held(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  look_at_tips(rig, report, [&](const SpreaderTip& tip, const std::string& name, StayReport& of_tip) {
    const Spreader& spreader = rig.spreaders[tip.spreader];
    const Remarks who = who_carries(rig, tip);
    if (is_held(tip)) {
      of_tip.pass(say(rig, who));
    } else if (spreader.hold == "swinging") {
      of_tip.find(
          diagnose("tip-not-held",
                   {{"spreader", name}, {"words", who.all.empty() ? said(P::no_stay_over) : say(rig, who)}})
              .at(spreader.place, said(P::swings_at_root))
              .about(name));
    } else if (spreader.hold == "fixed") {
      of_tip.pass(say(rig, with(P::fixed_at_root, who)));
    } else {
      of_tip.not_checked(say(rig, with(P::hold_not_stated, who)));
    }
  });
}

void check_tip_held_twice(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  look_at_tips(rig, report, [&](const SpreaderTip& tip, const std::string& name, StayReport& of_tip) {
    if (tip.lines.size() < 2)
      return;
    const auto clamped = std::count_if(tip.lines.begin(), tip.lines.end(),
                                       [](const LineOverTip& line) { return line.clamped; });
    const std::string who = say(rig, who_carries(rig, tip));
    if (clamped < 2)
      of_tip.pass(who);
    else
      of_tip.find(diagnose("tip-held-twice", {{"spreader", name}, {"words", who}})
                      .at(rig.spreaders[tip.spreader].place)
                      .about(name));
  });
}

} // namespace

const CheckTable checks{
    CheckRow{"spreader-off-bisector", check_bisector<Limit::bisector_usual>, {Limit::bisector_usual}},
    CheckRow{"spreader-far-off-bisector", check_bisector<Limit::bisector_most>, {Limit::bisector_most}},
    CheckRow{"tip-pulled-out", check_tip_pulled_out},
    CheckRow{"tip-not-held", check_tip_not_held},
    CheckRow{"tip-held-twice", check_tip_held_twice},
};

} // namespace sheerpole::spreaders
