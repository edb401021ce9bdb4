#pragma once

#include "units/dimension.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace sheerpole {

/// One unit as it may stand after a number.
struct Unit {
  std::string_view name; ///< as written in a rig file: mm, lbf-ft, kg/m
  Dimension dimension;
  double factor = 1.0;      ///< multiplies the number to give the coherent SI unit
  double offset = 0.0;      ///< added after the factor; only degC and degF have one
  std::string_view meaning; ///< "millimetre"
  std::string_view source;  ///< where the factor is from: "exact by definition", "BIPM SI brochure", ...
};

/// All units, in the order in which the reference page lists them.
std::span<const Unit> all_units();

/// The unit of this name. Names are exact: `MM` is not `mm`.
const Unit* find_unit(std::string_view name);

/// The unit that was probably meant by a word that is none: another habit of writing it (inches, lbs, °C),
/// another case (MM), or a slip of one letter (mmm).
std::optional<std::string> respell_unit(std::string_view word);

} // namespace sheerpole
