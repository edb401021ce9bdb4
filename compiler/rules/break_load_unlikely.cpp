#include "calculate/strength/force_text.hpp"
#include "rules/lines_in_use.hpp"
#include "rules/strength_checks.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

/// "0.83 kN/mm2"
std::string on_square(double pascals) {
  return format_fixed(pascals / 1e9, 2) + " kN/mm2";
}

std::string bounds(std::optional<double> low, std::optional<double> high) {
  if (low && high)
    return "lines have " + format_fixed(*low / 1e9, 2) + " to " + on_square(*high);
  return low ? "lines have " + on_square(*low) + " or more" : "lines have " + on_square(*high) + " or less";
}

} // namespace

void check_break_load_unlikely(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto low = rig.limits.value(Limit::break_load_low);
  const auto high = rig.limits.value(Limit::break_load_high);
  if (!low && !high)
    return;
  for (const MaterialId id : lines_in_use(rig, derived)) {
    const LineMaterial& line = rig[id];
    const double diameter = line.diameter.value.metres();
    if (!line.break_load || !(diameter > 0.0)) {
      report.not_checked(line.name, "break-load is not stated");
      continue;
    }
    const double ratio = line.break_load->value.newtons() / (diameter * diameter);
    const std::string words = "break load " + force_text(line.break_load->value) + " over (" +
                              length_text(line.diameter.value) + ")^2 is " + on_square(ratio) + "; " +
                              bounds(low, high);
    if ((low && is_below(ratio, *low)) || (high && is_below(*high, ratio)))
      report.find(diagnose("break-load-unlikely", {{"line", line.name}, {"words", words}})
                      .at(line.break_load->provenance.place.value_or(line.place))
                      .about(line.name));
    else
      report.pass(line.name, words);
  }
}

} // namespace sheerpole
