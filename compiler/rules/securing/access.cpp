#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/securing_phrases.hpp"

#include <algorithm>

/// What can be looked at when the rig is up.
namespace sheerpole::access {

namespace {

using Common = AnyCheckPhrase;

using P = SecuringCheckPhrase;

void look_at_body(const Stay& stay, const std::string& name, const StackPart& one, StayReport& report) {
  const std::string body = fact_text(one.part->particulars, fact_names.body);
  const std::string hole = fact_text(one.part->particulars, fact_names.witness_hole);
  if (body.empty()) {
    report.not_checked({Common::of_not_stated, {Words{"body"}, Words{one.part->name}}});
  } else if (body == "open") {
    report.pass({P::open_body, {Words{one.part->name}}});
  } else if (hole.empty()) {
    report.not_checked({Common::of_not_stated, {Words{"witness-hole"}, Words{one.part->name}}});
  } else if (hole == "yes") {
    report.pass({P::closed_with_holes, {Words{one.part->name}}});
  } else {
    auto finding = diagnose("no-witness-hole", {{"stay", name}, {"part", one.part->name}})
                       .at(stay.stack[one.item].place, said(Common::this_one))
                       .about(name);
    if (const auto place = place_of(one.part->particulars, fact_names.witness_hole))
      finding = std::move(finding).and_at(*place, said(Common::stated_here));
    report.find(std::move(finding));
  }
}

void check_no_witness_hole(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const StackPart& one : parts_of(rig, rig[stay.stay]))
                    if (one.part->kind == PartKind::turnbuckle)
                      look_at_body(rig[stay.stay], name, one, of_stay);
                });
}

void check_not_accessible(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const std::vector<StackPart> parts = parts_of(rig, stay);
                  bool stated = false;
                  for (const StackPart& one : parts) {
                    const std::string accessible = fact_text(one.part->particulars, fact_names.accessible);
                    stated = stated || !accessible.empty();
                    if (accessible == "yes")
                      of_stay.pass({P::can_be_looked_at, {Words{one.part->name}}});
                    else if (accessible == "no")
                      of_stay.find(diagnose("not-accessible", {{"stay", name}, {"part", one.part->name}})
                                       .at(stay.stack[one.item].place, said(Common::this_one))
                                       .about(name));
                  }
                  // A furler's drum and its foil are what hides pins.
                  const bool foil = std::any_of(parts.begin(), parts.end(), [](const StackPart& one) {
                    return one.part->kind == PartKind::foil;
                  });
                  if (foil && !stated)
                    of_stay.not_checked({P::foil_not_stated});
                });
}

} // namespace

const CheckTable checks{CheckRow{"no-witness-hole", check_no_witness_hole},
                        CheckRow{"not-accessible", check_not_accessible}};

} // namespace sheerpole::access
