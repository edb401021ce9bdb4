#include "plugins/take-up/take_up_sheet.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/text_paper.hpp"
#include "plugins/take-up/stay_take_up.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// The rows of a table that are about one stay, without its name.
Table of_stay(Table table, const std::string& stay) {
  std::erase_if(table.rows, [&](const auto& cells) { return cells.front() != stay; });
  for (auto& cells : table.rows)
    cells.erase(cells.begin());
  table.columns.erase(table.columns.begin());
  table.title.clear();
  table.notes.clear();
  // A column in which nobody says anything is left out.
  for (std::size_t i = table.columns.size(); i-- > 0;) {
    const bool empty = std::all_of(table.rows.begin(), table.rows.end(),
                                   [&](const auto& cells) { return cells[i].empty(); });
    if (!empty)
      continue;
    table.columns.erase(table.columns.begin() + static_cast<std::ptrdiff_t>(i));
    for (auto& cells : table.rows)
      cells.erase(cells.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return table;
}

void print_table(std::string_view heading, const Table& table, TextPage& page) {
  if (table.rows.empty())
    return;
  page.blank();
  page.line(heading);
  const std::string text = render_text(table);
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t end = text.find('\n', from);
    const std::string_view line = std::string_view(text).substr(from, end - from);
    if (!line.empty())
      page.line("  " + std::string(line));
    from = end + 1;
  }
}

void print_temperature(const Table& all, const DerivedStay& stay, const std::string& name, TextPage& page) {
  if (!stay.thermal.not_checked.empty()) {
    page.blank();
    for (const std::string& why : stay.thermal.not_checked)
      page.wrapped("  temperature not checked: ", why);
    return;
  }
  print_table("Temperature: slack above nothing, tighter below", of_stay(all, name), page);
  page.wrapped("  ", "Of the take-up: slack against what can be tightened, tightening against what can be "
                     "slackened.");
}

} // namespace

BackendDescription TakeUpSheet::describe() const {
  return {.name = "take-up",
          .summary =
              "what each adjuster has, what bedding-in, creep, cold and doubt draw on it, what is left",
          .outputs = {"take-up.txt", "take-up.csv"},
          .papers = {"take-up.pdf"}};
}

OutputBundle TakeUpSheet::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  TextPage page;
  const std::string& boat = checked.rig().boat.title;
  page.ends("TAKE-UP   " + (boat.empty() ? std::string("(boat without a name)") : boat),
            checked.draft_reasons().empty() ? "" : "DRAFT");
  page.rule('=');
  page.blank();
  page.wrapped("",
               "Millimetres. Of creep the amount of that date counts, of the coldest and the warmest day "
               "the worse. What has stretched is not counted as room to slacken. What is not checked "
               "counts as nothing, so less may be left than the account says: such a row says INCOMPLETE.");
  page.wrapped("",
               "Slacken and tighten a loaded stay by small steps, one stay at a time, with the mast held "
               "by something else; keep the thread engaged and lock it again.");
  const Table temperatures = temperature_table(checked);
  for (const DerivedStay& stay : checked.derived().stays) {
    const Stay& stated = checked.rig()[stay.stay];
    page.blank();
    page.rule('=');
    page.line(stated.name + (stated.title.empty() ? "" : "   " + stated.title));
    if (stay.account.entries.empty())
      page.line("  There is nothing to set in this stay.");
    else
      print_account(checked, stay, page);
    print_temperature(temperatures, stay, stated.name, page);
    print_fits(checked, stay, page);
  }
  OutputBundle bundle;
  bundle.files = {{"take-up.txt", page.text()}, {"take-up.csv", render_csv(account_table(checked))}};
  if (request.printed)
    bundle.papers.push_back(text_paper_of_lengths(
        {.file = "take-up.pdf", .name = "Take-up", .about = boat_title(checked)}, page.text(), request));
  return bundle;
}

} // namespace sheerpole
