#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/adjuster_checks.hpp"
#include "rules/by_side.hpp"
#include "rules/stack_parts.hpp"
#include "units/format_length.hpp"
#include "wording/say.hpp"
#include "wording/strength_words.hpp"

#include <optional>

namespace sheerpole {

namespace {

/// What a lashing has to hold, before the factor.
struct Held {
  Force force;
  std::string words; ///< "the load of the stay (30 kN)", "the break load of hmpe-9 (92 kN)"
};

std::optional<Held> held_by(const Rig& rig, const Stay& stay) {
  if (const auto load = fact_force(stay.particulars, "load"))
    return Held{load->value, "the load of the stay (" + force_text(load->value) + ")"};
  const LineMaterial& line = rig[stay.material];
  if (line.break_load)
    return Held{line.break_load->value,
                "the break load of " + line.name + " (" + force_text(line.break_load->value) + ")"};
  return std::nullopt;
}

std::string missing_words(const Rig& rig, const ChainLink& link) {
  return lacking_words(rig, link) + (link.not_stated.size() == 1 ? " is not stated" : " are not stated");
}

void look_at(const Rig& rig, const Stay& stay, const std::string& name, const ChainLink& lashing,
             const std::optional<Held>& held, double factor, StayReport& report) {
  if (!lashing.break_load) {
    report.not_checked(missing_words(rig, lashing));
    return;
  }
  const std::string sum = say(rig, lashing.how) + " = " + force_text(*lashing.break_load);
  if (!held) {
    report.not_checked(sum + "; neither the load of the stay nor the break-load of its line is stated");
    return;
  }
  const Force wanted = factor * held->force;
  const std::string bound = format_number(factor) + " times " + held->words + ", " + force_text(wanted);
  if (!is_below(lashing.break_load->newtons(), wanted.newtons()))
    report.pass(sum + "; wanted: " + bound);
  else
    find_once(report, diagnose("lashing-weak", {{"stay", name}, {"sum", sum}, {"bound", bound}})
                          .at(stay.stack[lashing.item].place, force_text(*lashing.break_load))
                          .about(name));
}

} // namespace

void check_lashing_weak(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto factor = rig.limits.value(Limit::lashing_strength);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (const ChainLink& link : derived_stay.chain.links)
                    if (link.kind != LinkKind::lashing)
                      continue;
                    else if (!factor)
                      of_stay.not_checked("lashing-strength is switched off in `limits`");
                    else
                      look_at(rig, stay, name, link, held_by(rig, stay), *factor, of_stay);
                });
}

} // namespace sheerpole
