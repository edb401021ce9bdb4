#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

/// The parts of a stay as links of a chain: which is the weakest, and what each holds over its load.
namespace sheerpole::chain {

namespace {

bool is_of_the_line(const ChainLink& link) {
  return link.kind == LinkKind::line;
}

std::string amount_of(const ChainLink& link) {
  return force_text(*link.break_load) + (link.how == "as stated" ? "" : " (" + link.how + ")");
}

/// "hmpe-9 92 kN"
std::string words_of(const ChainLink& link) {
  return link.name + " " + amount_of(link);
}

/// Known links that are weaker than the line.
struct WeakerLinks {
  const ChainLink* weakest = nullptr; ///< that nobody meant to be
  std::string others;                 ///< the rest of these
  std::string meant;                  ///< those that are meant to be
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
      result.meant += "; " + words_of(link) + " is meant to be weaker: " + link.meant;
    else
      unmeant.push_back(&link);
  }
  for (const ChainLink* link : unmeant)
    if (result.weakest == nullptr || *link->break_load < *result.weakest->break_load)
      result.weakest = link;
  if (result.weakest == nullptr)
    return result;
  // A part that the stack uses twice is named once.
  std::vector<std::string> said{result.weakest->name};
  for (const ChainLink* link : unmeant)
    if (std::find(said.begin(), said.end(), link->name) == said.end()) {
      said.push_back(link->name);
      result.others += (result.others.empty() ? "; weaker as well: " : ", ") + link->name + " " +
                       force_text(*link->break_load);
    }
  return result;
}

void look_for_weaker(const Rig& rig, const DerivedStay& derived, const std::string& name,
                     StayReport& report) {
  const StayChain& chain = derived.chain;
  if (chain.links.empty())
    return;
  if (!chain.line) {
    report.not_checked("what the line holds is not known; not stated: " + unknown_words(chain));
    return;
  }
  const Stay& stay = rig[derived.stay];
  const ChainLink& line = chain.links[*chain.line];
  const WeakerLinks weaker = weaker_links(chain);
  if (weaker.weakest != nullptr) {
    report.find(
        diagnose("weakest-part", {{"stay", name},
                                  {"part", weaker.weakest->name + " holds " + amount_of(*weaker.weakest)},
                                  {"line", words_of(line)},
                                  {"others", weaker.others}})
            .at(stay.stack[weaker.weakest->item].place, "this holds less")
            .and_at(stay.stack[line.item].place, "than this")
            .about(name));
    return;
  }
  if (!chain.unknown.empty()) {
    report.not_checked("none of what is known is weaker than " + words_of(line) + weaker.meant +
                       "; not stated: " + unknown_words(chain));
    return;
  }
  report.pass("nothing is weaker than " + words_of(line) + weaker.meant);
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
  const auto load = fact_force(stay.particulars, "load");
  if (!load) {
    report.not_checked("load is not stated");
    return;
  }
  const ChainLink* weakest = weakest_of(chain);
  if (weakest == nullptr) {
    report.not_checked("no link's break load is known");
    return;
  }
  const double factor = *weakest->break_load / load->value;
  const bool all_known = chain.unknown.empty();
  const std::string words = (all_known ? "holds " : "holds at most ") + force_text(*weakest->break_load) +
                            " (" + weakest->name + "), " + times_text(factor) + " times its load of " +
                            force_text(*load);
  if (is_below(factor, least))
    report.find(diagnose("factor-low", {{"stay", name}, {"words", words}, {"least", times_text(least)}})
                    .at(stay.stack[weakest->item].place, "the weakest that is known")
                    .and_at(load->provenance.place.value_or(stay.place), "its load")
                    .about(name));
  else if (!all_known)
    report.not_checked(words + "; not stated: " + unknown_words(chain));
  else
    report.pass(words + "; at least " + times_text(least));
}

std::string unstated(const ChainLink& hole) {
  std::string words;
  for (const UnstatedStrength& lacking : hole.not_stated)
    words += (words.empty() ? "" : ", ") + lacking.property + " of " + lacking.of;
  return hole.name + ": " + words + " is not stated";
}

void look_at_holes(const Rig& rig, const DerivedStay& derived, const std::string& name, double least,
                   StayReport& report) {
  const Stay& stay = rig[derived.stay];
  const auto load = fact_force(stay.particulars, "load");
  bool said_load = false;
  for (const ChainLink& hole : derived.chain.links) {
    if (hole.kind != LinkKind::hole)
      continue;
    if (!load) {
      if (!said_load)
        report.not_checked("load is not stated");
      said_load = true;
      continue;
    }
    if (!hole.break_load) {
      report.not_checked(unstated(hole));
      continue;
    }
    const double times = *hole.break_load / load->value;
    const std::string words = hole.name + " bears " + force_text(*hole.break_load) + " (" + hole.how +
                              "), " + times_text(times) + " times the load of " + force_text(*load);
    if (is_below(times, least))
      report.find(
          diagnose("pin-bearing-high", {{"stay", name}, {"words", words}, {"least", times_text(least)}})
              .at(stay.stack[hole.item].place, "the hole is in this")
              .and_at(load->provenance.place.value_or(stay.place), "the load")
              .about(name));
    else
      report.pass(words + "; at least " + times_text(least));
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

constexpr std::array rows{
    CheckRow{"weakest-part", check_weakest_part},
    CheckRow{"factor-low", check_against<Limit::break_factor, look_at_factor>, {Limit::break_factor}},
    CheckRow{"pin-bearing-high", check_against<Limit::pin_bearing, look_at_holes>, {Limit::pin_bearing}},
};

} // namespace

std::span<const CheckRow> checks() {
  return rows;
}

} // namespace sheerpole::chain
