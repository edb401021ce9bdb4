#include "calculate/joints/split_pin.hpp"

#include "units/format_length.hpp"

#include <cmath>

namespace sheerpole {

namespace {

constexpr double micrometre = 0.001; // in millimetres

struct MetricRow {
  double over; ///< clevis pin, mm
  double to;
  double split_pin;
};

constexpr MetricRow metric[] = {
    {2, 3, 0.8},  {3, 4, 1.0},   {4, 5, 1.2},   {5, 6, 1.6},   {6, 8, 2.0},   {8, 9, 2.5},
    {9, 12, 3.2}, {12, 17, 4.0}, {17, 23, 5.0}, {23, 29, 6.3}, {29, 44, 8.0},
};

struct InchRow {
  double clevis_pin; ///< sixteenths of an inch
  int thirty_seconds;
  const char* name;
};

constexpr InchRow inch[] = {
    {3, 2, "1/16 in"}, {4, 2, "1/16 in"}, {5, 3, "3/32 in"},  {6, 3, "3/32 in"},  {7, 3, "3/32 in"},
    {8, 4, "1/8 in"},  {10, 4, "1/8 in"}, {12, 5, "5/32 in"}, {14, 5, "5/32 in"}, {16, 5, "5/32 in"},
};

} // namespace

std::optional<SplitPin> split_pin_for(const NamedSize& clevis_pin) {
  const double pin = clevis_pin.diameter.millimetres();
  if (clevis_pin.system == NamedSize::System::metric) {
    for (const MetricRow& row : metric)
      if (pin > row.over + micrometre && pin <= row.to + micrometre)
        return SplitPin{Length::millimetres(row.split_pin), format_number(row.split_pin) + " mm",
                        "ISO 1234"};
    return std::nullopt;
  }
  for (const InchRow& row : inch)
    if (std::abs(pin - Length::inches(row.clevis_pin / 16.0).millimetres()) < micrometre)
      return SplitPin{Length::inches(row.thirty_seconds / 32.0), row.name, "ASME B18.8.1"};
  return std::nullopt;
}

} // namespace sheerpole
