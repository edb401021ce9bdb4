#pragma once

#include "units/parse_quantity.hpp"
#include "units/text_cursor.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A number as found at a cursor.
struct ScannedNumber {
  /// How it was written. Only `whole` may be followed by a smaller unit.
  enum class Form { whole, decimal, fraction };
  double value = 0.0; ///< never negative; known also for 7 9/8, which is refused
  Form form = Form::whole;
};

/// The largest number that is read; anything beyond is a slip of the keyboard.
inline constexpr double largest_number = 1e12;

/// Reads a number without sign: `12`, `0.5`, `11_642`, `3/8`, `7 3/8`, `7-3/8`, `24e-6`, and with fraction
/// characters. The cursor stops behind it; blanks behind it stay. Returns why not, or nothing when the
/// number is good.
std::optional<QuantityError::Kind> scan_number(TextCursor& cursor, ScannedNumber& number);

/// Readings of a text in which digits are grouped or the decimals are set off by a comma: `11,815 m`
/// is 11.815 m or 11_815 m, `1.234,5 m` is 1_234.5 m, `11 642 mm` and `11'642 mm` are 11_642 mm. Likeliest
/// first; empty when the groups make no number. The rest of the text is kept.
std::vector<std::string> readings_of_digit_groups(std::string_view text);

enum class Expected { quantity, number };

/// Turns a refusal of `text` into an error with the readings that were possibly meant. Every suggestion is
/// tried before it is given: it is accepted as written. Slow next to reading; called for refused texts
/// only.
QuantityError explain_refusal(std::string_view text, Refusal refusal, Expected expected);

/// Readings of a text whose underscores do not stand between groups of three: `11_64 mm` is 1164 mm or
/// 11.64 mm.
std::vector<std::string> readings_of_odd_groups(std::string_view text);

/// The readings in a row: "11.815 m, 11_815 m or 11, 815 m".
std::string alternatives(const std::vector<std::string>& readings);

} // namespace sheerpole
