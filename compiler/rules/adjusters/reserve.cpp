#include "model/kind_words.hpp"
#include "rules/adjusters/adjuster_setting.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/adjuster_phrases.hpp"
#include "wording/checks/any_check_phrases.hpp"

#include <algorithm>
#include <string>

/// Whether enough is left to take up, for bedding-in and for what is not known to the millimetre.
namespace sheerpole::reserve {

namespace {

using Common = AnyCheckPhrase;

using P = AdjusterCheckPhrase;

bool is_screw(const Rig& rig, const TakeUp& adjuster) {
  return rig[adjuster.part].kind == PartKind::turnbuckle;
}

/// Screws and plates with holes have an end that is reached in the course of years; cord is made off again,
/// a tackle and a lever are worked under way.
bool asks_for_reserve(const Rig& rig, const DerivedStay& stay) {
  return !stay.adjusters.empty() &&
         std::all_of(stay.adjusters.begin(), stay.adjusters.end(), [&](const TakeUp& adjuster) {
           return is_screw(rig, adjuster) || rig[adjuster.part].kind == PartKind::hole_adjuster;
         });
}

/// Whether a finding about how it is set says as much already.
bool said_of_setting(const Rig& rig, const DerivedStay& stay) {
  return std::any_of(stay.adjusters.begin(), stay.adjusters.end(), [&](const TakeUp& adjuster) {
    return !in_range(adjuster) || mostly_closed(rig, adjuster) ||
           (near_an_end(rig, adjuster) && adjuster.to_tighten < adjuster.to_slacken);
  });
}

const AccountLeft* last_complete(const Account& account) {
  const auto found = std::find_if(account.left.rbegin(), account.left.rend(),
                                  [](const AccountLeft& left) { return left.complete; });
  return found == account.left.rend() ? nullptr : &*found;
}

std::string unknown_of(const Rig& rig, const Account& account) {
  std::string words;
  for (const AccountEntry& entry : account.entries)
    if (!entry.not_checked.empty())
      words += (words.empty() ? "" : "; ") + say(rig, entry.name) + ": " + say(rig, entry.not_checked);
  return words;
}

void look_at_reserve(const Rig& rig, const DerivedStay& stay, const std::string& name, double share,
                     StayReport& report) {
  const AccountLeft* left = last_complete(stay.account);
  if (left == nullptr) {
    if (std::any_of(stay.adjusters.begin(), stay.adjusters.end(),
                    [&](const TakeUp& adjuster) { return is_screw(rig, adjuster); }))
      report.not_checked(unknown_of(rig, stay.account));
    return;
  }
  if (left->to_tighten < -threshold::negligible)
    return; // spent, which is said by its own finding
  const Length range = stay.account.to_tighten + stay.account.to_slacken;
  const Remark words(P::left_of_range, {Remarks{{left->after}}, left->to_tighten, range});
  if (left->to_tighten > range * share - threshold::negligible) {
    report.pass(words);
    return;
  }
  const TakeUp& adjuster = stay.adjusters.front();
  report.find(diagnose("take-up-low",
                       {{"stay", name}, {"words", say(rig, words)}, {"least", length_text(range * share)}})
                  .at(rig[stay.stay].stack[adjuster.item].place,
                      say(rig, {P::to_tighten_as_set, {stay.account.to_tighten}}))
                  .about(name));
}

void check_take_up_low(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double share = rig.limits.value(Limit::take_up_left).value_or(0.0);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  if (asks_for_reserve(rig, stay) && !said_of_setting(rig, stay))
                    look_at_reserve(rig, stay, name, share, of_stay);
                });
}

void look_at_reach(const Rig& rig, const DerivedStay& stay, const std::string& name, StayReport& report) {
  if (!stay.uncertainty) {
    report.not_checked({P::no_bound});
    return;
  }
  const Length shorter = -stay.uncertainty->worst_low;
  const Length longer = stay.uncertainty->worst_high;
  const Account& room = stay.account;
  const bool to_slacken = shorter > room.to_slacken + threshold::negligible;
  if (!to_slacken && longer < room.to_tighten + threshold::negligible) {
    report.pass({P::at_worst, {shorter, longer, room.to_slacken, room.to_tighten}});
    return;
  }
  report.find(
      diagnose("reach-in-doubt", {{"stay", name},
                                  {"doubt", length_text(to_slacken ? shorter : longer)},
                                  {"way", to_slacken ? "shorter" : "longer"},
                                  {"room", length_text(to_slacken ? room.to_slacken : room.to_tighten)},
                                  {"direction", said(to_slacken ? P::give_out : P::take_up)}})
          .at(rig[stay.stay].stack[stay.adjusters.front().item].place,
              say(rig, {Common::sides_of_adjuster, {room.to_tighten, room.to_slacken}}))
          .about(name));
}

void check_reach_in_doubt(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        // An adjuster that is set beyond its range has been reported as such.
        if (!stay.adjusters.empty() && std::all_of(stay.adjusters.begin(), stay.adjusters.end(), in_range))
          look_at_reach(rig, stay, name, of_stay);
      });
}

/// "turnbuckle", "lever and turnbuckle", "nothing"
std::string adjuster_words(const Rig& rig, const Stay& stay) {
  std::string words;
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::part && rig[item.part].role == Part::Role::adjuster)
      words += (words.empty() ? "" : " and ") + std::string(name_of(rig[item.part].kind));
  return words.empty() ? said(P::nothing) : words;
}

/// The first adjuster in the stack, else the stay.
Span place_of_adjuster(const Rig& rig, const Stay& stay) {
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::part && rig[item.part].role == Part::Role::adjuster)
      return item.place;
  return stay.place;
}

void check_adjusters_differ(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const DerivedStay& port : derived.stays) {
    const Stay& stay = rig[port.stay];
    const DerivedStay* starboard = stay.side == Side::port ? other_side(rig, derived, port) : nullptr;
    if (starboard == nullptr)
      continue;
    const std::string to_port = adjuster_words(rig, stay);
    const std::string to_starboard = adjuster_words(rig, rig[starboard->stay]);
    if (to_port != to_starboard)
      report.find(diagnose("adjusters-differ",
                           {{"stay", stay.base}, {"port", to_port}, {"starboard", to_starboard}})
                      .at(place_of_adjuster(rig, stay), to_port)
                      .and_at(place_of_adjuster(rig, rig[starboard->stay]), to_starboard)
                      .about(stay.base));
    else if (to_port != said(P::nothing))
      report.pass(stay.base, {P::alike_on_both_sides, {Words{to_port}}});
  }
}

} // namespace

const CheckTable checks{CheckRow{"take-up-low", check_take_up_low, {Limit::take_up_left}},
                        CheckRow{"reach-in-doubt", check_reach_in_doubt},
                        CheckRow{"adjusters-differ", check_adjusters_differ}};

} // namespace sheerpole::reserve
