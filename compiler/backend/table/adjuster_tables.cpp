#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/tables_words.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

std::string optional_tenths(const std::optional<Length>& length) {
  return length ? format_tenths(*length) : std::string();
}

/// Slack as a share of what the adjusters can take up, tightening as a share of what they can give out.
std::string share_of_take_up(const Account& account, Length slack) {
  const bool slacker = slack > Length{};
  const Length room = slacker ? account.to_tighten : account.to_slacken;
  if (room <= Length{})
    return {};
  return format_fixed((slacker ? slack : -slack) / room * 100.0, 1) + " %";
}

bool states_engagement(const Rig& rig) {
  for (const Limit limit :
       {Limit::thread_engaged, Limit::thread_engaged_stainless, Limit::thread_engaged_aluminium})
    if (rig.limits.find(limit) != nullptr)
      return true;
  return false;
}

} // namespace

Table take_up_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::take_up_how_far_every),
              .columns = {{"stay"},
                          {"part"},
                          {"set mm", true},
                          {"to tighten mm", true},
                          {"tighten turns", true},
                          {"to slacken mm", true},
                          {"slacken turns", true},
                          {"mm per turn", true},
                          {"thread engaged mm", true},
                          {"least engaged mm", true}},
              .notes = {say(TablesPhrase::negative_amount_adjuster_is_set),
                        states_engagement(checked.rig())
                            ? say(TablesPhrase::how_much_thread_is_to)
                            : say(TablesPhrase::least_engaged_one_diameter_thread)}};
  for (const DerivedStay& stay : checked.derived().stays)
    for (const TakeUp& adjuster : stay.adjusters)
      table.rows.push_back(
          {checked.rig()[stay.stay].name, checked.rig()[adjuster.part].name,
           format_tenths(adjuster.set.value), format_tenths(adjuster.to_tighten),
           format_turns(adjuster.to_tighten, adjuster.travel_per_turn), format_tenths(adjuster.to_slacken),
           format_turns(adjuster.to_slacken, adjuster.travel_per_turn),
           adjuster.travel_per_turn ? format_millimetres(*adjuster.travel_per_turn, 2) : "",
           optional_tenths(adjuster.engaged), optional_tenths(adjuster.least_engagement)});
  return table;
}

Table account_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::account_every_adjuster),
              .columns = {{"stay"},
                          {"entry"},
                          {"to tighten mm", true},
                          {"tighten turns", true},
                          {"to slacken mm", true},
                          {"slacken turns", true},
                          {"how"}},
              .notes = {say(TablesPhrase::creep_amount_that_date_counts),
                        say(TablesPhrase::what_has_stretched_is_not),
                        say(TablesPhrase::incomplete_entry_is_not_known)}};
  const Rig& rig = checked.rig();
  for (const DerivedStay& stay : checked.derived().stays) {
    const Account& account = stay.account;
    if (account.entries.empty())
      continue;
    const std::string& name = checked.rig()[stay.stay].name;
    table.rows.push_back({name, say(TablesPhrase::as_set), format_tenths(account.to_tighten),
                          account_turns(stay, account.to_tighten), format_tenths(account.to_slacken),
                          account_turns(stay, account.to_slacken), ""});
    for (const AccountEntry& entry : account.entries) {
      if (!entry.not_checked.empty())
        table.rows.push_back({name, say(rig, entry.name), "", "", "", "",
                              say(TablesPhrase::not_checked, say(rig, entry.not_checked))});
      else if (entry.tightens == Length{} && entry.slackens == Length{})
        table.rows.push_back({name, say(rig, entry.name), "0.0", "", "0.0", "", say(rig, entry.how)});
      else
        table.rows.push_back({name, say(rig, entry.name), format_drawn(entry.tightens), "",
                              format_drawn(entry.slackens), "", say(rig, entry.how)});
    }
    if (const auto& first = account.at_first_fit) {
      const PrintedLeft printed = printed_at_first_fit(account);
      table.rows.push_back({name, say(TablesPhrase::left_at_first_fit), format_tenths(printed.to_tighten),
                            account_turns(stay, first->to_tighten), format_tenths(printed.to_slacken),
                            account_turns(stay, first->to_slacken),
                            first->complete ? "" : say(TablesPhrase::incomplete)});
    }
    for (std::size_t i = 0; i < account.left.size(); ++i) {
      const AccountLeft& left = account.left[i];
      const PrintedLeft printed = printed_left(account, i);
      table.rows.push_back({name, say(TablesPhrase::left_after, say(rig, left.after)),
                            format_tenths(printed.to_tighten), account_turns(stay, left.to_tighten),
                            format_tenths(printed.to_slacken), account_turns(stay, left.to_slacken),
                            left.complete ? "" : say(TablesPhrase::incomplete)});
    }
  }
  return table;
}

