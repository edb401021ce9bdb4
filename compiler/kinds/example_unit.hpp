#pragma once

#include "kinds/property_row.hpp"

#include <string>

namespace sheerpole {

/// A number of SI units in the unit of the row's example: "320 mm", "50 %".
std::string shown_like_example(double si, const PropertyRow& row);

/// The unit of the row's example, "mm"; empty when the example has none.
std::string example_unit(const PropertyRow& row);

} // namespace sheerpole
