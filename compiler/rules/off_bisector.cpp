#include "rules/off_bisector.hpp"

#include "rules/by_side.hpp"
#include "rules/thresholds.hpp"
#include "rules/tip_words.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <cmath>

namespace sheerpole {

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

Diagnostic finding_of(const Rig& rig, const TipOfStay& at, const std::string& name, OffBisector check) {
  const LineOverTip& line = *at.line;
  const std::string spreader = without_side(rig.spreaders[at.tip->spreader].name);
  const double off = line.off_bisector();
  const Length at_tip = spreader_length(rig, *at.tip) *
                        std::abs(std::sin(*line.halving_radians) - std::sin(line.rise_radians));
  Diagnostic finding =
      diagnose(check == OffBisector::far ? "spreader-far-off-bisector" : "spreader-off-bisector",
               {{"stay", name},
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

} // namespace

void look_at_bisectors(const Rig& rig, const Derived& derived, CheckReport& report, OffBisector check) {
  const std::vector<SpreaderTip> tips = spreader_tips(rig);
  const auto by_stay = tips_by_stay(rig, tips);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const TipOfStay& at : by_stay[stay.stay.index()]) {
                    if (line_that_sets(*at.tip) != at.line)
                      continue;
                    const double off = at.line->off_bisector();
                    const bool far = off_by_more(rig, off, Limit::bisector_most);
                    if (check == OffBisector::usual && far)
                      continue; // the other check speaks
                    if (check == OffBisector::far ? far : off_by_more(rig, off, Limit::bisector_usual))
                      of_stay.find(finding_of(rig, at, name, check));
                    else
                      of_stay.pass(without_side(rig.spreaders[at.tip->spreader].name) + " rises " +
                                   angle_text(at.line->rise_radians) + ", " + angle_text(std::abs(off)) +
                                   " off the bisector" + others_at(rig, *at.tip, *at.line));
                  }
                });
}

} // namespace sheerpole
