#pragma once

#include "backend/tenths.hpp"
#include "calculate/derived.hpp"

#include <cstddef>

namespace sheerpole {

/// What is left of an account at one date, as the sum of the rows that documents print of it.
struct PrintedLeft {
  Tenths to_tighten;
  Tenths to_slacken;
};

/// `date` is a place in Account::left. Of the entries that are not dated the worse temperature counts.
PrintedLeft printed_left(const Account& account, std::size_t date);

} // namespace sheerpole
