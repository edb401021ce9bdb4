#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// What the plan of stock has to say of a piece; in English in wording/stock_words.cpp.
enum class StockPhrase : std::uint16_t {
  links,
  not_complete,
  missing,
  no_length_yet,
  no_estimate,
  nothing_left,
  too_long,
  plan_full,
  in_hand
};

constexpr PhraseSubject subject_of(StockPhrase) {
  return PhraseSubject::stock;
}

} // namespace sheerpole
