#include "rules/adjuster_checks.hpp"
#include "rules/by_side.hpp"

#include <string>

namespace sheerpole {

namespace {

/// "turnbuckle", "lever and turnbuckle", "nothing"
std::string adjuster_words(const Rig& rig, const Stay& stay) {
  std::string words;
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::part && rig[item.part].role == Part::Role::adjuster)
      words += (words.empty() ? "" : " and ") + rig[item.part].kind;
  return words.empty() ? "nothing" : words;
}

/// The first adjuster in the stack, else the stay.
Span place_of_adjuster(const Rig& rig, const Stay& stay) {
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::part && rig[item.part].role == Part::Role::adjuster)
      return item.place;
  return stay.place;
}

} // namespace

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
    else if (to_port != "nothing")
      report.pass(stay.base, to_port + " on both sides");
  }
}

} // namespace sheerpole
