#pragma once

#include <span>
#include <string_view>

namespace sheerpole {

/// A word of the trade, or one that the papers use, in plain words.
struct GlossaryRow {
  std::string_view word;
  std::string_view also;    ///< other words for the same, with commas; may be empty
  std::string_view meaning; ///< a sentence or two
  std::string_view in_file; ///< the kind, property or way in which a rig file says it; may be empty
};

/// In the order of the alphabet.
std::span<const GlossaryRow> glossary();

/// The row of a word, by itself or as one of its others, in capitals or not; null when there is none.
const GlossaryRow* find_glossary_row(std::string_view word);

/// The kind that is meant by a word of the trade that is none: `turnbuckle` for "bottlescrew". Empty when
/// there is none.
std::string_view kind_for_trade_word(std::string_view word);

} // namespace sheerpole
