#include "calculate/temperature_text.hpp"

#include "units/format_length.hpp"

namespace sheerpole {

std::string temperature_text(double kelvin) {
  return format_fixed(kelvin - 273.15, 0) + " degC";
}

} // namespace sheerpole
