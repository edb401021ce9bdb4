#include "units/unit.hpp"

#include "base/edit_distance.hpp"
#include "units/si_factors.hpp"

#include <array>
#include <vector>

namespace sheerpole {

namespace {

// Exact by definition: yard and pound agreement of 1959, standard gravity of the 3rd CGPM (1901).
constexpr double inch = 0.0254;
constexpr double foot = 0.3048;
constexpr double pound = 0.45359237;
constexpr double standard_gravity = 9.80665;
constexpr double pound_force = 4.4482216152605; // pound * standard_gravity, a terminating decimal

constexpr std::string_view si = "SI, BIPM SI brochure";
constexpr std::string_view with_si = "accepted for use with the SI, BIPM SI brochure table 8";
constexpr std::string_view yard_and_pound = "exact, international yard and pound agreement of 1959";
constexpr std::string_view with_gravity = "exact, standard gravity 9.80665 m/s2 (3rd CGPM, 1901)";
constexpr std::string_view pound_and_gravity =
    "exact, pound of 1959 times standard gravity 9.80665 m/s2 (3rd CGPM, 1901)";
constexpr std::string_view fid_convention =
    "21 rope diameters: seven circumferences of three diameters each, the rope trade's identity";
constexpr std::string_view julian_year = "a year of 365.25 days (Julian year)";
constexpr std::string_view julian_month = "a twelfth of a year of 365.25 days (Julian year), 30.4375 days";

constexpr std::array units{
    Unit{"mm", dimension::length, 0.001, 0.0, "millimetre", si},
    Unit{"cm", dimension::length, 0.01, 0.0, "centimetre", si},
    Unit{"m", dimension::length, 1.0, 0.0, "metre", si},
    Unit{"in", dimension::length, inch, 0.0, "inch", yard_and_pound},
    Unit{"ft", dimension::length, foot, 0.0, "foot", yard_and_pound},
    Unit{"mm2", dimension::area, 1e-6, 0.0, "square millimetre", si},
    Unit{"N", dimension::force, 1.0, 0.0, "newton", si},
    Unit{"kN", dimension::force, 1000.0, 0.0, "kilonewton", si},
    Unit{"kgf", dimension::force, standard_gravity, 0.0, "kilogram-force", with_gravity},
    Unit{"lbf", dimension::force, pound_force, 0.0, "pound-force", pound_and_gravity},
    Unit{"kg", dimension::mass, 1.0, 0.0, "kilogram", si},
    Unit{"g", dimension::mass, 0.001, 0.0, "gram", si},
    Unit{"lb", dimension::mass, pound, 0.0, "pound", yard_and_pound},
    Unit{"t", dimension::mass, 1000.0, 0.0, "tonne", with_si},
    Unit{"deg", dimension::angle, degree, 0.0, "degree of angle", with_si},
    Unit{"rad", dimension::angle, 1.0, 0.0, "radian", si},
    Unit{"degC", dimension::temperature_point, 1.0, 273.15, "degree Celsius, a temperature", si},
    Unit{"degF", dimension::temperature_point, 5.0 / 9.0, 273.15 - 32.0 * 5.0 / 9.0,
         "degree Fahrenheit, a temperature", "exact, 32 degF is 0 degC and 212 degF is 100 degC"},
    Unit{"K", dimension::temperature_difference, 1.0, 0.0, "kelvin, a difference of temperatures", si},
    Unit{"ppm/K", dimension::per_kelvin, 1e-6, 0.0, "millionth per kelvin", si},
    Unit{"Nm", dimension::moment, 1.0, 0.0, "newton metre", si},
    Unit{"kNm", dimension::moment, 1000.0, 0.0, "kilonewton metre", si},
    Unit{"kNm2", dimension::bending_stiffness, 1000.0, 0.0, "kilonewton square metre", si},
    Unit{"mm/kN", dimension::give, 1e-6, 0.0, "millimetre for each kilonewton", si},
    Unit{"lbf-ft", dimension::moment, pound_force* foot, 0.0, "pound-force foot", pound_and_gravity},
    Unit{"MPa", dimension::stress, 1e6, 0.0, "megapascal, newton per square millimetre", si},
    Unit{"GPa", dimension::stress, 1e9, 0.0, "gigapascal", si},
    Unit{"psi", dimension::stress, pound_force / (inch * inch), 0.0, "pound-force per square inch",
         pound_and_gravity},
    Unit{"kg/m", dimension::linear_mass, 1.0, 0.0, "kilogram per metre", si},
    Unit{"g/m", dimension::linear_mass, 0.001, 0.0, "gram per metre", si},
    Unit{"lb/ft", dimension::linear_mass, pound / foot, 0.0, "pound per foot", yard_and_pound},
    Unit{"%", dimension::number, 0.01, 0.0, "per cent", "exact by definition"},
    Unit{"J/mol", dimension::molar_energy, 1.0, 0.0, "joule per mole", si},
    Unit{"kJ/mol", dimension::molar_energy, 1000.0, 0.0, "kilojoule per mole", si},
    Unit{"nm3", dimension::volume, 1e-27, 0.0, "cubic nanometre", si},
    Unit{"Hz", dimension::frequency, 1.0, 0.0, "hertz, once a second", si},
    Unit{"turns", dimension::turns, 1.0, 0.0, "turns of a screw", "counted"},
    Unit{"d", dimension::rope_diameters, 1.0, 0.0, "diameters of the rope at hand", "counted"},
    Unit{"fids", dimension::rope_diameters, 21.0, 0.0, "fid lengths of the rope at hand", fid_convention},
    Unit{"fid", dimension::rope_diameters, 21.0, 0.0, "fid length of the rope at hand", fid_convention},
    Unit{"s", dimension::time, 1.0, 0.0, "second", si},
    Unit{"min", dimension::time, 60.0, 0.0, "minute", with_si},
    Unit{"h", dimension::time, 3600.0, 0.0, "hour", with_si},
    Unit{"days", dimension::time, day, 0.0, "days", with_si},
    Unit{"day", dimension::time, day, 0.0, "day", with_si},
    Unit{"months", dimension::time, year / 12.0, 0.0, "months", julian_month},
    Unit{"month", dimension::time, year / 12.0, 0.0, "month", julian_month},
    Unit{"years", dimension::time, year, 0.0, "years", julian_year},
    Unit{"year", dimension::time, year, 0.0, "year", julian_year},
};

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

std::span<const Unit> all_units() {
  return units;
}

const Unit* find_unit(std::string_view name) {
  // Short names compared by length first: the list is walked once per number of a file and is quicker than
  // a hash.
  for (const Unit& unit : units)
    if (unit.name.size() == name.size() && unit.name == name)
      return &unit;
  return nullptr;
}

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
