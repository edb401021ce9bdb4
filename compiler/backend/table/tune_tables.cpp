#include "backend/table/tune_tables.hpp"

#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/table/tune_words.hpp"
#include "units/format_length.hpp"
#include "wording/papers/tune_sheet_words.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

using Kind = TuneQuantity::Kind;

std::string break_share(const TuneStay& stay, double newtons) {
  return stay.break_newtons ? format_fixed(100.0 * newtons / *stay.break_newtons, 1) + " %" : "";
}

std::string known_by(const TuneStay& stay) {
  switch (stay.known_by) {
  case LengthKnownBy::reading:
    return say(TuneSheetPhrase::a_reading);
  case LengthKnownBy::taken_up:
    return say(TuneSheetPhrase::what_was_taken_up);
  case LengthKnownBy::dock_tension:
    return say(TuneSheetPhrase::dock_tension_not_read);
  case LengthKnownBy::nothing:
    break;
  }
  return "";
}

std::string words_of_slip(const Rig& rig, const TuneSlip& slip) {
  return joined(say_each(rig, slip.likeliest), "; ");
}

void add_stay(const CheckedRig& checked, const TuneReport& report, std::size_t number, Table& table) {
  const Rig& rig = checked.rig();
  const TuneStay& stay = report.tuned.model.stays[number];
  const std::string& name = rig[stay.stay].name;
  const auto& state = report.tuned.state.stays;
  const statics::StayState& deck = state[stay.at_deck().index()];
  std::vector<std::string> row{
      name,
      stay.legs.size() > 1 ? say(TuneSheetPhrase::tension_at_deck) : say(TuneSheetPhrase::tension),
      deck.tension_newtons > 0.0 ? format_kilonewtons(deck.tension_newtons) + " kN"
                                 : say(TuneSheetPhrase::slack_by_mm, format_fixed(deck.slack_mm, 1)),
      doubt_words(report, number),
      break_share(stay, deck.tension_newtons),
      known_by(stay),
      "",
      "",
      ""};
  for (const TuneSlip& slip : report.slips)
    if (slip.stay == number) {
      row[6] = slip.read_newtons > 0.0 ? format_kilonewtons(slip.read_newtons) : "";
      row[7] = slip.by_settings_newtons ? format_kilonewtons(*slip.by_settings_newtons) : "";
      row[8] = words_of_slip(rig, slip);
    }
  table.rows.push_back(std::move(row));
  for (std::size_t i = 0; i + 1 < stay.legs.size(); ++i) {
    const double newtons = state[stay.legs[i].index()].tension_newtons;
    table.rows.push_back({name,
                          stay.legs.size() > 2 ? say(TuneSheetPhrase::tension_leg, i + 1)
                                               : say(TuneSheetPhrase::tension_aloft),
                          newtons > 0.0 ? format_kilonewtons(newtons) + " kN" : say(TuneSheetPhrase::slack),
                          "", break_share(stay, newtons), "", "", "", ""});
  }
}

/// Rows and columns of what one turn does, with what each number is.
Table turn_matrix(const CheckedRig& checked, const TuneReport& report, std::string title) {
  Table table{.title = std::move(title), .columns = {{"one turn tighter"}, {"takes", true, "mm"}}};
  for (const std::size_t q : shown_quantities(report.tuned))
    table.columns.push_back({column_words(checked, report.tuned, q), true,
                             report.tuned.quantities[q].kind == Kind::tension ? "kN" : "mm"});
  return table;
}

std::string sign_of(const TuneReport& report, std::size_t effect, std::size_t quantity) {
  const bool tension = report.tuned.quantities[quantity].kind == Kind::tension;
  const double change = report.effects[effect].change[quantity];
  return tension ? format_signed(change / 1000.0, 2) : format_signed(change, 1);
}

std::string slack_words(const CheckedRig& checked, const TuneReport& report, const TurnEffect& effect) {
  const auto name = [&](std::size_t stay) {
    return checked.rig()[report.tuned.model.stays[stay].stay].name;
  };
  if (!effect.went_slack.empty())
    return say(TuneSheetPhrase::is_slack, joined(effect.went_slack, ", ", name));
  if (!effect.first_slack)
    return say(TuneSheetPhrase::none);
  const double turns = effect.slack_after_turns;
  return name(*effect.first_slack) +
         (turns > 50.0 ? say(TuneSheetPhrase::after_more_than)
                       : say(TuneSheetPhrase::after_about, format_fixed(turns, turns < 10.0 ? 1 : 0)));
}