std::string counts_words(const Rig& rig, const PartCounts& parts, std::string_view between) {
  return joined(parts, between, [&](const auto& part) {
    return std::to_string(part.second) + " x " + rig[part.first].name;
  });
}

std::vector<std::string> changed_joint_words(const Rig& rig, const ChangedStack& stack) {
  std::vector<std::string> words;
  for (const NewJoint& joint : stack.joints) {
    const std::string name = say(rig, joint.name);
    const std::string found = say(rig, joint.words);
    const std::string unknown = led_by(say(TablesPhrase::not_checked_colon), say(rig, joint.not_checked));
    if (joint.without_pin)
      words.push_back(say(TablesPhrase::has_no_pin, name));
    else if (joint.result == JointResult::finding)
      words.push_back(say(TablesPhrase::does_not_fit, name, led_by(": ", found)));
    else if (joint.result == JointResult::not_checked)
      words.push_back(name + " " + unknown);
    else
      words.push_back(say(TablesPhrase::fits, name, led_by(": ", found), led_by("; ", unknown)));
  }
  for (const WhichEnd end : stack.stiff)
    words.push_back(say(TablesPhrase::nothing_swings_both_ways, word_of(end)));
  return words;
}

std::string changed_stack_words(const Rig& rig, const ChangedStack& stack) {
  std::string words = counts_words(rig, stack.out, say(TablesPhrase::and_word));
  if (!words.empty())
    words += say(TablesPhrase::out);
  add_words(words, ", ", counts_words(rig, stack.in, say(TablesPhrase::and_word)));
  if (!stack.in.empty())
    words += say(TablesPhrase::more);
  return words.empty() ? say(TablesPhrase::by_adjuster_alone) : words;
}

Table play_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::play_what_taking_parts_out),
              .columns = {{"stay"},
                          {"stack"},
                          {"to tighten mm", true},
                          {"to slacken mm", true},
                          {"in all mm", true},
                          {"joints"}},
              .notes = {say(TablesPhrase::from_how_stay_is_set)}};
  const Rig& rig = checked.rig();
  for (const DerivedStay& stay : checked.derived().stays) {
    if (stay.play.rows.empty())
      continue;
    const std::string& name = rig[stay.stay].name;
    for (const PlayRow& row : stay.play.rows)
      table.rows.push_back({name, changed_stack_words(rig, row.stack), format_tenths(row.to_tighten),
                            format_tenths(row.to_slacken), format_tenths(row.to_tighten + row.to_slacken),
                            joined(changed_joint_words(rig, row.stack), "; ")});
    table.rows.push_back(
        {name, say(TablesPhrase::all_of_them), "", "", format_tenths(stay.play.in_all), ""});
  }
  return table;
}

