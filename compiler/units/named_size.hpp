#pragma once

#include "base/result.hpp"
#include "units/length.hpp"

#include <string>
#include <string_view>

namespace sheerpole {

/// A size that is a name as well as a number: "5/16 in" and "8 mm" differ by 0.06 mm and are not the same
/// part.
struct NamedSize {
  enum class System { metric, inch };
  std::string name; ///< as written
  System system = System::metric;
  Length diameter;
};

/// Reads "8 mm", "5/16 in", `5/16"`. The error is a suggestion, which may be empty.
Result<NamedSize, std::string> parse_named_size(std::string_view text);

/// Same system and same number (to 1 micrometre).
bool same_size(const NamedSize& a, const NamedSize& b);

} // namespace sheerpole
