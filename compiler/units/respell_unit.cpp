#include "units/respell_unit.hpp"

#include "base/edit_distance.hpp"
#include "units/unit.hpp"

#include <array>
#include <vector>

namespace sheerpole {

namespace {

struct Habit {
  std::string_view written;
  std::string_view unit;
};

// Common practice, no source. A ton is not here: short, long or metric, only the writer knows.
constexpr std::array habits{
    Habit{"inch", "in"},        Habit{"inches", "in"},     Habit{"foot", "ft"},
    Habit{"feet", "ft"},        Habit{"metre", "m"},       Habit{"metres", "m"},
    Habit{"meter", "m"},        Habit{"meters", "m"},      Habit{"millimetre", "mm"},
    Habit{"millimetres", "mm"}, Habit{"millimeter", "mm"}, Habit{"millimeters", "mm"},
    Habit{"mm²", "mm2"},        Habit{"mm^2", "mm2"},      Habit{"lbs", "lb"},
    Habit{"pound", "lb"},       Habit{"pounds", "lb"},     Habit{"kgs", "kg"},
    Habit{"tonne", "t"},        Habit{"tonnes", "t"},      Habit{"kp", "kgf"},
    Habit{"ft-lb", "lbf-ft"},   Habit{"ft-lbf", "lbf-ft"}, Habit{"lb-ft", "lbf-ft"},
    Habit{"ftlb", "lbf-ft"},    Habit{"N-m", "Nm"},        Habit{"N/mm2", "MPa"},
    Habit{"N/mm²", "MPa"},      Habit{"N/mm^2", "MPa"},    Habit{"°", "deg"},
    Habit{"º", "deg"},          Habit{"degree", "deg"},    Habit{"degrees", "deg"},
    Habit{"°C", "degC"},        Habit{"ºC", "degC"},       Habit{"C", "degC"},
    Habit{"°F", "degF"},        Habit{"ºF", "degF"},       Habit{"F", "degF"},
    Habit{"percent", "%"},      Habit{"pct", "%"},         Habit{"rev", "turns"},
    Habit{"revs", "turns"},     Habit{"dia", "d"},         Habit{"diameters", "d"},
    Habit{"sec", "s"},          Habit{"seconds", "s"},     Habit{"minutes", "min"},
    Habit{"hr", "h"},           Habit{"hrs", "h"},         Habit{"hour", "h"},
    Habit{"hours", "h"},        Habit{"yr", "year"},       Habit{"yrs", "years"},
};

/// Longer words are no slip of a unit; they are not compared letter by letter.
constexpr std::size_t longest_word = 16;

bool same_but_for_case(std::string_view a, std::string_view b) {
  if (a.size() != b.size())
    return false;
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  for (std::size_t i = 0; i < a.size(); ++i)
    if (lower(a[i]) != lower(b[i]))
      return false;
  return true;
}

} // namespace

std::optional<std::string> respell_unit(std::string_view word) {
  if (word.size() > longest_word)
    return std::nullopt;
  for (const Habit& habit : habits)
    if (habit.written == word)
      return std::string(habit.unit);
  for (const Unit& unit : all_units())
    if (same_but_for_case(unit.name, word))
      return std::string(unit.name);
  for (const Habit& habit : habits)
    if (same_but_for_case(habit.written, word))
      return std::string(habit.unit);
  std::vector<std::string> names;
  for (const Unit& unit : all_units())
    names.emplace_back(unit.name);
  return nearest_name(word, names);
}

} // namespace sheerpole
