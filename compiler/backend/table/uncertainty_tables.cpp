#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "calculate/change/first_to_measure.hpp"
#include "calculate/change/sensitivity.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/proof_sheet_words.hpp"
#include "wording/phrase_table.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

std::string signed_hundredths(Length length) {
  const std::string text = format_fixed(length.millimetres(), 2);
  return text.starts_with('-') || text == "0.00" ? text : "+" + text;
}

} // namespace

Table uncertainty_table(const CheckedRig& checked) {
  const Derived& derived = checked.derived();
  Table table{
      .title = say(ProofSheetPhrase::how_well_each_cut_is),
      .columns = {{"stay"},
                  {"worst -", true, "mm"},
                  {"worst +", true, "mm"},
                  {"standard", true, "mm"},
                  {"k", true},
                  {"95 % +-", true, "mm"},
                  {"drawn -", true, "mm"},
                  {"drawn +", true, "mm"},
                  {"adjuster reaches"},
                  {"no bound stated", true}},
      .notes = {say(ProofSheetPhrase::all_in_mm_cut_without),
                say(ProofSheetPhrase::standard_k_and_law_propagation, grouped(derived.draws), derived.seed),
                say(ProofSheetPhrase::inputs_without_bound_are_not)}};
  for (const DerivedStay& stay : derived.stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    if (!stay.uncertainty) {
      table.rows.push_back(
          {name, "", "", "", "", "", "", "", say(ProofSheetPhrase::not_checked_no_bound_is), ""});
      continue;
    }
    const Uncertainty& found = *stay.uncertainty;
    table.rows.push_back(
        {name, format_signed(found.worst_low), format_signed(found.worst_high),
         format_tenths(found.standard), format_fixed(found.coverage_factor, 2),
         format_tenths(found.expanded), format_signed(found.drawn_low), format_signed(found.drawn_high),
         found.reaches ? say(ProofSheetPhrase::in, trials_words(*found.reaches, derived.draws)) : "",
         std::to_string(found.without_bound.size())});
  }
  return table;
}

namespace {

std::string step_words(SmallStep step) {
  switch (step) {
  case SmallStep::millimetre:
    return "1 mm";
  case SmallStep::degree:
    return "1 deg";
  case SmallStep::percent:
    return "1 %";
  }
  return {};
}

std::string input_words(const StepOfInput& input) {
  switch (input.thing) {
  case MeasuredThing::reading:
    return say(ProofSheetPhrase::what_was_read_in_place_word);
  case MeasuredThing::pin_to_pin:
    return say(ProofSheetPhrase::stated_pin_to_pin_length);
  case MeasuredThing::cord:
    return say(ProofSheetPhrase::x_on_its_cord);
  case MeasuredThing::place:
    return say(ProofSheetPhrase::place_of, input.name);
  case MeasuredThing::lean:
    return say(ProofSheetPhrase::lean_of, input.name);
  case MeasuredThing::height:
    return say(ProofSheetPhrase::height_of, input.name);
  case MeasuredThing::part:
    return say(ProofSheetPhrase::length_of, input.name);
  case MeasuredThing::contraction:
    return say(
        ProofSheetPhrase::contraction_of, input.name,
        (input.end == WhichEnd::upper ? say(ProofSheetPhrase::aloft) : say(ProofSheetPhrase::below)));
  case MeasuredThing::nothing:
    return say(ProofSheetPhrase::its_length_no_way_to);
  }
  return {};
}

} // namespace

Table shares_table(const CheckedRig& checked) {
  Table table{
      .title = say(ProofSheetPhrase::what_to_measure_next_inputs_by),
      .columns = {{"stay"}, {"input"}, {"share", true, "%"}, {"moves the cut mm", true}, {"read as"}},
      .notes = {say(ProofSheetPhrase::moves_cut_by_so_much),
                say(ProofSheetPhrase::inputs_without_bound_come_last)}};
  const Derived& derived = checked.derived();
  std::vector<Sensitivity> all;
  for (const DerivedStay& stay : derived.stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    if (!stay.uncertainty) {
      if (all.empty())
        all = sensitivities(checked.rig(), derived);
      for (const StepOfInput& step : steps_of_inputs(checked.rig(), stay, all))
        table.rows.push_back({name, input_words(step), say(ProofSheetPhrase::not_known),
                              say(ProofSheetPhrase::for_word, format_fixed(step.moves.millimetres(), 2),
                                  step_words(step.step)),
                              say(ProofSheetPhrase::no_bound_is_stated)});
      continue;
    }
    for (const UncertaintyShare& share : stay.uncertainty->shares) {
      const UncertainInput& input = derived.inputs[share.input];
      table.rows.push_back({name, say(checked.rig(), input.name), variance_words(share.share),
                            format_signed(share.per_bound), std::string(words(input.distribution))});
    }
    for (const Remark& input : stay.uncertainty->without_bound)
      table.rows.push_back({name, say(checked.rig(), input), say(ProofSheetPhrase::not_known), "",
                            say(ProofSheetPhrase::no_bound_is_stated)});
  }
  return table;
}

Table sensitivity_table(const CheckedRig& checked) {
  Table table{
      .title = say(ProofSheetPhrase::sensitivity_how_far_each_stay),
      .columns = {{"stay"}, {"what"}, {"by"}, {"pin-to-pin mm", true}, {"body mm", true}, {"counts"}},
      .notes = {say(ProofSheetPhrase::each_row_alone_worked_out),
                say(ProofSheetPhrase::counts_no_means_that_length)}};
  for (const Sensitivity& one : sensitivities(checked.rig(), checked.derived()))
    table.rows.push_back({checked.rig()[one.stay].name, one.what, std::string(name_of(one.by)),
                          signed_hundredths(one.pin_to_pin), signed_hundredths(one.body),
                          one.counts ? "yes" : "no"});
  if (table.rows.empty())
    table.notes.push_back(say(ProofSheetPhrase::no_stay_has_path_or));
  return table;
}

} // namespace sheerpole
