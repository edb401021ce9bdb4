#pragma once

#include "base/result.hpp"
#include "units/dimension.hpp"
#include "units/length.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace sheerpole {

/// Why a number or a quantity can not be read, with the readings that were possibly meant, likeliest first.
struct QuantityError {
  enum class Kind {
    empty,
    malformed,        ///< not a number at all, or something left over
    missing_unit,     ///< a number where a unit belongs: 12, 7 3/8, 38-7-3/8
    unknown_unit,     ///< 12 mmm
    decimal_comma,    ///< 11,815 m
    spaced_number,    ///< 11 642 mm
    odd_groups,       ///< 11_64 mm: a figure left out, or a point missed
    zero_denominator, ///< 3/0
    improper_mixed,   ///< 7 9/8 in, 5' 14", 38.5' 3": a part as large as the next unit, or a fraction in a
                      ///< part that is not the last
    too_large         ///< not finite, or beyond 1e12
  };
  Kind kind = Kind::malformed;
  std::string unit;                     ///< for unknown_unit: the unit as written
  std::vector<std::string> suggestions; ///< complete spellings that would be accepted
};

/// Reads a whole quantity in any accepted spelling: `12 mm`, `7-3/8 in`, `38' 7 3/8"`, `38ft 7.375in`,
/// `11_642 mm`, prime and double-prime characters, typographic quotes, non-breaking spaces. Surrounding
/// blanks are not part of it.
Result<Quantity, QuantityError> parse_quantity(std::string_view text);

/// What a length is written in; of feet and inches together it is the feet.
enum class LengthUnit : std::uint8_t { none, metric, inches, feet };

/// Of a text that parse_quantity reads. None for what is no length.
LengthUnit length_unit_of(std::string_view text);

/// Reads a number without unit: `12`, `0.5`, `11_642`, `3/8`, `7 3/8`, `7-3/8`, `24e-6`.
Result<double, QuantityError> parse_number(std::string_view text);

/// Why a text was refused, and the byte at which it was noticed; for a unit, its first byte.
struct Refusal {
  QuantityError::Kind kind = QuantityError::Kind::malformed;
  std::size_t at = 0;
};

/// Reads a text without blanks round it as a quantity. Says no more than where it stopped: texts are tried
/// as possible suggestions too, so no suggestion is looked for here.
std::variant<Quantity, Refusal> scan_quantity(std::string_view text);

/// The same for a number without unit.
std::variant<double, Refusal> scan_plain_number(std::string_view text);

/// The smallest division that a length is written in: "11_642 mm" is written to 1 mm, "11.64 m" to 10 mm,
/// "37 ft 4 1/8 in" to 1/8 in. Nothing when the text is not one length, such as a sum of two.
std::optional<Length> smallest_division(std::string_view written);

} // namespace sheerpole
