#include "calculate/facts.hpp"
#include "calculate/strength/stay_stiffness.hpp"
#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "rules/strength/lines_of_stays.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/strength_phrases.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

/// How lines stretch, creep and slacken.
namespace sheerpole::line_behaviour {

namespace {

using Common = AnyCheckPhrase;

using P = StrengthCheckPhrase;

bool same_lines(const DerivedStay& a, const DerivedStay& b) {
  return std::equal(a.pieces.begin(), a.pieces.end(), b.pieces.begin(), b.pieces.end(),
                    [](const Piece& one, const Piece& other) { return one.material == other.material; });
}

std::string names_of(const Rig& rig, const DerivedStay& stay) {
  std::string names;
  for (const Piece& piece : stay.pieces)
    names += (names.empty() ? "" : " and ") + rig[piece.material].name;
  return names;
}

/// Whether one side has rope where the other has wire, rod or chain.
bool rope_against_wire(const Rig& rig, const DerivedStay& a, const DerivedStay& b) {
  const auto is_rope = [&](const DerivedStay& stay) {
    return rig[rig[stay.stay].material].kind == LineMaterial::Kind::rope;
  };
  return is_rope(a) != is_rope(b);
}

void compare_sides(const Rig& rig, const DerivedStay& port, const DerivedStay& starboard, double most,
                   CheckReport& report) {
  const Stay& stay = rig[port.stay];
  if (port.pieces.empty() && starboard.pieces.empty())
    return;
  if (same_lines(port, starboard)) {
    report.pass(stay.base, {P::of_lines, {Words{names_of(rig, port)}}});
    return;
  }
  const StayStiffness to_port = stay_stiffness(rig, port.pieces);
  const StayStiffness to_starboard = stay_stiffness(rig, starboard.pieces);
  const auto side = [&](P name, const DerivedStay& one, const StayStiffness& stiffness) {
    const Remark of(name, {Words{names_of(rig, one)}});
    return stiffness.stiffness ? Remark(P::with_stiffness, {Remarks{{of}}, *stiffness.stiffness}) : of;
  };
  Remark words(P::both_sides, {Remarks{{side(P::port_of, port, to_port)}},
                               Remarks{{side(P::starboard_of, starboard, to_starboard)}}});
  bool differs = rope_against_wire(rig, port, starboard);
  if (differs)
    words = {P::rope_against_wire, {Remarks{{words}}}};
  if (to_port.stiffness && to_starboard.stiffness) {
    const Force more = std::max(*to_port.stiffness, *to_starboard.stiffness);
    const Force less = std::min(*to_port.stiffness, *to_starboard.stiffness);
    const double apart = 1.0 - less / more;
    words = {P::apart, {Remarks{{words}}, Share{apart}}};
    differs = differs || is_below(most, apart);
  } else if (!differs) {
    report.not_checked(stay.base, {P::both_sides,
                                   {Remarks{{words}},
                                    Remarks{{(to_port.stiffness ? to_starboard : to_port).not_stated}}}});
    return;
  }
  if (differs) {
    const Stay& other = rig[starboard.stay];
    auto finding = diagnose("pair-stretch-differs",
                            {{"stay", stay.base}, {"words", say(rig, words)}, {"most", percent_text(most)}})
                       .at(stay.place)
                       .about(stay.base);
    if (!(other.place == stay.place))
      finding = std::move(finding).and_at(other.place, "starboard");
    report.find(std::move(finding));
  } else {
    report.pass(stay.base, {Common::at_most, {Remarks{{words}}, Share{most}}});
  }
}

void check_pair_stretch_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto most = rig.limits.value(Limit::stiffness_apart);
  if (!most)
    return;
  for (const DerivedStay& port : derived.stays)
    if (rig[port.stay].side == Side::port)
      if (const DerivedStay* starboard = other_side(rig, derived, port))
        compare_sides(rig, port, *starboard, *most, report);
}

/// A threshold with a second one that is said along with it. One of them may be switched off.
struct LimitPair {
  std::optional<double> usual;
  std::optional<double> most;

  bool is_off() const { return !usual && !most; }
  /// Where a finding begins. Not to be asked when both are off.
  double bound() const {
    return usual && most ? std::min(*usual, *most) : usual ? *usual : *most;
  } /// With "; at most 15 %, the very most 20 %" behind what was seen. `Unit` says what the numbers are.
  template <class Unit>
  Remark held_against(Remark seen) const {
    if (usual && most)
      return {P::at_most_two, {Remarks{{std::move(seen)}}, Unit{*usual}, Unit{*most}}};
    return {P::at_most_one, {Remarks{{std::move(seen)}}, Unit{usual ? *usual : *most}}};
  }
};

/// What a check says of one HMPE rope of a stay; false: the stay has been looked at.
using LookAtHmpe = bool (*)(const Rig& rig, const Stay& stay, const LineMaterial& rope,
                            const std::string& name, const LimitPair& limits, StayReport& report);

/// Looks at the HMPE ropes of each stay under two thresholds, unless both are switched off.
template <Limit usual, Limit most, LookAtHmpe look>
void check_hmpe(const Rig& rig, const Derived& derived, CheckReport& report) {
  const LimitPair limits{rig.limits.value(usual), rig.limits.value(most)};
  if (limits.is_off())
    return;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const MaterialId id : lines_of(stay))
                    if (is_hmpe(rig[id]) && !look(rig, rig[stay.stay], rig[id], name, limits, of_stay))
                      break;
                });
}

