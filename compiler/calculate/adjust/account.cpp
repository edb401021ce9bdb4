#include "calculate/adjust/account.hpp"

#include "calculate/behaviour/creep.hpp"
#include "calculate/behaviour/thermal_table.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/si_factors.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// "30 days", "1 year", "5 years"; as written where the file says it.
Remark time_words(const Sourced<Quantity>& time) {
  if (!time.provenance.written.empty() && time.provenance.written.find(',') == std::string::npos)
    return {AdjusterPhrase::as_written, {Words{time.provenance.written}}};
  if (time.value.si < 0.95 * year)
    return {AdjusterPhrase::days, {Number{time.value.si / day}}};
  const double years = time.value.si / year;
  return years == 1.0 ? Remark(AdjusterPhrase::one_year) : Remark(AdjusterPhrase::years, {Number{years}});
}

struct Plan {
  std::vector<Sourced<Quantity>> after;
  double coldest = 263.15;
  double warmest = 313.15;
};

Plan plan_of(const Rig& rig) {
  Plan plan;
  if (const Record* stated = find_record(rig, RecordKind::take_up, name_of(RecordKind::take_up))) {
    if (const Particular* after = find_fact(stated->facts, fact_names.after))
      plan.after = after->values;
    if (const auto coldest = fact_number(stated->facts, fact_names.coldest))
      plan.coldest = coldest->value;
    if (const auto warmest = fact_number(stated->facts, fact_names.warmest))
      plan.warmest = warmest->value;
  }
  if (plan.after.empty()) {
    Sourced<Quantity> one_year;
    one_year.value = {year, dimension::time};
    plan.after.push_back(std::move(one_year));
  }
  std::stable_sort(plan.after.begin(), plan.after.end(),
                   [](const auto& a, const auto& b) { return a.value.si < b.value.si; });
  return plan;
}

AccountEntry not_checked(Remark name, Remark why) {
  AccountEntry entry;
  entry.name = std::move(name);
  entry.not_checked = std::move(why);
  return entry;
}

/// First lasting stretch of the lines, where the adjuster is to take it up.
AccountEntry bedding(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces) {
  AccountEntry entry;
  entry.name = AdjusterPhrase::bedding_in;
  Remarks shares;
  if (fact_text(stay.particulars, fact_names.bedding_from) == "cut") {
    entry.how = AdjusterPhrase::cut_off_already;
    return entry;
  }
  for (const Piece& piece : pieces) {
    const LineMaterial& material = rig[piece.material];
    const auto share = fact_number(material.particulars, fact_names.bedding);
    if (!share)
      return not_checked(AdjusterPhrase::bedding_in,
                         {AdjusterPhrase::bedding_not_stated, {piece.material}});
    if (piece.body.unknown)
      return not_checked(AdjusterPhrase::bedding_in, AdjusterPhrase::length_unknown);
    entry.tightens += piece.body.known() * share->value;
    shares.all.push_back(
        {AdjusterPhrase::share_of_body, {Number{share->value * 100.0}, piece.body.known()}});
  }
  entry.how = {AdjusterPhrase::each, {std::move(shares)}};
  return entry;
}

AccountEntry creep_until(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces,
                         const Sourced<Quantity>& time) {
  AccountEntry entry;
  entry.name = {AdjusterPhrase::creep_in, {Remarks{{time_words(time)}}}};
  Remarks ways{{}, Join::semicolon};
  for (const Piece& piece : pieces) {
    CreepAmount amount = creep(rig, stay, piece, time.value.si);
    if (!amount.amount)
      return not_checked(entry.name, amount.not_checked);
    entry.tightens += *amount.amount;
    ways.all.push_back(std::move(amount.how));
  }
  entry.how = {AdjusterPhrase::each, {std::move(ways)}};
  return entry;
}

AccountEntry temperature(const ThermalTable& table, std::size_t row, Remark name) {
  if (!table.not_checked.empty())
    return not_checked(std::move(name), table.not_checked.front());
  AccountEntry entry;
  entry.name = std::move(name);
  entry.of_temperature = true;
  const Length slack = table.rows[row].slack();
  if (slack > Length{})
    entry.tightens = slack;
  else
    entry.slackens = -slack;
  entry.how = {AdjusterPhrase::line_and_path, {table.rows[row].line, table.rows[row].path}};
  return entry;
}

