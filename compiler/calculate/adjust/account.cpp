#include "calculate/adjust/account.hpp"

#include "calculate/behaviour/creep.hpp"
#include "calculate/behaviour/thermal_table.hpp"
#include "calculate/facts.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "units/si_factors.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// "30 days", "1 year", "5 years"; as written where the file says it.
std::string time_words(const Sourced<Quantity>& time) {
  if (!time.provenance.written.empty() && time.provenance.written.find(',') == std::string::npos)
    return time.provenance.written;
  if (time.value.si < 0.95 * year)
    return format_number(time.value.si / day) + " days";
  const double years = time.value.si / year;
  return format_number(years) + (years == 1.0 ? " year" : " years");
}

struct Plan {
  std::vector<Sourced<Quantity>> after;
  double coldest = 263.15;
  double warmest = 313.15;
};

Plan plan_of(const Rig& rig) {
  Plan plan;
  if (const Record* stated = find_record(rig, "take-up", "take-up")) {
    if (const Particular* after = find_fact(stated->facts, "after"))
      plan.after = after->values;
    if (const auto coldest = fact_number(stated->facts, "coldest"))
      plan.coldest = coldest->value;
    if (const auto warmest = fact_number(stated->facts, "warmest"))
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

AccountEntry not_checked(std::string name, std::string why) {
  AccountEntry entry;
  entry.name = std::move(name);
  entry.not_checked = std::move(why);
  return entry;
}

/// First lasting stretch of the lines, where the adjuster is to take it up.
AccountEntry bedding(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces) {
  AccountEntry entry;
  entry.name = "bedding-in";
  if (fact_text(stay.particulars, "bedding-from") == "cut") {
    entry.how = "cut off already";
    return entry;
  }
  for (const Piece& piece : pieces) {
    const LineMaterial& material = rig[piece.material];
    const auto share = fact_number(material.particulars, "bedding");
    if (!share)
      return not_checked("bedding-in", "bedding of " + material.name + " is not stated");
    if (piece.body.unknown)
      return not_checked("bedding-in", "the length is unknown");
    entry.tightens += piece.body.known() * share->value;
    entry.how += (entry.how.empty() ? "" : ", ") + format_number(share->value * 100.0) + " % of " +
                 length_text(piece.body.known());
  }
  return entry;
}

AccountEntry creep_until(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces,
                         const Sourced<Quantity>& time) {
  AccountEntry entry;
  entry.name = "creep in " + time_words(time);
  for (const Piece& piece : pieces) {
    CreepAmount amount = creep(rig, stay, piece, time.value.si);
    if (!amount.amount)
      return not_checked(entry.name, amount.not_checked);
    entry.tightens += *amount.amount;
    entry.how += (entry.how.empty() ? "" : "; ") + amount.how;
  }
  return entry;
}

AccountEntry temperature(const ThermalTable& table, std::size_t row, std::string name) {
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
  entry.how = "line " + length_text(table.rows[row].line) + ", path " + length_text(table.rows[row].path);
  return entry;
}

AccountEntry doubt(bool has_pieces, const std::optional<Uncertainty>& uncertainty) {
  if (!has_pieces || !uncertainty)
    return not_checked("uncertainty of the length", "no bound is stated");
  AccountEntry entry;
  entry.name = "uncertainty of the length";
  entry.tightens = uncertainty->expanded;
  entry.slackens = uncertainty->expanded;
  entry.how = "95 % range, by the law of propagation";
  return entry;
}

} // namespace

Account account(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces,
                const std::vector<TakeUp>& adjusters, const std::optional<Uncertainty>& uncertainty) {
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
  result.entries.push_back(temperature(extremes, 0, "coldest day, " + temperature_text(plan.coldest)));
  result.entries.push_back(temperature(extremes, 1, "warmest day, " + temperature_text(plan.warmest)));
  result.entries.push_back(doubt(!pieces.empty(), uncertainty));

  Length each_tightening; // what counts by itself
  Length each_slackening;
  Length worst_tightening;
  Length worst_slackening;
  for (const AccountEntry& entry : result.entries) {
    if (entry.dated)
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
      if (!entry.dated && !entry.not_checked.empty())
        left.complete = false;
    result.left.push_back(std::move(left));
  }
  return result;
}

} // namespace sheerpole
