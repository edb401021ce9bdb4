#pragma once

#include "units/dimension.hpp"

#include <string>

namespace sheerpole {

/// A number of a screening for a reader: "36.40 kN (8182 lbf)", "40.67 kNm (30000 lbf-ft)", "1.676 m", a
/// plain number as it is, "0.45".
std::string quantity_words(const Quantity& quantity);

} // namespace sheerpole
