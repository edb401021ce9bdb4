#include "calculate/geometry/junctions.hpp"
#include "calculate/strength/strength_phrases.hpp"
#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/strength_phrases.hpp"
#include "wording/model_words.hpp"
#include "wording/strength_words.hpp"

#include <algorithm>
#include <string>
#include <vector>

/// The parts of a stay as links of a chain: which is the weakest, and what each holds over its load.
namespace sheerpole::chain {

namespace {

using Common = AnyCheckPhrase;

using P = StrengthCheckPhrase;

bool is_of_the_line(const ChainLink& link) {
  return link.kind == LinkKind::line;
}

/// With how it was worked out, unless it is stated.
Remark amount_of(const ChainLink& link) {
  const std::string amount = force_text(*link.break_load);
  if (link.how.is(StrengthPhrase::as_stated))
    return {Common::as_it_is, {Words{amount}}};
  return {P::holds_how, {Words{amount}, Remarks{{link.how}}}};
}

/// "hmpe-9 92 kN"
Remark words_of(const ChainLink& link) {
  return {P::link_amount, {Remarks{{link.name}}, Remarks{{amount_of(link)}}}};
}

/// Known links that are weaker than the line.
struct WeakerLinks {
  const ChainLink* weakest = nullptr; ///< that nobody meant to be
  Remarks others;                     ///< the rest of these
  Remarks meant{{}, Join::semicolon}; ///< those that are meant to be
};

WeakerLinks weaker_links(const StayChain& chain) {
  WeakerLinks result;
  const Force line = *chain.links[*chain.line].break_load;
  std::vector<const ChainLink*> unmeant;
  for (const ChainLink& link : chain.links) {
    if (!link.counted || is_of_the_line(link) || !link.break_load ||
        !is_below(link.break_load->newtons(), line.newtons()))
      continue;
    if (!link.meant.empty())
      result.meant.all.push_back({P::meant_weaker, {Remarks{{words_of(link)}}, Words{link.meant}}});
    else
      unmeant.push_back(&link);
  }
  for (const ChainLink* link : unmeant)
    if (result.weakest == nullptr || *link->break_load < *result.weakest->break_load)
      result.weakest = link;
  if (result.weakest == nullptr)
    return result;
  // A part that the stack uses twice is named once.
  std::vector<Remark> said{result.weakest->name};
  for (const ChainLink* link : unmeant)
    if (std::find(said.begin(), said.end(), link->name) == said.end()) {
      said.push_back(link->name);
      result.others.all.push_back({P::link_amount, {Remarks{{link->name}}, *link->break_load}});
    }
  return result;
}

void look_for_weaker(const Rig& rig, const DerivedStay& derived, const std::string& name,
                     StayReport& report) {
  const StayChain& chain = derived.chain;
  if (chain.links.empty())
    return;
  if (!chain.line) {
    report.not_checked({P::line_unknown, {Words{unknown_words(rig, chain)}}});
    return;
  }
  const Stay& stay = rig[derived.stay];
  const ChainLink& line = chain.links[*chain.line];
  WeakerLinks weaker = weaker_links(chain);
  if (weaker.weakest != nullptr) {
    report.find(
        diagnose(
            "weakest-part",
            {{"stay", name},
             {"part", say(rig, {P::part_holds,
                                {Remarks{{weaker.weakest->name}}, Remarks{{amount_of(*weaker.weakest)}}}})},
             {"line", say(rig, words_of(line))},
             {"others", weaker.others.all.empty() ? "" : say(rig, {P::others_first, {weaker.others}})}})
            .at(stay.stack[weaker.weakest->item].place, said(P::holds_less))
            .and_at(stay.stack[line.item].place, said(P::than_this))
            .about(name));
    return;
  }
  if (!chain.unknown.empty()) {
    weaker.meant.all.insert(weaker.meant.all.begin(), {P::none_known_weaker, {Remarks{{words_of(line)}}}});
    weaker.meant.all.push_back({P::lacking, {Words{unknown_words(rig, chain)}}});
    report.not_checked(say(rig, weaker.meant));
    return;
  }
  weaker.meant.all.insert(weaker.meant.all.begin(), {P::nothing_weaker, {Remarks{{words_of(line)}}}});
  report.pass(say(rig, weaker.meant));
}

void check_weakest_part(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look_for_weaker(rig, stay, name, of_stay);
                });
}

