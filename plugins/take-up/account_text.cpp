#include "backend/account_sum.hpp"
#include "plugins/take-up/stay_take_up.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t name_width = 27;
constexpr std::size_t amount_width = 12;
constexpr std::size_t turns_width = 7;

/// Columns of turns only where there is a screw to turn.
struct Columns {
  bool turns = false;

  void row(const std::string& name, const std::string& tighten, const std::string& tighten_turns,
           const std::string& slacken, const std::string& slacken_turns, const std::string& how,
           TextPage& page) const {
    std::string lead = "  " + padded(name, name_width) + padded_left(tighten, amount_width);
    if (turns)
      lead += padded_left(tighten_turns, turns_width);
    lead += padded_left(slacken, amount_width);
    if (turns)
      lead += padded_left(slacken_turns, turns_width);
    page.wrapped(lead + "   ", how);
  }
};

void print_entries(const Account& account, const Columns& columns, TextPage& page) {
  std::string above;
  for (const AccountEntry& entry : account.entries) {
    const bool unknown = !entry.not_checked.empty();
    std::string words = unknown ? "not checked: " + entry.not_checked : entry.how;
    if (!words.empty() && words == above)
      words = unknown ? "not checked, as above" : "as above";
    else
      above = words;
    if (unknown)
      page.wrapped("  " + padded(entry.name, name_width) + "  ", words);
    else if (entry.tightens == Length{} && entry.slackens == Length{})
      columns.row(entry.name, "0.0", "", "0.0", "", words, page);
    else
      columns.row(entry.name, format_drawn(entry.tightens), "", format_drawn(entry.slackens), "", words,
                  page);
  }
}

std::string left_words(const PrintedLeft& left, bool complete) {
  std::string words;
  if (left.to_tighten < Tenths{})
    words = "SPENT: it can not tighten so far";
  if (left.to_slacken < Tenths{})
    words += std::string(words.empty() ? "" : "; ") + "SPENT: it can not slacken so far";
  if (!complete)
    words += std::string(words.empty() ? "" : "; ") + "INCOMPLETE";
  return words;
}

} // namespace

void print_account(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  const Account& account = stay.account;
  for (const TakeUp& adjuster : stay.adjusters)
    page.line("  " + checked.rig()[adjuster.part].name + " set to " +
              format_tenths(Tenths::of(adjuster.set.value)) + " mm");
  page.blank();
  Columns columns;
  columns.turns = !account_turns(stay, account.to_tighten).empty();
  columns.row("", "to tighten", "turns", "to slacken", "turns", "how", page);
  columns.row("as set", format_tenths(Tenths::of(account.to_tighten)),
              account_turns(stay, account.to_tighten), format_tenths(Tenths::of(account.to_slacken)),
              account_turns(stay, account.to_slacken), "", page);
  print_entries(account, columns, page);
  for (std::size_t i = 0; i < account.left.size(); ++i) {
    const PrintedLeft left = printed_left(account, i);
    columns.row("= left after " + account.left[i].after, format_tenths(left.to_tighten),
                account_turns(stay, left.to_tighten.length()), format_tenths(left.to_slacken),
                account_turns(stay, left.to_slacken.length()), left_words(left, account.left[i].complete),
                page);
  }
}

} // namespace sheerpole
