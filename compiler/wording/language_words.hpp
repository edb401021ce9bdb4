#pragma once

#include "kinds/property_row.hpp"

#include <span>
#include <string>
#include <string_view>

namespace sheerpole {

/// A word of the language that is no name, with what it does.
struct Keyword {
  std::string_view word;
  std::string_view help;
};

/// In the order in which a file has them: of statements, of heads, of values, of sources.
std::span<const Keyword> keywords();

/// The sort of value by one word, for programs: "quantity", "choice-list".
std::string_view type_word(ValueType type);

/// What the value of a property may be, in words: "a length or a measure in rope diameters", "one of port,
/// starboard".
std::string value_words(const PropertyRow& row);

/// Where the value must lie, in the unit of the example: "0.3 m to 60 m", "at least 1 kg". Empty when
/// anything goes.
std::string range_words(const PropertyRow& row);

/// What a property takes, where it must lie and whether it must be stated, in one line: "a length, 0.3 m to
/// 60 m; must be stated".
std::string property_detail(const PropertyRow& row);

} // namespace sheerpole
