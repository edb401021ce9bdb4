#pragma once

#include <string_view>

namespace sheerpole {

/// Declarations of the parts that first files use until the owner's own take their place: first-tang,
/// first-plate, first-eye, first-screw, first-wire. Every length is assumed; round figures of the project,
/// no source.
std::string_view first_parts();

} // namespace sheerpole
