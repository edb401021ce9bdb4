#include "backend/table/quantity_words.hpp"

#include "units/format_length.hpp"
#include "units/unit.hpp"

#include <cmath>

namespace sheerpole {

namespace {

std::string whole(double si, std::string_view unit) {
  return format_fixed(si / find_unit(unit)->factor, 0) + " " + std::string(unit);
}

} // namespace

std::string quantity_words(const Quantity& quantity) {
  if (quantity.dimension == dimension::force)
    return format_fixed(quantity.si / 1000.0, 3) + " kN (" + whole(quantity.si, "lbf") + ")";
  if (quantity.dimension == dimension::moment)
    return format_fixed(quantity.si / 1000.0, 2) + " kNm (" + whole(quantity.si, "lbf-ft") + ")";
  if (quantity.dimension == dimension::length)
    return format_fixed(quantity.si, 3) + " m";
  return format_number(std::round(quantity.si * 1e6) / 1e6);
}

} // namespace sheerpole
