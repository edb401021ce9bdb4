#pragma once

#include "units/force.hpp"

#include <optional>

namespace sheerpole {

/// Compression of the mast at the step: factor x P, P being the transverse load on the shrouds
/// (shroud_load_share.hpp). The factor of 1.85 for what stays, halyards and sheets add, 2.78 RM30 / b in
/// all, is from memory of Kinney, Skene's Elements of Yacht Design, 8th ed.; it was not read. Nothing
/// unless both inputs are more than zero.
std::optional<Force> mast_compression(Force transverse_load, double factor);

} // namespace sheerpole
