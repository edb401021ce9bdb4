#include "backend/boat_title.hpp"
#include "plugins/change-sheet/change_sheet.hpp"

namespace sheerpole {

namespace {

constexpr std::size_t name_width = 26;
constexpr std::size_t amount_width = 14;

void print_stay(const StayWords& words, TextPage& page) {
  page.rule('-');
  page.ends(words.name + (words.title.empty() ? "" : "   " + words.title),
            words.side.empty() ? words.kind : words.side);
  for (const std::string& why : words.why)
    page.wrapped("  because  ", why);
  page.line("  " + padded("mm", name_width) + padded_left("was", amount_width) +
            padded_left("is", amount_width) + padded_left("change", amount_width));
  for (const LengthRow& row : words.lengths)
    page.line("  " + padded(row.name, name_width) + padded_left(row.was, amount_width) +
              padded_left(row.is, amount_width) + padded_left(row.change, amount_width));
  for (const std::string& line : words.lines)
    page.wrapped("  line     ", line);
}

void print_list(std::string_view heading, const std::vector<std::string>& lines, TextPage& page) {
  if (lines.empty())
    return;
  page.rule('-');
  page.line(heading);
  for (const std::string& line : lines)
    page.wrapped("  ", line);
}

std::vector<std::string> messages(const std::vector<const Diagnostic*>& findings) {
  std::vector<std::string> lines;
  for (const Diagnostic* finding : findings)
    lines.push_back(finding->message + " (" + finding->slug + ")");
  return lines;
}

} // namespace

std::string change_text(const BackendRequest& request) {
  const CheckedRig& was = *request.previous;
  const CheckedRig& is = request.checked;
  const RigChange change = compare_rigs(was.rig(), was.derived(), is.rig(), is.derived());
  TextPage page;
  page.ends("CHANGE SHEET   " + boat_title(is), is.draft_reasons().empty() ? "" : "DRAFT");
  page.wrapped("from  ", request.previous_name);
  page.wrapped("to    ", request.name);
  page.rule('=');
  page.wrapped("", "Stays that are not named here stay as they are. It is taken that the old pieces were "
                   "made as the old file says. One stay at a time, and hold the mast by something else "
                   "meanwhile.");
  const std::vector<StayWords> stays = stay_words(change);
  if (stays.empty())
    page.line("No stay has to be made or set otherwise.");
  for (const StayWords& words : stays)
    print_stay(words, page);
  std::vector<std::string> unmoved;
  for (const ChangedInput& input : change.without_move)
    unmoved.push_back(input_words(input));
  print_list("Stated otherwise, and moves no length", unmoved, page);
  print_list("Parts", parts_words(change), page);
  print_list("Line to order", order_words(change), page);
  const FindingsChange findings = findings_change(was, is);
  print_list("Findings that are new", messages(findings.appeared), page);
  print_list("Findings that are gone", messages(findings.gone), page);
  return page.text();
}

} // namespace sheerpole