/// Where a value is from; it stands beside it as written.
std::string source_of(const TuneInput& input) {
  if (input.value.empty() || !input.provenance.place)
    return "";
  Provenance provenance = input.provenance;
  provenance.written.clear();
  return source_words(provenance);
}

/// Whether no stay is known to change or not to.
bool nothing_known(const TuneReport& report, const TuneLater& later) {
  return later.not_checked.size() >= report.tuned.model.stays.size();
}

/// Why something is not known, with the stays that it is said of, each reason once.
std::vector<std::pair<std::string, std::string>> by_reason(const CheckedRig& checked,
                                                           const TuneLater& later) {
  std::vector<std::pair<std::string, std::string>> result;
  for (const TuneLater::NotChecked& one : later.not_checked) {
    const std::string why = joined(say_each(checked.rig(), one.why), "; ");
    auto found = std::ranges::find(result, why, &std::pair<std::string, std::string>::first);
    if (found == result.end())
      found = result.emplace(result.end(), why, "");
    add_words(found->second, ", ", checked.rig()[one.stay].name);
  }
  return result;
}

} // namespace

const std::vector<std::string>& tune_cautions() {
  static const std::vector<std::string> cautions{say(TuneSheetPhrase::pre_tension_at_dock_alone),
                                                 say(TuneSheetPhrase::ask_spars_maker_for_its),
                                                 say(TuneSheetPhrase::not_in_model_sag_and)};
  return cautions;
}

