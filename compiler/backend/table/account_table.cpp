#include "backend/account_sum.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "backend/turns.hpp"

namespace sheerpole {

namespace {

/// Turns of the one screw of a stay; empty when there is none or several.
std::string screw_turns(const DerivedStay& stay, Length travel) {
  return stay.adjusters.size() == 1 ? format_turns(travel, stay.adjusters.front().travel_per_turn) : "";
}

/// Empty for nothing, so that the column shows at a glance which way an entry draws.
std::string amount(Length length) {
  if (length == Length{})
    return {};
  const Tenths rounded = Tenths::of(-length);
  return rounded == Tenths{} ? "0.0" : format_signed(rounded);
}

} // namespace

Table account_table(const CheckedRig& checked) {
  Table table{
      .title = "The account of every adjuster",
      .columns = {{"stay"},
                  {"entry"},
                  {"to tighten mm", true},
                  {"tighten turns", true},
                  {"to slacken mm", true},
                  {"slacken turns", true},
                  {"how"}},
      .rows = {},
      .notes = {"Of creep the amount of that date counts, of the coldest and the warmest day the worse.",
                "What has stretched is not counted as room to slacken: it may not have come yet.",
                "INCOMPLETE: an entry is not known and counts as nothing, so less may be left."}};
  for (const DerivedStay& stay : checked.derived().stays) {
    const Account& account = stay.account;
    if (account.entries.empty())
      continue;
    const std::string& name = checked.rig()[stay.stay].name;
    table.rows.push_back({name, "as set", format_tenths(Tenths::of(account.to_tighten)),
                          screw_turns(stay, account.to_tighten),
                          format_tenths(Tenths::of(account.to_slacken)),
                          screw_turns(stay, account.to_slacken), ""});
    for (const AccountEntry& entry : account.entries) {
      if (!entry.not_checked.empty())
        table.rows.push_back({name, entry.name, "", "", "", "", "not checked: " + entry.not_checked});
      else if (entry.tightens == Length{} && entry.slackens == Length{})
        table.rows.push_back({name, entry.name, "0.0", "", "0.0", "", entry.how});
      else
        table.rows.push_back(
            {name, entry.name, amount(entry.tightens), "", amount(entry.slackens), "", entry.how});
    }
    for (std::size_t i = 0; i < account.left.size(); ++i) {
      const AccountLeft& left = account.left[i];
      const PrintedLeft printed = printed_left(account, i);
      table.rows.push_back({name, "left after " + left.after, format_tenths(printed.to_tighten),
                            screw_turns(stay, left.to_tighten), format_tenths(printed.to_slacken),
                            screw_turns(stay, left.to_slacken), left.complete ? "" : "INCOMPLETE"});
    }
  }
  return table;
}

} // namespace sheerpole
