#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/securing_checks.hpp"
#include "rules/stack_parts.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

bool is_line(const Stay& stay, std::size_t item) {
  return stay.stack[item].kind == StackItem::Kind::line;
}

void look_at(const Rig& rig, const Stay& stay, const std::string& name, const Joint& joint,
             StayReport& report) {
  if (is_line(stay, joint.upper) == is_line(stay, joint.lower))
    return;
  const std::size_t line_item = is_line(stay, joint.upper) ? joint.upper : joint.lower;
  const std::size_t part_item = line_item == joint.upper ? joint.lower : joint.upper;
  const LineMaterial& line = rig[stay.stack[line_item].material.value_or(stay.material)];
  const Part& part = rig[stay.stack[part_item].part];
  const std::string made_for = fact_text(part.particulars, "made-for");
  if (made_for.empty()) {
    if (part.kind == "thimble")
      report.not_checked(say(rig, joint.name) + ": made-for of " + part.name + " is not stated");
    return;
  }
  const bool rope = line.kind == LineMaterial::Kind::rope;
  const std::string kind(name_of(line.kind));
  if (made_for == (rope ? "wire" : "rope"))
    find_once(report, diagnose("thimble-for-wire", {{"stay", name},
                                                    {"line", line.name},
                                                    {"kind", kind},
                                                    {"part", part.name},
                                                    {"made-for", made_for}})
                          .at(stay.stack[part_item].place, "made for " + made_for)
                          .about(name));
  else
    report.pass(say(rig, joint.name) + ": " + kind + " on a part made for " +
                (made_for == "either" ? "either" : made_for));
}

} // namespace

void check_thimble_for_wire(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Joint& joint : stay.joints)
                    look_at(rig, rig[stay.stay], name, joint, of_stay);
                });
}

} // namespace sheerpole
