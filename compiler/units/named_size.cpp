#include "units/named_size.hpp"

#include "units/parse_quantity.hpp"
#include "units/text_cursor.hpp"

#include <array>
#include <cmath>
#include <optional>
#include <variant>

namespace sheerpole {

namespace {

struct Ending {
  std::string_view text;
  NamedSize::System system;
};

constexpr std::array endings{
    Ending{"mm", NamedSize::System::metric},         Ending{"in", NamedSize::System::inch},
    Ending{"\"", NamedSize::System::inch},           Ending{"\u2033", NamedSize::System::inch},
    Ending{"\u201D", NamedSize::System::inch},       Ending{"\u201C", NamedSize::System::inch},
    Ending{"''", NamedSize::System::inch},           Ending{"\u2032\u2032", NamedSize::System::inch},
    Ending{"\u2019\u2019", NamedSize::System::inch},
};

std::optional<NamedSize> read(std::string_view text) {
  for (const Ending& ending : endings) {
    if (!text.ends_with(ending.text))
      continue;
    const auto scanned = scan_plain_number(trim_blanks(text.substr(0, text.size() - ending.text.size())));
    const double* number = std::get_if<double>(&scanned);
    if (!number || *number <= 0.0)
      return std::nullopt;
    const bool metric = ending.system == NamedSize::System::metric;
    return NamedSize{std::string(text), ending.system,
                     metric ? Length::millimetres(*number) : Length::inches(*number)};
  }
  return std::nullopt;
}

/// A name that would be read and was possibly meant; empty when there is none.
std::string suggestion_for(std::string_view text) {
  const auto parsed = parse_quantity(text);
  if (!parsed.ok())
    for (const std::string& spelling : parsed.error().suggestions)
      if (read(spelling))
        return spelling;
  // A whole number without unit is millimetres: inch sizes are fractions, apart from 1 in and 2 in.
  const std::string in_millimetres = std::string(text) + " mm";
  return read(in_millimetres) ? in_millimetres : std::string();
}

} // namespace

Result<NamedSize, std::string> parse_named_size(std::string_view text) {
  text = trim_blanks(text);
  if (auto size = read(text))
    return *std::move(size);
  return suggestion_for(text);
}

bool same_size(const NamedSize& a, const NamedSize& b) {
  constexpr double micrometre = 1e-6;
  return a.system == b.system && std::abs((a.diameter - b.diameter).metres()) <= micrometre;
}

} // namespace sheerpole
