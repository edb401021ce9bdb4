#pragma once

#include "calculate/spool_plan/spool_order.hpp"

#include <variant>

namespace sheerpole {

/// One piece with the share `spare` added, or why it can not be planned.
std::variant<WantedPiece, UnplannedPiece> wanted_piece(const SpoolBoat& boat, const Piece& piece,
                                                       double spare);

} // namespace sheerpole
