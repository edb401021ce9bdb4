#pragma once

#include "model/rig.hpp"

#include <string>

namespace sheerpole {

/// Why a rig could not be restated.
enum class ShopFault { none, not_found, no_opening };

/// The rig as a loft would deliver it: every screw set as far open as the shop's delivered-open says, as a
/// share of its range; pin-to-pin lengths stay, bodies and cuts follow. What was set is kept among the
/// differences, and the unit of its cards when any shop states one. Source: arithmetic of the range; the
/// conventions in use (1/2, 5/8, 2/3, 3/4 open) are common practice, no source. On a fault the rig is left
/// as it is.
ShopFault restate_for_shop(Rig& rig, const std::string& shop);

} // namespace sheerpole
