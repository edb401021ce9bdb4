#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "units/format_length.hpp"

namespace sheerpole {

namespace {

/// Slack as a share of what the adjusters can take up, tightening as a share of what they can give out.
std::string share_of_take_up(const Account& account, Length slack) {
  const bool slacker = slack > Length{};
  const Length room = slacker ? account.to_tighten : account.to_slacken;
  if (room <= Length{})
    return {};
  return format_fixed((slacker ? slack : -slack) / room * 100.0, 1) + " %";
}

} // namespace

Table temperature_table(const CheckedRig& checked) {
  Table table{
      .title = "Temperature: what each stay gains or loses, from how it is set up",
      .columns = {{"stay"},
                  {"degC", true},
                  {"line mm", true},
                  {"path mm", true},
                  {"slack mm", true},
                  {"of the take-up", true},
                  {"note"}},
      .rows = {},
      .notes = {
          "Slack above nothing: the stay hangs slacker. Below nothing: it is tighter.",
          "Of the take-up: slack against what can be tightened, tightening against what can be slackened.",
          "Spars grow along their axis from the heel; hull and hardware are left as they are."}};
  for (const DerivedStay& stay : checked.derived().stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    for (const ThermalRow& row : stay.thermal.rows)
      table.rows.push_back({name, format_fixed(row.kelvin - 273.15, 0), format_signed(Tenths::of(row.line)),
                            format_signed(Tenths::of(row.path)), format_signed(Tenths::of(row.slack())),
                            share_of_take_up(stay.account, row.slack()), ""});
    for (const std::string& why : stay.thermal.not_checked)
      table.rows.push_back({name, "", "", "", "", "", "not checked: " + why});
  }
  return table;
}

} // namespace sheerpole