bool look_at_creep(const Rig& rig, const Stay& stay, const LineMaterial& rope, const std::string& name,
                   const LimitPair& limits, StayReport& report) {
  const auto dock = dock_share(stay, rope, report);
  if (!dock)
    return true;
  const Remark words = limits.held_against<Share>(dock->words);
  if (is_below(limits.bound(), dock->share))
    report.find(diagnose("creep-load-high", {{"stay", name}, {"words", say(rig, words)}})
                    .at(dock->place)
                    .and_at(rope.place, said(P::the_rope))
                    .about(name));
  else
    report.pass(words);
  return true;
}

bool look_at_heat(const Rig& rig, const Stay& stay, const LineMaterial& rope, const std::string& name,
                  const LimitPair& limits, StayReport& report) {
  const auto hottest = fact_number(stay.particulars, fact_names.hottest);
  if (!hottest) {
    report.not_checked({Common::not_stated, {Words{"hottest"}}});
    return false;
  }
  const Remark words =
      limits.held_against<Temperature>({P::gets_to, {Words{rope.name}, Temperature{hottest->value}}});
  if (is_below(limits.bound(), hottest->value))
    report.find(diagnose("rope-hot", {{"stay", name}, {"words", say(rig, words)}})
                    .at(hottest->provenance.place.value_or(stay.place))
                    .and_at(rope.place, said(P::the_rope))
                    .about(name));
  else
    report.pass(words);
  return true;
}

Remark cold_words(const ColdLoss& loss) {
  if (!(loss.slack > Length{}))
    return {P::gets_tighter, {Temperature{loss.kelvin}, -loss.slack}};
  if (loss.share < 1.0)
    return {P::loses_some,
            {Temperature{loss.kelvin}, loss.slack, loss.lost, Remarks{{loss.how}}, Share{loss.share},
             loss.dock_tension}};
  return {P::loses_all,
          {Temperature{loss.kelvin}, loss.slack, loss.lost, Remarks{{loss.how}}, loss.dock_tension}};
}

void look_at_cold(const Rig& rig, const DerivedStay& derived, const std::string& name, double coldest,
                  double most, StayReport& report) {
  if (derived.pieces.empty())
    return;
  const ColdLoss loss = cold_loss(rig, derived, coldest);
  if (!loss.not_checked.empty()) {
    report.not_checked(joined(say_each(rig, loss.not_checked), Join::semicolon));
    return;
  }
  const Remark words = cold_words(loss);
  if (is_below(most, loss.share))
    report.find(
        diagnose("cold-slack", {{"stay", name}, {"words", say(rig, words)}, {"most", percent_text(most)}})
            .at(rig[derived.stay].place)
            .about(name));
  else
    report.pass(loss.slack > Length{} ? Remark(Common::at_most, {Remarks{{words}}, Share{most}}) : words);
}

void check_cold_slack(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto most = rig.limits.value(Limit::cold_loss);
  if (!most)
    return;
  const auto coldest = stated_coldest(rig);
  if (!coldest) {
    report.not_checked(said(Common::this_rig), {P::coldest_not_stated});
    return;
  }
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look_at_cold(rig, stay, name, *coldest, *most, of_stay);
                });
}

/// Far above what a bench pulls with: half of what the line holds. Choice of the project, no source.
constexpr double most_on_a_bench = 0.5;

void check_bench_tension_high(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const auto bench = fact_force(stay.particulars, fact_names.bench_tension);
                  if (!bench)
                    return;
                  const LineMaterial& line = rig[stay.material];
                  if (!line.break_load) {
                    of_stay.not_checked({Common::of_not_stated, {Words{"break-load"}, Words{line.name}}});
                    return;
                  }
                  const double share = bench->value.newtons() / line.break_load->value.newtons();
                  if (!is_below(most_on_a_bench, share)) {
                    of_stay.pass({P::on_the_bench, {bench->value, Share{share}, stay.material}});
                    return;
                  }
                  auto finding = diagnose("bench-tension-high", {{"stay", name},
                                                                 {"tension", force_text(bench->value)},
                                                                 {"share", percent_text(share)},
                                                                 {"line", line.name}});
                  if (bench->provenance.place)
                    finding = std::move(finding).at(*bench->provenance.place, said(Common::this_one));
                  of_stay.find(std::move(finding).about(name));
                });
}

} // namespace

const CheckTable checks{
    CheckRow{"pair-stretch-differs", check_pair_stretch_differs, {Limit::stiffness_apart}},
    CheckRow{"creep-load-high",
             check_hmpe<Limit::creep_load, Limit::creep_load_most, look_at_creep>,
             {Limit::creep_load, Limit::creep_load_most}},
    CheckRow{"rope-hot",
             check_hmpe<Limit::rope_heat, Limit::rope_heat_most, look_at_heat>,
             {Limit::rope_heat, Limit::rope_heat_most}},
    CheckRow{"cold-slack", check_cold_slack, {Limit::cold_loss}},
    CheckRow{"bench-tension-high", check_bench_tension_high},
};

} // namespace sheerpole::line_behaviour
