#include "calculate/strength/force_text.hpp"
#include "calculate/strength/strength_phrases.hpp"
#include "rules/by_side.hpp"
#include "rules/strength_checks.hpp"
#include "wording/say.hpp"
#include "wording/strength_words.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace sheerpole {

namespace {

bool is_of_the_line(const ChainLink& link) {
  return link.kind == LinkKind::line;
}

std::string amount_of(const Rig& rig, const ChainLink& link) {
  return force_text(*link.break_load) +
         (link.how.is(StrengthPhrase::as_stated) ? "" : " (" + say(rig, link.how) + ")");
}

/// "hmpe-9 92 kN"
std::string words_of(const Rig& rig, const ChainLink& link) {
  return say(rig, link.name) + " " + amount_of(rig, link);
}

/// Known links that are weaker than the line.
struct WeakerLinks {
  const ChainLink* weakest = nullptr; ///< that nobody meant to be
  std::string others;                 ///< the rest of these
  std::string meant;                  ///< those that are meant to be
};

WeakerLinks weaker_links(const Rig& rig, const StayChain& chain) {
  WeakerLinks result;
  const Force line = *chain.links[*chain.line].break_load;
  std::vector<const ChainLink*> unmeant;
  for (const ChainLink& link : chain.links) {
    if (!link.counted || is_of_the_line(link) || !link.break_load ||
        !is_below(link.break_load->newtons(), line.newtons()))
      continue;
    if (!link.meant.empty())
      result.meant += "; " + words_of(rig, link) + " is meant to be weaker: " + link.meant;
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
      result.others += (result.others.empty() ? "; weaker as well: " : ", ") + say(rig, link->name) + " " +
                       force_text(*link->break_load);
    }
  return result;
}

void look(const Rig& rig, const DerivedStay& derived, const std::string& name, StayReport& report) {
  const StayChain& chain = derived.chain;
  if (chain.links.empty())
    return;
  if (!chain.line) {
    report.not_checked("what the line holds is not known; not stated: " + unknown_words(rig, chain));
    return;
  }
  const Stay& stay = rig[derived.stay];
  const ChainLink& line = chain.links[*chain.line];
  const WeakerLinks weaker = weaker_links(rig, chain);
  if (weaker.weakest != nullptr) {
    report.find(diagnose("weakest-part", {{"stay", name},
                                          {"part", say(rig, weaker.weakest->name) + " holds " +
                                                       amount_of(rig, *weaker.weakest)},
                                          {"line", words_of(rig, line)},
                                          {"others", weaker.others}})
                    .at(stay.stack[weaker.weakest->item].place, "this holds less")
                    .and_at(stay.stack[line.item].place, "than this")
                    .about(name));
    return;
  }
  if (!chain.unknown.empty()) {
    report.not_checked("none of what is known is weaker than " + words_of(rig, line) + weaker.meant +
                       "; not stated: " + unknown_words(rig, chain));
    return;
  }
  report.pass("nothing is weaker than " + words_of(rig, line) + weaker.meant);
}

} // namespace

void check_weakest_part(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look(rig, stay, name, of_stay);
                });
}

} // namespace sheerpole
