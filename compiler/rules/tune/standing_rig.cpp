#include "calculate/tune/standing_at_dock.hpp"
#include "calculate/tune/tune_phrase.hpp"
#include "rules/check_table.hpp"
#include "units/format_length.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/say.hpp"

#include <optional>
#include <string>
#include <utility>

/// How a boat that is to be tuned by her file stands at the dock: whether all is stated that it rests on,
/// whether she stands, and which stay is slack or beyond what it breaks at. Of a boat that states nothing
/// of her tune nothing is said.
namespace sheerpole::standing_rig {

namespace {

/// Softer than this, force in newtons for a movement of 1 mm, a rig stands by its tension alone: two grams
/// move it. A choice of the project.
constexpr double nearly_loose_newtons_per_mm = 0.02;

std::string kilonewtons(double newtons) {
  return format_fixed(newtons / 1000.0, 2) + " kN";
}

/// Where something is said of the rig as a whole.
Span place_of_rig(const Rig& rig) {
  return !rig.stays.empty()   ? rig.stays.front().place
         : !rig.spars.empty() ? rig.spars.front().place
                              : rig.records.front().place;
}

/// How the boat stands that is being looked at. One search serves all five checks, which come one behind
/// the other; the first of them makes it.
struct Looked {
  const Derived* at = nullptr;
  std::optional<StandingAtDock> standing;
};
Looked& looked() {
  thread_local Looked all;
  return all;
}

const std::optional<StandingAtDock>& standing_of(const Rig& rig, const Derived& derived) {
  if (looked().at != &derived)
    looked() = {&derived, standing_at_dock(rig, derived)};
  return looked().standing;
}

/// Null of a boat that does not stand, or states nothing of her tune.
const StandingAtDock* stands(const Rig& rig, const Derived& derived) {
  const auto& standing = standing_of(rig, derived);
  return standing && standing->stands() ? &*standing : nullptr;
}

/// Of stations that do not reach an end of their spar the nearest may be meant to be there.
DiagnosticBuilder with_edit(const Rig& rig, const StandingAtDock::Missing& missing,
                            DiagnosticBuilder&& finding) {
  if (!missing.station)
    return std::move(finding);
  const std::string end = format_fixed(missing.station_ought_mm, 0) + " mm";
  return std::move(finding).edit(*missing.station, end,
                                 say(rig, {TunePhrase::if_end_is_meant, {Words{end}}}));
}

void check_inputs(const Rig& rig, const Derived& derived, CheckReport& report) {
  looked() = {}; // what was at this place in memory before may be another boat
  const auto& standing = standing_of(rig, derived);
  if (!standing)
    return;
  for (const StandingAtDock::Missing& missing : standing->missing) {
    const bool property = missing.words.empty();
    auto finding =
        diagnose("tune-input-missing",
                 {{"words", say(rig, property ? Remark(AnyCheckPhrase::of_not_stated,
                                                       {Words{missing.property}, Remarks{{missing.of}}})
                                              : missing.words)}})
            .at(missing.place)
            .about(property ? say(rig, missing.of) : said(AnyCheckPhrase::this_rig));
    report.find(with_edit(rig, missing, std::move(finding)));
  }
  if (standing->missing.empty())
    report.pass(said(AnyCheckPhrase::this_rig), passed("tune-input-missing"));
}

void check_stands(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto& standing = standing_of(rig, derived);
  if (!standing)
    return;
  for (const Remark& trouble : standing->trouble)
    report.find(diagnose("rig-does-not-stand", {{"words", say(rig, trouble)}})
                    .at(place_of_rig(rig))
                    .about(said(AnyCheckPhrase::this_rig)));
  if (!standing->missing.empty())
    report.not_checked(said(AnyCheckPhrase::this_rig), not_seen("rig-does-not-stand"));
  else if (standing->trouble.empty())
    report.pass(said(AnyCheckPhrase::this_rig), passed("rig-does-not-stand"));
}

void check_slack(const Rig& rig, const Derived& derived, CheckReport& report) {
  const StandingAtDock* standing = stands(rig, derived);
  if (standing == nullptr)
    return;
  for (const StandingAtDock::Stay& stay : standing->stays) {
    const std::string& name = rig[stay.stay].name;
    if (stay.newtons > 0.0)
      report.pass(name, passed("stay-slack-at-dock", {{"tension", kilonewtons(stay.newtons)}}));
    else
      report.find(diagnose("stay-slack-at-dock",
                           {{"stay", name}, {"slack", format_fixed(stay.slack_mm, 1) + " mm"}})
                      .at(rig[stay.stay].place)
                      .about(name));
  }
}

void check_beyond_break(const Rig& rig, const Derived& derived, CheckReport& report) {
  const StandingAtDock* standing = stands(rig, derived);
  if (standing == nullptr)
    return;
  for (const StandingAtDock::Stay& stay : standing->stays) {
    const std::string& name = rig[stay.stay].name;
    if (!stay.break_newtons)
      report.not_checked(name, not_seen("tension-beyond-break"));
    else if (stay.most_newtons > *stay.break_newtons)
      report.find(diagnose("tension-beyond-break", {{"stay", name},
                                                    {"tension", kilonewtons(stay.most_newtons)},
                                                    {"breaks", kilonewtons(*stay.break_newtons)}})
                      .at(rig[stay.stay].place)
                      .about(name));
    else
      report.pass(name, passed("tension-beyond-break", {{"tension", kilonewtons(stay.most_newtons)},
                                                        {"breaks", kilonewtons(*stay.break_newtons)}}));
  }
}

void check_nearly_loose(const Rig& rig, const Derived& derived, CheckReport& report) {
  const StandingAtDock* standing = stands(rig, derived);
  if (standing == nullptr || !standing->softest_newtons_per_mm)
    return;
  const std::string force = format_fixed(*standing->softest_newtons_per_mm, 3) + " N";
  if (*standing->softest_newtons_per_mm < nearly_loose_newtons_per_mm)
    report.find(diagnose("rig-nearly-loose", {{"point", standing->softest_at}, {"force", force}})
                    .at(place_of_rig(rig))
                    .about(said(AnyCheckPhrase::this_rig)));
  else
    report.pass(said(AnyCheckPhrase::this_rig),
                passed("rig-nearly-loose", {{"point", standing->softest_at}, {"force", force}}));
}

} // namespace

const CheckTable checks{
    CheckRow{"tune-input-missing", check_inputs},     CheckRow{"rig-does-not-stand", check_stands},
    CheckRow{"stay-slack-at-dock", check_slack},      CheckRow{"tension-beyond-break", check_beyond_break},
    CheckRow{"rig-nearly-loose", check_nearly_loose},
};

} // namespace sheerpole::standing_rig
