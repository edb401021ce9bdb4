#include "calculate/facts.hpp"
#include "calculate/strength/force_text.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <array>
#include <optional>

/// Lashings and their knots.
namespace sheerpole::lashings {

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

std::string missing_words(const ChainLink& link) {
  std::string words;
  for (const UnstatedStrength& one : link.not_stated)
    words += (words.empty() ? "" : ", ") + one.property + " of " + one.of;
  return words + (link.not_stated.size() == 1 ? " is not stated" : " are not stated");
}

void look_at_lashing(const Stay& stay, const std::string& name, const ChainLink& lashing,
                     const std::optional<Held>& held, double factor, StayReport& report) {
  if (!lashing.break_load) {
    report.not_checked(missing_words(lashing));
    return;
  }
  const std::string sum = lashing.how + " = " + force_text(*lashing.break_load);
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
                      look_at_lashing(stay, name, link, held_by(rig, stay), *factor, of_stay);
                });
}

void check_knot_factor_high(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = rig.limits.value(Limit::knot_factor).value_or(1.0);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (const StackPart& one : parts_of(rig, stay)) {
                    if (one.part->kind != "lashing")
                      continue;
                    const auto factor = fact_number(one.part->particulars, "knot-factor");
                    if (!factor) {
                      of_stay.not_checked("knot-factor of " + one.part->name + " is not stated");
                    } else if (!is_below(most, factor->value)) {
                      of_stay.pass(one.part->name + ": " + percent_text(factor->value) + " in the knot");
                    } else {
                      auto finding = diagnose("knot-factor-high", {{"stay", name},
                                                                   {"part", one.part->name},
                                                                   {"factor", percent_text(factor->value)},
                                                                   {"most", percent_text(most)}})
                                         .at(stay.stack[one.item].place, "this one")
                                         .about(name);
                      if (factor->provenance.place)
                        finding = std::move(finding).and_at(*factor->provenance.place, "stated here");
                      of_stay.find(std::move(finding));
                    }
                  }
                });
}

constexpr std::array rows{
    CheckRow{"lashing-weak", check_lashing_weak, {Limit::lashing_strength, Limit::lashing_legs}},
    CheckRow{"knot-factor-high", check_knot_factor_high, {Limit::knot_factor}},
};

} // namespace

std::span<const CheckRow> checks() {
  return rows;
}

} // namespace sheerpole::lashings
