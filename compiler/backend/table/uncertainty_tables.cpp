#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "calculate/change/first_to_measure.hpp"
#include "calculate/change/sensitivity.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
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
      .title = "How well each cut is known",
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
      .notes = {
          "All in mm, of the cut without burys and tails, which move no bearing. Worst: every input at "
          "its bound.",
          "Standard, k and 95 %: law of propagation, JCGM 100:2008. Drawn: 95 % of " +
              grouped(derived.draws) + " draws, seed " + std::to_string(derived.seed) + ", JCGM 101:2008.",
          "Inputs without a bound are not in these ranges: sheerpole show measure-next names them."}};
  for (const DerivedStay& stay : derived.stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    if (!stay.uncertainty) {
      table.rows.push_back({name, "", "", "", "", "", "", "", "not checked: no bound is stated", ""});
      continue;
    }
    const Uncertainty& found = *stay.uncertainty;
    table.rows.push_back({name, format_signed(found.worst_low), format_signed(found.worst_high),
                          format_tenths(found.standard), format_fixed(found.coverage_factor, 2),
                          format_tenths(found.expanded), format_signed(found.drawn_low),
                          format_signed(found.drawn_high),
                          found.reaches ? "in " + trials_words(*found.reaches, derived.draws) : "",
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
    return "what was read in place";
  case MeasuredThing::pin_to_pin:
    return "the stated pin-to-pin length";
  case MeasuredThing::cord:
    return "X, on its cord";
  case MeasuredThing::place:
    return "place of " + input.name;
  case MeasuredThing::lean:
    return "lean of " + input.name;
  case MeasuredThing::height:
    return "height of " + input.name;
  case MeasuredThing::part:
    return "length of " + input.name;
  case MeasuredThing::contraction:
    return "contraction of " + input.name + (input.end == WhichEnd::upper ? " aloft" : " below");
  case MeasuredThing::nothing:
    return "its length: no way to it is stated";
  }
  return {};
}

} // namespace

Table shares_table(const CheckedRig& checked) {
  Table table{
      .title = "What to measure next: inputs by their share of the variance of the cut",
      .columns = {{"stay"}, {"input"}, {"share", true, "%"}, {"moves the cut mm", true}, {"read as"}},
      .notes = {"Moves the cut: by so much when the input is off by its bound, upwards.",
                "Inputs without a bound come last; nobody knows what they do to the range. Of a stay "
                "without any bound they are ranked by what 1 mm, 1 degree or 1 % of them does."}};
  const Derived& derived = checked.derived();
  std::vector<Sensitivity> all;
  for (const DerivedStay& stay : derived.stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    if (!stay.uncertainty) {
      if (all.empty())
        all = sensitivities(checked.rig(), derived);
      for (const StepOfInput& step : steps_of_inputs(checked.rig(), stay, all))
        table.rows.push_back({name, input_words(step), "not known",
                              format_fixed(step.moves.millimetres(), 2) + " for " + step_words(step.step),
                              "no bound is stated"});
      continue;
    }
    for (const UncertaintyShare& share : stay.uncertainty->shares) {
      const UncertainInput& input = derived.inputs[share.input];
      table.rows.push_back({name, say(checked.rig(), input.name), variance_words(share.share),
                            format_signed(share.per_bound), std::string(words(input.distribution))});
    }
    for (const Remark& input : stay.uncertainty->without_bound)
      table.rows.push_back({name, say(checked.rig(), input), "not known", "", "no bound is stated"});
  }
  return table;
}

Table sensitivity_table(const CheckedRig& checked) {
  Table table{
      .title = "Sensitivity: how far each stay moves when one thing does",
      .columns = {{"stay"}, {"what"}, {"by"}, {"pin-to-pin mm", true}, {"body mm", true}, {"counts"}},
      .notes = {"Each row alone, worked out whole; forward, to starboard and up in boat axes. What "
                "moves a stay by less than 0.005 mm is left out.",
                "Counts: no means that the length is read or stated, so that it stays what it was "
                "read as; the row is what the way does."}};
  for (const Sensitivity& one : sensitivities(checked.rig(), checked.derived()))
    table.rows.push_back({checked.rig()[one.stay].name, one.what, std::string(name_of(one.by)),
                          signed_hundredths(one.pin_to_pin), signed_hundredths(one.body),
                          one.counts ? "yes" : "no"});
  if (table.rows.empty())
    table.notes.push_back("No stay has a path or parts.");
  return table;
}

} // namespace sheerpole