AccountEntry doubt(bool has_pieces, const std::optional<Uncertainty>& uncertainty) {
  if (!has_pieces || !uncertainty)
    return not_checked(AdjusterPhrase::uncertainty_of_length, AdjusterPhrase::no_bound);
  AccountEntry entry;
  entry.name = AdjusterPhrase::uncertainty_of_length;
  entry.tightens = uncertainty->expanded;
  entry.slackens = uncertainty->expanded;
  entry.how = AdjusterPhrase::by_propagation;
  return entry;
}

/// What the splices take until they have set.
AccountEntry until_set(const FirstFit& first) {
  if (!first.short_by) {
    AccountEntry entry = not_checked(AdjusterPhrase::at_first_fit, AdjusterPhrase::until_set_not_known);
    entry.until_set = true;
    return entry;
  }
  AccountEntry entry;
  entry.name = AdjusterPhrase::at_first_fit;
  entry.slackens = *first.short_by;
  entry.until_set = true;
  entry.how = AdjusterPhrase::until_set;
  return entry;
}

} // namespace

Account account(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces,
                const std::vector<TakeUp>& adjusters, const std::optional<Uncertainty>& uncertainty,
                const std::optional<FirstFit>& first, const std::optional<CameOut>& came_out) {
  const Plan plan = plan_of(rig);
  Account result;
  for (const TakeUp& adjuster : adjusters) {
    result.to_tighten += adjuster.to_tighten * stay.stack[adjuster.item].count;
    result.to_slacken += adjuster.to_slacken * stay.stack[adjuster.item].count;
  }
  if (adjusters.empty())
    return result;
  const ThermalTable extremes = thermal_table(rig, stay, pieces, {plan.coldest, plan.warmest});
  result.entries.push_back(bedding(rig, stay, pieces));
  for (const Sourced<Quantity>& time : plan.after) {
    result.entries.push_back(creep_until(rig, stay, pieces, time));
    result.entries.back().dated = true;
  }
  result.entries.push_back(
      temperature(extremes, 0, {AdjusterPhrase::coldest_day, {Temperature{plan.coldest}}}));
  result.entries.push_back(
      temperature(extremes, 1, {AdjusterPhrase::warmest_day, {Temperature{plan.warmest}}}));
  result.entries.push_back(doubt(!pieces.empty(), uncertainty));
  Length by_record;
  if (came_out) {
    by_record = came_out->longer;
    result.entries.push_back(
        {.name = {AdjusterPhrase::on_record, {came_out->when}},
         .tightens = by_record,
         .slackens = -by_record,
         .of_record = true,
         .how = {by_record < Length{} ? AdjusterPhrase::came_out_shorter : AdjusterPhrase::came_out_longer,
                 {magnitude(by_record)}}});
  }
  if (first)
    result.entries.push_back(until_set(*first));

  Length each_tightening; // what counts by itself
  Length each_slackening;
  Length worst_tightening;
  Length worst_slackening;
  for (const AccountEntry& entry : result.entries) {
    if (entry.dated || entry.until_set)
      continue;
    if (entry.of_temperature) {
      worst_tightening = std::max(worst_tightening, entry.tightens);
      worst_slackening = std::max(worst_slackening, entry.slackens);
    } else {
      each_tightening += entry.tightens;
      each_slackening += entry.slackens;
    }
  }
  std::size_t at = 1;
  for (const Sourced<Quantity>& time : plan.after) {
    const AccountEntry& creeping = result.entries[at++];
    AccountLeft left;
    left.after = time_words(time);
    left.to_tighten = result.to_tighten - each_tightening - creeping.tightens - worst_tightening;
    // What has stretched is there to give out as well, but may not have come yet: it is not counted.
    left.to_slacken = result.to_slacken - each_slackening - worst_slackening;
    left.complete = creeping.not_checked.empty();
    for (const AccountEntry& entry : result.entries)
      if (!entry.dated && !entry.until_set && !entry.not_checked.empty())
        left.complete = false;
    result.left.push_back(std::move(left));
  }
  if (first) {
    // Nothing has bedded in or crept yet; the doubt of the length and the warmest day count already.
    AccountLeft left;
    left.after = AdjusterPhrase::at_first_fit;
    left.to_tighten = result.to_tighten - by_record;
    left.to_slacken =
        result.to_slacken - each_slackening - worst_slackening - result.entries.back().slackens;
    left.complete =
        std::none_of(result.entries.begin(), result.entries.end(),
                     [](const AccountEntry& entry) { return !entry.dated && !entry.not_checked.empty(); });
    result.at_first_fit = std::move(left);
  }
  return result;
}

} // namespace sheerpole