Table without_empty_columns(Table table) {
  for (std::size_t i = table.columns.size(); i-- > 1;) {
    if (std::ranges::any_of(table.rows, [&](const auto& row) { return !row[i].empty(); }))
      continue;
    table.columns.erase(table.columns.begin() + static_cast<std::ptrdiff_t>(i));
    for (auto& row : table.rows)
      row.erase(row.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return table;
}

std::vector<std::string> tune_draft_words(const CheckedRig& checked, const TuneModel& model) {
  return say_each(checked.rig(), model.draft);
}

Table tune_inputs_table(const CheckedRig& checked, const TuneModel& model) {
  Table table{.title = say(TuneSheetPhrase::what_balance_rig_rests_on),
              .columns = {{"of"}, {"property"}, {"value"}, {"source"}}};
  for (const TuneInput& input : model.inputs)
    table.rows.push_back({say(checked.rig(), input.of), input.property,
                          input.value.empty() ? say(TuneSheetPhrase::not_stated) : input.value,
                          source_of(input)});
  for (const Remark& lacking : model.lacking)
    table.rows.push_back({"", "", say(TuneSheetPhrase::lacking), say(checked.rig(), lacking)});
  table.notes = say_each(checked.rig(), model.notes);
  return table;
}

Table tune_lacking_table(const CheckedRig& checked, const TunedRig& tuned) {
  const Rig& rig = checked.rig();
  Table table{.title = say(TuneSheetPhrase::what_is_in_way), .columns = {{"of"}, {"what is in the way"}}};
  for (const TuneInput& input : tuned.model.inputs)
    if (input.value.empty())
      table.rows.push_back({say(rig, input.of), say(TuneSheetPhrase::is_not_stated, input.property)});
  for (const Remark& lacking : tuned.model.lacking)
    table.rows.push_back({"", say(rig, lacking)});
  for (const Remark& trouble : tuned.trouble)
    table.rows.push_back({"", say(rig, trouble)});
  return table;
}

Table standing_table(const CheckedRig& checked, const TuneReport& report) {
  const Rig& rig = checked.rig();
  Table table{.title = say(TuneSheetPhrase::how_rig_stands_at_dock_begins),
              .columns = {{"of"},
                          {"what"},
                          {"now", true},
                          {"±", true},
                          {"of break", true, "%"},
                          {"known by"},
                          {"read, kN", true},
                          {"by settings, kN", true},
                          {"likeliest slip"}}};
  for (std::size_t i = 0; i < report.tuned.model.stays.size(); ++i)
    add_stay(checked, report, i, table);
  const std::vector<double> now = report.tuned.values(report.tuned.state);
  for (std::size_t q = 0; q < now.size(); ++q) {
    const TuneQuantity& quantity = report.tuned.quantities[q];
    if (quantity.kind == Kind::tension)
      continue;
    table.rows.push_back({rig.spars[report.tuned.model.spars[quantity.number].spar].name,
                          quantity_words(checked, report.tuned, q), format_signed(now[q], 1) + " mm",
                          doubt_words(report, q), "", "", "", "", ""});
  }
  for (const TuneSpar& spar : report.tuned.model.spars) {
    const statics::SparState& state = report.tuned.state.spars[spar.element.index()];
    double most = 0.0;
    for (const double newtons : state.compression_newtons)
      most = std::max(most, newtons);
    table.rows.push_back({rig.spars[spar.spar].name, say(TuneSheetPhrase::greatest_push_along_it),
                          format_kilonewtons(most) + " kN", "", "", "", "", "", ""});
  }
  table.notes = margin_words(checked, report);
  table.notes.push_back(say(TuneSheetPhrase::head_from_its_drawn_place));
  return table;
}

std::vector<std::string> margin_words(const CheckedRig& checked, const TuneReport& report) {
  const Rig& rig = checked.rig();
  std::vector<std::string> result;
  const TuneStay* least = nullptr;
  double newtons = 0.0;
  for (const TuneStay& stay : report.tuned.model.stays)
    for (const statics::StayId leg : stay.legs) {
      const statics::StayState& state = report.tuned.state.stays[leg.index()];
      if (stay.break_newtons && state.tension_newtons > *stay.break_newtons)
        result.push_back(say(TuneSheetPhrase::beyond_its_break_load_number, rig[stay.stay].name));
      if (state.tension_newtons > 0.0 &&
          (least == nullptr || state.tension_newtons < (1.0 - 1e-6) * newtons)) {
        least = &stay;
        newtons = state.tension_newtons;
      }
    }
  if (least != nullptr)
    result.push_back(say(TuneSheetPhrase::least_tension_stay_that_pulls, format_kilonewtons(newtons),
                         rig[least->stay].name));
  if (report.tuned.state.softest && report.tuned.state.softest->node)
    result.push_back(say(TuneSheetPhrase::softest_motion_moves_mm_for,
                         name_of_node(rig, report.tuned.model, *report.tuned.state.softest->node),
                         format_fixed(report.tuned.state.softest->stiffness_newtons_per_mm, 2)));
  return result;
}

std::string numbered_stays(const CheckedRig& checked, const TuneModel& model) {
  std::string text;
  for (std::size_t i = 0; i < model.stays.size(); ++i)
    add_words(text, ", ", std::to_string(i + 1) + " " + checked.rig()[model.stays[i].stay].name);
  return text;
}

Table turn_table(const CheckedRig& checked, const TuneReport& report) {
  Table table = turn_matrix(checked, report, say(TuneSheetPhrase::what_one_turn_tighter_does));
  table.columns.push_back({"goes slack first"});
  const auto shown = shown_quantities(report.tuned);
  for (std::size_t e = 0; e < report.effects.size(); ++e) {
    const TurnEffect& effect = report.effects[e];
    std::vector<std::string> row{turned_words(checked, report.tuned.model, effect.turned),
                                 step_words(report.tuned.model, effect.turned)};
    for (const std::size_t q : shown)
      row.push_back(effect.trouble.empty() ? sign_of(report, e, q) : "");
    row.push_back(effect.trouble.empty() ? slack_words(checked, report, effect)
                                         : joined(say_each(checked.rig(), effect.trouble), "; "));
    if (effect.beyond_thread)
      row.back() += say(TuneSheetPhrase::no_whole_turn_is_left);
    table.rows.push_back(std::move(row));
  }
  table.notes = {say(TuneSheetPhrase::columns_kn_on_then_mm, numbered_stays(checked, report.tuned.model)),
                 say(TuneSheetPhrase::this_state_only_turn_look)};
  return table;
}

Table turn_doubt_table(const CheckedRig& checked, const TuneReport& report) {
  Table table = turn_matrix(checked, report, say(TuneSheetPhrase::how_far_each_change_may));
  const auto shown = shown_quantities(report.tuned);
  if (report.doubt.inputs == 0)
    return table;
  for (std::size_t e = 0; e < report.effects.size(); ++e) {
    std::vector<std::string> row{turned_words(checked, report.tuned.model, report.effects[e].turned),
                                 step_words(report.tuned.model, report.effects[e].turned)};
    for (const std::size_t q : shown) {
      const double off = report.doubt.of_change[e][q].expanded;
      row.push_back(report.tuned.quantities[q].kind == Kind::tension ? format_fixed(off / 1000.0, 2)
                                                                     : format_fixed(off, 1));
    }
    table.rows.push_back(std::move(row));
  }
  table.notes = {say(TuneSheetPhrase::stated_bounds_stiffness_readings_and, report.doubt.inputs)};
  for (const std::string& trouble : say_each(checked.rig(), report.doubt.trouble))
    table.notes.push_back(trouble);
  return table;
}

Table turn_list(const CheckedRig& checked, const TuneReport& report) {
  Table table{.title = say(TuneSheetPhrase::what_one_turn_tighter_does),
              .columns = {{"one turn tighter"},
                          {"takes mm", true},
                          {"of"},
                          {"what"},
                          {"unit"},
                          {"now", true},
                          {"now ±", true},
                          {"change", true},
                          {"change ±", true}}};
  const std::vector<double> now = report.tuned.values(report.tuned.state);
  for (std::size_t e = 0; e < report.effects.size(); ++e) {
    const TurnEffect& effect = report.effects[e];
    if (!effect.trouble.empty())
      continue;
    for (std::size_t q = 0; q < now.size(); ++q) {
      const TuneQuantity& quantity = report.tuned.quantities[q];
      const bool tension = quantity.kind == Kind::tension;
      const double unit = tension ? 1000.0 : 1.0;
      const int decimals = tension ? 3 : 2;
      const bool bounds = report.doubt.inputs > 0;
      table.rows.push_back(
          {turned_words(checked, report.tuned.model, effect.turned),
           format_fixed(report.tuned.model.stays[effect.turned.stays.front()].step_mm, 3),
           tension ? checked.rig()[report.tuned.model.stays[quantity.number].stay].name
                   : checked.rig().spars[report.tuned.model.spars[quantity.number].spar].name,
           quantity_words(checked, report.tuned, q), tension ? "kN" : "mm",
           format_fixed(now[q] / unit, decimals),
           bounds ? format_fixed(report.doubt.of_value[q].expanded / unit, decimals) : "",
           format_signed(effect.change[q] / unit, decimals),
           bounds ? format_fixed(report.doubt.of_change[e][q].expanded / unit, decimals) : ""});
    }
  }
  return table;
}

Table later_table(const CheckedRig& checked, const TuneReport& report) {
  Table table{.title = say(TuneSheetPhrase::on_other_days_and_after),
              .columns = {{"of"}, {"what"}, {"now", true}}};
  for (const TuneLater& later : report.later)
    table.columns.push_back({say(checked.rig(), later.when), true});
  const std::vector<double> now = report.tuned.values(report.tuned.state);
  for (const std::size_t q : shown_quantities(report.tuned)) {
    const TuneQuantity& quantity = report.tuned.quantities[q];
    const bool tension = quantity.kind == Kind::tension;
    const auto number = [&](double value) {
      return tension ? (value > 0.0 ? format_kilonewtons(value) : say(TuneSheetPhrase::slack))
                     : format_signed(value, 1);
    };
    std::vector<std::string> row{
        tension ? checked.rig()[report.tuned.model.stays[quantity.number].stay].name
                : checked.rig().spars[report.tuned.model.spars[quantity.number].spar].name,
        quantity_words(checked, report.tuned, q) +
            (tension ? say(TuneSheetPhrase::kn) : say(TuneSheetPhrase::mm)),
        number(now[q])};
    for (const TuneLater& later : report.later)
      row.push_back(nothing_known(report, later) ? say(TuneSheetPhrase::not_checked)
                    : later.values.empty()       ? say(TuneSheetPhrase::does_not_stand)
                                                 : number(later.values[q]));
    table.rows.push_back(std::move(row));
  }
  for (const TuneLater& later : report.later)
    for (const auto& [why, stays] : by_reason(checked, later))
      table.notes.push_back(say(checked.rig(), later.when) + ": " +
                            (nothing_known(report, later) ? "" : say(TuneSheetPhrase::taken_as_they_are)) +
                            stays + ": " + why + ".");
  return table;
}

} // namespace sheerpole
