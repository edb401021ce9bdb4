#include "backend/account_sum.hpp"

#include "backend/turns.hpp"

#include <algorithm>

namespace sheerpole {

PrintedLeft printed_left(const Account& account, std::size_t date) {
  PrintedLeft left{Tenths::of(account.to_tighten), Tenths::of(account.to_slacken)};
  Tenths tightest;
  Tenths slackest;
  std::size_t dated = 0;
  for (const AccountEntry& entry : account.entries) {
    const Tenths tightens = Tenths::of(entry.tightens);
    const Tenths slackens = Tenths::of(entry.slackens);
    if (entry.of_temperature) {
      tightest = std::max(tightest, tightens);
      slackest = std::max(slackest, slackens);
    } else if (!entry.dated || dated++ == date) {
      left.to_tighten = left.to_tighten - tightens;
      left.to_slacken = left.to_slacken - slackens;
    }
  }
  left.to_tighten = left.to_tighten - tightest;
  left.to_slacken = left.to_slacken - slackest;
  return left;
}

std::string account_turns(const DerivedStay& stay, Length travel) {
  return stay.adjusters.size() == 1 ? format_turns(travel, stay.adjusters.front().travel_per_turn) : "";
}

std::string format_drawn(Length length) {
  if (length == Length{})
    return {};
  const Tenths rounded = Tenths::of(-length);
  return rounded == Tenths{} ? "0.0" : format_signed(rounded);
}

} // namespace sheerpole
