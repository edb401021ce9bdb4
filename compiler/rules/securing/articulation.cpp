#include "calculate/joints/articulation.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/securing_phrases.hpp"
#include "wording/model_words.hpp"

#include <algorithm>
#include <utility>

/// Whether the ends of a stay can swing.
namespace sheerpole::articulation_checks {

namespace {

using Common = AnyCheckPhrase;

using P = SecuringCheckPhrase;

/// What the checks on articulation say of one end of a stay.
enum class Swing {
  no_matter,   ///< no wire there, or nothing that asks for a toggle
  lets,        ///< something lets it swing in two planes
  parallel,    ///< nothing does, and what might has parallel pins
  not_checked, ///< it hangs by a tee, of which it is not stated how far it swings
  lacks        ///< nothing does
};

const Part* part_at(const Rig& rig, const Stay& stay, std::size_t item) {
  return stay.stack[item].kind == StackItem::Kind::part ? &rig[stay.stack[item].part] : nullptr;
}

bool carries_sail(const Stay& stay) {
  return std::find(stay.duties.begin(), stay.duties.end(), "carries-sail") != stay.duties.end();
}

/// Whether it comes down on a chainplate with a screw or a terminal.
bool ends_on_deck(const Rig& rig, const Stay& stay, const Articulation& end) {
  const auto is = [&](std::size_t item, PartKind kind) {
    const Part* part = part_at(rig, stay, item);
    return part != nullptr && part->kind == kind;
  };
  return !end.items.empty() && is(end.items.back(), PartKind::chainplate) &&
         std::any_of(end.items.begin(), end.items.end(), [&](std::size_t item) {
           return is(item, PartKind::turnbuckle) || is(item, PartKind::terminal);
         });
}

/// Aloft a stay that carries a sail asks for a toggle; below, on its way to a chainplate, one that ends in
/// a screw or a terminal. One between two masts asks for it at both ends, since each mast moves by itself
/// (common practice, no source). A toggle with parallel pins is said by its own finding.
Swing swing_of(const Rig& rig, const Stay& stay, const Articulation& end, WhichEnd where) {
  if (!between_masts(rig, stay) &&
      (where == WhichEnd::upper ? !carries_sail(stay) : !ends_on_deck(rig, stay, end)))
    return Swing::no_matter;
  if (end.swings)
    return Swing::lets;
  if (end.parallel && part_at(rig, stay, *end.parallel)->kind == PartKind::toggle)
    return Swing::parallel;
  return end.tee ? Swing::not_checked : Swing::lacks;
}

/// What lacks a toggle, said at the end of the stack that is meant.
DiagnosticBuilder lacking(const Rig& rig, const Stay& stay, const Articulation& end, WhichEnd where,
                          std::string_view slug, const std::string& name, const std::string& line) {
  const bool masts = between_masts(rig, stay);
  const std::string what =
      where == WhichEnd::upper
          ? (masts ? say(rig, {P::goes_between, {Words{where_words(rig, stay, where)}}})
                   : said(P::carries_a_sail))
          : (masts ? say(rig, {P::and_where, {Words{where_words(rig, stay, where)}}}) : said(P::the_deck));
  return diagnose(slug, {{"stay", name}, {"line", line}, {"what", what}})
      .at(end.items.empty() ? stay.stack_place : stay.stack[end.items.back()].place,
          said(where == WhichEnd::upper ? P::nothing_to_mast : P::nothing_above))
      .about(name);
}

template <WhichEnd where>
void check_toggle(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const auto end = articulation(rig, stay, where);
                  if (!end)
                    return;
                  switch (swing_of(rig, stay, *end, where)) {
                  case Swing::no_matter:
                  case Swing::parallel:
                    break;
                  case Swing::lets:
                    of_stay.pass({P::lets_it_swing, {Words{*end->swings}}});
                    break;
                  case Swing::not_checked:
                    of_stay.not_checked({P::slot_not_stated, {stay.stack[*end->tee].part}});
                    break;
                  case Swing::lacks:
                    of_stay.find(lacking(rig, stay, *end, where, report.check(), name,
                                         end->toggled_to_line.value_or(rig[stay.material].name)));
                    break;
                  }
                });
}

void look_at_pins(const Rig& rig, const Stay& stay, const std::string& name, WhichEnd where,
                  StayReport& report) {
  const auto end = articulation(rig, stay, where);
  if (!end || (!end->parallel && !end->two_pins))
    return;
  const WhichEnd at = where;
  const auto of_end = [&](Remark remark) {
    return Remark(Common::of_something, {at, Remarks{{std::move(remark)}}});
  };
  const auto part_name = [&](std::size_t item) { return rig[stay.stack[item].part].name; };
  if (end->swings)
    report.pass(of_end({P::lets_it_swing, {Words{*end->swings}}}));
  else if (swing_of(rig, stay, *end, where) == Swing::lacks)
    return; // said by the finding about the missing toggle
  else if (end->parallel)
    find_once(report, diagnose("pins-parallel", {{"stay", name},
                                                 {"part", part_name(*end->parallel)},
                                                 {"where", where == WhichEnd::upper ? "aloft" : "below"}})
                          .at(stay.stack[*end->parallel].place, said(P::parallel_pins))
                          .about(name));
  else
    report.not_checked(of_end({Common::of_not_stated, {Words{"pins"}, Words{part_name(*end->two_pins)}}}));
}

void check_pins_parallel(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const WhichEnd where : {WhichEnd::upper, WhichEnd::lower})
                    look_at_pins(rig, rig[stay.stay], name, where, of_stay);
                });
}

} // namespace

const CheckTable checks{CheckRow{"no-toggle-aloft", check_toggle<WhichEnd::upper>},
                        CheckRow{"no-toggle-below", check_toggle<WhichEnd::lower>},
                        CheckRow{"pins-parallel", check_pins_parallel}};

} // namespace sheerpole::articulation_checks
