#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What a text of the language is about that is to be in words of the trade.
enum class TradeSubject : std::uint8_t {
  securing,    ///< what keeps a pin in its hole or a thread from turning
  locking,     ///< what keeps the tail of a splice from working out
  grade,       ///< what a line is made of
  construction ///< how a line is made
};

/// The words of the trade for a subject, one or more to each way, as they are suggested. Common practice,
/// no source.
std::span<const std::string_view> trade_words(TradeSubject of);

/// The words and numbers of a text in small letters: "12", "strand", "hmpe", "not", "heat", "set".
std::vector<std::string> words_in_text(std::string_view text);

/// What is odd in a text.
struct OddText {
  std::string part;       ///< of the text: the word that is odd, or all of it
  std::string suggestion; ///< the whole text with the nearest word of the trade; empty when none is near
};

/// Looks for words of the trade in a text. Of how something is held or locked one is enough, unless the
/// text begins with a denial; of what a line is made of and how, a word that is nearly one of the trade is
/// odd as well, since the text is read for what it means. Plurals count. Nothing when the text is in order,
/// is empty, or says of how something is held that nothing does (`none`).
std::optional<OddText> odd_text(TradeSubject of, std::string_view text);

} // namespace sheerpole
