#pragma once

#include <optional>
#include <string>
#include <vector>

namespace sheerpole::test {

/// What GNU units is asked: so many of `want` are in `have`.
struct Conversion {
  std::string have;
  std::string want;
};

/// Asks the program `units` all at once. Nothing when it is not installed. When the number of answers is
/// not the number of questions, one of the expressions was refused, and `transcript` has its message.
struct GnuUnitsAnswer {
  std::vector<double> values;
  std::string transcript;
};
std::optional<GnuUnitsAnswer> ask_gnu_units(const std::vector<Conversion>& conversions);

} // namespace sheerpole::test
