#pragma once

#include "kinds/property_row.hpp"

#include <string>
#include <string_view>

namespace sheerpole {

/// All words of the language with what they mean, as a JSON document for editors: keywords, kinds with what
/// they state, settings in a stack, ends, units and threads. The form is described in
/// docs/language/completion.md.
std::string completion_json();

/// The sort of value by one word, for programs: "quantity", "choice-list".
std::string_view type_word(ValueType type);

/// What the value of a property may be, in words: "a length or a measure in rope diameters", "one of port,
/// starboard".
std::string value_words(const PropertyRow& row);

/// Where the value must lie, in the unit of the example: "0.3 m to 60 m", "at least 1 kg". Empty when
/// anything goes.
std::string range_words(const PropertyRow& row);

} // namespace sheerpole
