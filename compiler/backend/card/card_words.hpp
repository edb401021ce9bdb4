#pragma once

#include "backend/card/card_piece.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// "PORT side", "STARBOARD side", "centreline".
std::string side_words(Side side);

/// "thimble-16 (Thimble for 9 mm rope)".
std::string shown(const std::string& name, const std::string& title);

/// Why what is printed may not be cut to: the reasons, those with the same mend together, each once.
std::vector<std::string> draft_lines(const std::vector<DraftReason>& reasons);

/// "thimble-16  >  THIS PIECE  >  deadeye-38  >  lashing-260 set to 160 mm"; another line of the stack is
/// "line".
std::string stack_words(const CardPiece& card);

/// How the end is spliced, with its numbers: "long-bury, bury 648 mm (72 d), taper last third, lock
/// stitch"; empty when no splice is named.
std::string splice_words(const CardPiece& card, const PieceEnd& end);

} // namespace sheerpole
