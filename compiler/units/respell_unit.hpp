#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// The unit that was probably meant by a word that is none: another habit of writing it (inches, lbs, °C),
/// another case (MM), or a slip of one letter (mmm).
std::optional<std::string> respell_unit(std::string_view word);

} // namespace sheerpole
