#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/securing_checks.hpp"
#include "rules/spreader_tips.hpp"
#include "rules/stack_parts.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// A cover in the stack is worn on the line and counts for every tip.
std::string cover_of(const Rig& rig, const Stay& stay) {
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::part && rig[item.part].kind == "cover")
      return rig[item.part].name;
  return "";
}

void look_at(const Rig& rig, const Stay& stay, const std::string& name, const Spreader& spreader,
             const LineMaterial& rope, StayReport& report) {
  const std::string at = "at the tip of " + base_name(spreader);
  const std::string gear = fact_text(spreader.particulars, "chafe-gear");
  const std::string cover = cover_of(rig, stay);
  if (!cover.empty() || (!gear.empty() && !says_none(gear))) {
    report.pass(at + ": " + (cover.empty() ? gear : cover));
  } else if (gear.empty()) {
    report.not_checked("chafe-gear of " + base_name(spreader) + " is not stated");
  } else {
    auto finding = diagnose("no-chafe-gear", {{"stay", name}, {"line", rope.name}, {"where", at}})
                       .at(stay.place)
                       .about(name);
    if (const auto place = place_of(spreader.particulars, "chafe-gear"))
      finding = std::move(finding).and_at(*place, "none");
    report.find(std::move(finding));
  }
}

} // namespace

void check_no_chafe_gear(const Rig& rig, const Derived& derived, CheckReport& report) {
  const SpreaderTips tips(rig);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const LineOverTips line = line_over_tips(rig, stay);
                  for (const Spreader* spreader : tips.under(stay))
                    if (line.not_known)
                      of_stay.not_checked("which of its lines goes over " + base_name(*spreader) +
                                          " is not stated");
                    else if (line.rope != nullptr)
                      look_at(rig, stay, name, *spreader, *line.rope, of_stay);
                });
}

} // namespace sheerpole