/// The weakest link that breaks; null when none is known. A hole under its pin is worked long before it
/// breaks: pin-bearing-high looks at it by a factor of its own.
const ChainLink* weakest_of(const StayChain& chain) {
  const ChainLink* weakest = nullptr;
  for (const ChainLink& link : chain.links)
    if (link.kind != LinkKind::hole && link.break_load &&
        (weakest == nullptr || *link.break_load < *weakest->break_load))
      weakest = &link;
  return weakest;
}

void look_at_factor(const Rig& rig, const DerivedStay& derived, const std::string& name, double least,
                    StayReport& report) {
  const StayChain& chain = derived.chain;
  const Stay& stay = rig[derived.stay];
  const auto load = load_of(rig, derived.stay);
  if (!load) {
    report.not_checked({Common::not_stated, {Words{"load"}}});
    return;
  }
  const ChainLink* weakest = weakest_of(chain);
  if (weakest == nullptr) {
    report.not_checked({P::no_break_load});
    return;
  }
  const double factor = *weakest->break_load / load->value;
  const bool all_known = chain.unknown.empty();
  const Remark words(
      all_known ? P::holds_times : P::holds_at_most,
      {*weakest->break_load, Remarks{{weakest->name}}, Fixed{factor, 2}, Words{force_text(*load)}});
  if (is_below(factor, least))
    report.find(
        diagnose("factor-low", {{"stay", name}, {"words", say(rig, words)}, {"least", times_text(least)}})
            .at(stay.stack[weakest->item].place, said(P::weakest_known))
            .and_at(load->provenance.place.value_or(stay.place), said(P::its_load))
            .about(name));
  else if (!all_known)
    report.not_checked({P::not_stated_as_well, {Remarks{{words}}, Words{unknown_words(rig, chain)}}});
  else
    report.pass({Common::at_least, {Remarks{{words}}, Fixed{least, 2}}});
}

Remark unstated(const ChainLink& hole) {
  Remarks lacking;
  for (const UnstatedStrength& one : hole.not_stated)
    lacking.all.push_back({P::lacks_of, {Remarks{{one.property}}, Remarks{{one.of}}}});
  return {P::hole_not_stated, {Remarks{{hole.name}}, lacking}};
}

void look_at_holes(const Rig& rig, const DerivedStay& derived, const std::string& name, double least,
                   StayReport& report) {
  const Stay& stay = rig[derived.stay];
  const auto load = load_of(rig, derived.stay);
  bool said_load = false;
  for (const ChainLink& hole : derived.chain.links) {
    if (hole.kind != LinkKind::hole)
      continue;
    if (!load) {
      if (!said_load)
        report.not_checked({Common::not_stated, {Words{"load"}}});
      said_load = true;
      continue;
    }
    if (!hole.break_load) {
      report.not_checked(unstated(hole));
      continue;
    }
    const double times = *hole.break_load / load->value;
    const Remark words(P::bears, {Remarks{{hole.name}}, *hole.break_load, Remarks{{hole.how}},
                                  Fixed{times, 2}, Words{force_text(*load)}});
    if (is_below(times, least))
      report.find(diagnose("pin-bearing-high",
                           {{"stay", name}, {"words", say(rig, words)}, {"least", times_text(least)}})
                      .at(stay.stack[hole.item].place, said(P::hole_in_this))
                      .and_at(load->provenance.place.value_or(stay.place), said(P::the_load))
                      .about(name));
    else
      report.pass({Common::at_least, {Remarks{{words}}, Fixed{least, 2}}});
  }
}

using LookAtChain = void (*)(const Rig& rig, const DerivedStay& derived, const std::string& name,
                             double least, StayReport& report);

/// Holds the chain of each stay against a limit that it should reach.
template <Limit limit, LookAtChain look>
void check_against(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto least = rig.limits.value(limit);
  if (!least)
    return;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look(rig, stay, name, *least, of_stay);
                });
}

} // namespace

const CheckTable checks{
    CheckRow{"weakest-part", check_weakest_part},
    CheckRow{"factor-low", check_against<Limit::break_factor, look_at_factor>, {Limit::break_factor}},
    CheckRow{"pin-bearing-high", check_against<Limit::pin_bearing, look_at_holes>, {Limit::pin_bearing}}};

} // namespace sheerpole::chain
