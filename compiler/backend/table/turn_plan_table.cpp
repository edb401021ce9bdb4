#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/table/tune_tables.hpp"
#include "backend/table/tune_words.hpp"
#include "units/format_length.hpp"
#include "wording/papers/tune_sheet_words.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

using Kind = TuneQuantity::Kind;

std::string of_words(const CheckedRig& checked, const TunedRig& tuned, std::size_t number) {
  const TuneQuantity& quantity = tuned.quantities[number];
  return (quantity.kind == Kind::tension
              ? checked.rig()[tuned.model.stays[quantity.number].stay].name
              : checked.rig().spars[tuned.model.spars[quantity.number].spar].name) +
         ", " + quantity_words(checked, tuned, number);
}

std::string number_words(const TunedRig& tuned, std::size_t quantity, double value) {
  return tuned.quantities[quantity].kind == Kind::tension ? format_kilonewtons(value) + " kN"
                                                          : format_signed(value, 1) + " mm";
}

std::string within_words(const TunedRig& tuned, std::size_t quantity, double value) {
  return tuned.quantities[quantity].kind == Kind::tension ? format_kilonewtons(value)
                                                          : format_fixed(value, 1);
}

/// Which bound stops the wishes.
std::vector<std::string> unmet_words(const CheckedRig& checked, const TuneReport& report) {
  std::vector<std::string> result;
  const TurnPlanning& planning = report.planning;
  for (const statics::TurnPlan::Unmet& unmet : planning.plan.unmet) {
    const std::size_t quantity = planning.wishes[unmet.wish].quantity;
    result.push_back(
        say(TuneSheetPhrase::cannot_be_had_is_what, of_words(checked, report.tuned, quantity),
            within_words(report.tuned, quantity, std::abs(unmet.off)),
            (report.tuned.quantities[quantity].kind == Kind::tension ? " kN" : " mm"),
            (unmet.off < 0.0 ? say(TuneSheetPhrase::short_of) : say(TuneSheetPhrase::beyond))));
  }
  for (const std::size_t screw : planning.plan.at_end)
    result.push_back(say(TuneSheetPhrase::at_end_its_thread_where,
                         turned_words(checked, report.tuned.model, planning.screws[screw])));
  if (!planning.plan.unmet.empty() && planning.plan.at_end.empty())
    result.push_back(say(TuneSheetPhrase::no_thread_is_in_way));
  return result;
}

} // namespace

Table wish_table(const CheckedRig& checked, const TuneReport& report) {
  Table table{
      .title = say(TuneSheetPhrase::what_is_wished_for),
      .columns = {{"of"}, {"now", true}, {"wished", true}, {"within ±", true}, {"with these turns", true}}};
  const TurnPlanning& planning = report.planning;
  for (std::size_t i = 0; i < planning.wishes.size(); ++i) {
    const TuneWish& wish = planning.wishes[i];
    table.rows.push_back({of_words(checked, report.tuned, wish.quantity),
                          number_words(report.tuned, wish.quantity, planning.now[wish.quantity]),
                          number_words(report.tuned, wish.quantity, wish.value),
                          within_words(report.tuned, wish.quantity, wish.within),
                          i < planning.plan.values.size()
                              ? number_words(report.tuned, wish.quantity, planning.plan.values[i])
                              : ""});
  }
  table.notes = say_each(checked.rig(), planning.not_understood);
  for (std::string& words : unmet_words(checked, report))
    table.notes.push_back(std::move(words));
  return table;
}

Table turn_plan_table(const CheckedRig& checked, const TuneReport& report) {
  Table table{.title = say(TuneSheetPhrase::plan_of_turns),
              .columns = {{"", true},
                          {"turn"},
                          {"by"},
                          {"least tension then, kN", true},
                          {"in"},
                          {"left to tighten", true, "steps"},
                          {"left to slacken", true, "steps"}}};
  const TurnPlanning& planning = report.planning;
  const TuneModel& model = report.tuned.model;
  if (planning.wishes.empty()) {
    table.notes = {say(TuneSheetPhrase::nothing_is_wished_for_state)};
    return table;
  }
  if (planning.plan.outcome == statics::PlanOutcome::no_state) {
    table.notes = {say(TuneSheetPhrase::no_plan_was_found)};
    return table;
  }
  // Sides that are turned alike are alike.
  const bool sides_together =
      std::ranges::any_of(planning.screws, [](const TurnedStays& screw) { return screw.stays.size() > 1; });
  std::vector<double> done(planning.screws.size(), 0.0);
  const auto left = [&](const TurnedStays& turned, double turns, bool tighten) {
    double least = 1e9;
    for (const std::size_t i : turned.stays)
      least = std::min(least, (tighten ? model.stays[i].to_tighten_mm : model.stays[i].to_slacken_mm) /
                                      model.stays[i].step_mm +
                                  (tighten ? -turns : turns));
    return format_fixed(least, 1);
  };
  if (!planning.steps) {
    table.notes = {say(TuneSheetPhrase::these_turns_in_all_but)};
    for (std::size_t k = 0; k < planning.screws.size(); ++k)
      if (planning.plan.turns[k] != 0.0)
        table.rows.push_back({"", turned_words(checked, model, planning.screws[k]),
                              turns_words(model, planning.screws[k], planning.plan.turns[k]), "", "",
                              left(planning.screws[k], planning.plan.turns[k], true),
                              left(planning.screws[k], planning.plan.turns[k], false)});
    return table;
  }
  for (std::size_t i = 0; i < planning.steps->size(); ++i) {
    const statics::PlannedTurn& step = (*planning.steps)[i];
    done[step.screw] += step.turns;
    std::string slackest;
    if (step.slackest)
      for (const TuneStay& stay : model.stays)
        for (const statics::StayId leg : stay.legs)
          if (leg == *step.slackest)
            slackest = sides_together ? checked.rig()[stay.stay].base : checked.rig()[stay.stay].name;
    table.rows.push_back({std::to_string(i + 1), turned_words(checked, model, planning.screws[step.screw]),
                          turns_words(model, planning.screws[step.screw], step.turns),
                          format_kilonewtons(step.least_tension_newtons), slackest,
                          left(planning.screws[step.screw], done[step.screw], true),
                          left(planning.screws[step.screw], done[step.screw], false)});
  }
  if (planning.steps->empty())
    table.notes.push_back(say(TuneSheetPhrase::it_stands_as_wished_there));
  table.notes.push_back(say(TuneSheetPhrase::turn_loaded_screw_by_small));
  return table;
}

} // namespace sheerpole
