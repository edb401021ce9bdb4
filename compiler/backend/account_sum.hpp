#pragma once

#include "backend/tenths.hpp"
#include "calculate/derived.hpp"

#include <cstddef>
#include <string>

namespace sheerpole {

/// What is left of an account at one date, as the sum of the rows that documents print of it.
struct PrintedLeft {
  Tenths to_tighten;
  Tenths to_slacken;
};

/// `date` is a place in Account::left. Of the entries that are not dated the worse temperature counts.
PrintedLeft printed_left(const Account& account, std::size_t date);

/// Turns of the one screw of a stay for this travel; empty when there is none or there are several.
std::string account_turns(const DerivedStay& stay, Length travel);

/// What an entry takes away, with its sign; empty for nothing, so that the column shows which way it draws.
std::string format_drawn(Length length);

} // namespace sheerpole