Table fits_table(const CheckedRig& checked) {
  Table table{
      .title = say(TablesPhrase::lines_in_hand_which_parts),
      .columns = {{"stay"},
                  {"line mm", true},
                  {"to fill mm", true},
                  {"add"},
                  {"adjuster"},
                  {"set mm", true},
                  {"open", true, "%"},
                  {"note"},
                  {"take out"}},
      .notes = {say(TablesPhrase::to_fill_by_added_parts), say(TablesPhrase::what_stacks_use_is_not)}};
  const Rig& rig = checked.rig();
  for (const DerivedStay& stay : checked.derived().stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    for (const Fit& fit : stay.fits) {
      const std::string line = format_tenths(fit.line);
      if (!fit.not_checked.empty()) {
        table.rows.push_back({name, line, "", "", "", "", "",
                              say(TablesPhrase::not_checked, say(rig, fit.not_checked)), ""});
        continue;
      }
      const std::string gap = format_tenths(fit.gap);
      for (const FitWay& way : fit.ways) {
        const std::string parts = counts_words(rig, way.parts, ", ");
        table.rows.push_back({name, line, gap, parts.empty() ? say(TablesPhrase::nothing) : parts,
                              checked.rig()[fit.adjuster].name, format_tenths(way.adjuster),
                              format_fixed(way.open * 100.0, 0) + " %",
                              joined(changed_joint_words(rig, way.stack), "; "),
                              counts_words(rig, way.out, ", ")});
      }
      if (fit.ways.empty())
        table.rows.push_back({name, line, gap, "", checked.rig()[fit.adjuster].name, "", "",
                              say(TablesPhrase::none_fits_nearest_is,
                                  format_tenths(fit.short_by > Length{} ? fit.short_by : -fit.short_by),
                                  (fit.short_by > Length{} ? say(TablesPhrase::mm_too_short)
                                                           : say(TablesPhrase::mm_too_long))),
                              ""});
    }
  }
  return table;
}

Table temperature_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::temperature_what_each_stay_gains),
              .columns = {{"stay"},
                          {"degC", true},
                          {"line mm", true},
                          {"path mm", true},
                          {"slack mm", true},
                          {"of the take-up", true, "%"},
                          {"note"}},
              .notes = {say(TablesPhrase::slack_above_nothing_stay_hangs),
                        say(TablesPhrase::take_up_slack_against_what),
                        say(TablesPhrase::spars_grow_along_their_axis)}};
  for (const DerivedStay& stay : checked.derived().stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    for (const ThermalRow& row : stay.thermal.rows)
      table.rows.push_back({name, format_fixed(row.kelvin - 273.15, 0), format_signed(row.line),
                            format_signed(row.path), format_signed(row.slack()),
                            share_of_take_up(stay.account, row.slack()), ""});
    for (const std::string& why : say_each(checked.rig(), stay.thermal.not_checked))
      table.rows.push_back({name, "", "", "", "", "", say(TablesPhrase::not_checked, why)});
  }
  return table;
}

Table tension_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::tension_as_read_and_sag),
              .columns = {{"stay"},
                          {"by"},
                          {"kN", true},
                          {"±", true, "kN"},
                          {"of break", true, "%"},
                          {"how"},
                          {"who and when"}},
              .notes = {say(TablesPhrase::swing_or_pulse_reads_high)}};
  for (const DerivedStay& stay : checked.derived().stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    for (const TensionEstimate& estimate : stay.tensions)
      table.rows.push_back(
          {name, std::string(name_of(estimate.method)),
           estimate.tension ? format_fixed(estimate.tension->kilonewtons(), 2)
                            : say(TablesPhrase::not_checked_word),
           estimate.tolerance ? format_fixed(estimate.tolerance->kilonewtons(), 2) : "",
           estimate.share_of_break ? format_fixed(*estimate.share_of_break * 100.0, 1) + " %" : "",
           say(checked.rig(), estimate.tension ? estimate.how : estimate.not_checked),
           who_and_when(estimate)});
    if (stay.sag)
      table.rows.push_back(
          {name, "sag", format_fixed(stay.sag->tension.kilonewtons(), 2), "", "",
           say(TablesPhrase::mm_deep_over_mm_mm, format_fixed(stay.sag->depth.millimetres(), 2),
               format_tenths(stay.sag->span), format_fixed(stay.sag->extra_length.millimetres(), 2)),
           ""});
  }
  return table;
}

} // namespace sheerpole
