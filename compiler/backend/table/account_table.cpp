#include "backend/account_sum.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"

namespace sheerpole {

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
                          account_turns(stay, account.to_tighten),
                          format_tenths(Tenths::of(account.to_slacken)),
                          account_turns(stay, account.to_slacken), ""});
    for (const AccountEntry& entry : account.entries) {
      if (!entry.not_checked.empty())
        table.rows.push_back({name, entry.name, "", "", "", "", "not checked: " + entry.not_checked});
      else if (entry.tightens == Length{} && entry.slackens == Length{})
        table.rows.push_back({name, entry.name, "0.0", "", "0.0", "", entry.how});
      else
        table.rows.push_back({name, entry.name, format_drawn(entry.tightens), "",
                              format_drawn(entry.slackens), "", entry.how});
    }
    for (std::size_t i = 0; i < account.left.size(); ++i) {
      const AccountLeft& left = account.left[i];
      const PrintedLeft printed = printed_left(account, i);
      table.rows.push_back({name, "left after " + left.after, format_tenths(printed.to_tighten),
                            account_turns(stay, left.to_tighten), format_tenths(printed.to_slacken),
                            account_turns(stay, left.to_slacken), left.complete ? "" : "INCOMPLETE"});
    }
  }
  return table;
}

} // namespace sheerpole
