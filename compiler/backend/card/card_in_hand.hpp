#pragma once

#include "backend/card/card_piece.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What is buried at one end as the card prints it: bury + spare = total, each in the unit of the card.
struct CardBury {
  CardLength bury;
  CardLength spare;
  CardLength total;
};
CardBury card_bury(const CardPiece& card, WhichEnd end);

/// "bury 648 mm (72 d)"; with rope kept in the splice "bury 648 mm (72 d) + spare 300 mm = 948 mm". Empty
/// when the end has no splice.
std::string bury_words(const CardPiece& card, WhichEnd end);

/// The same for the tails that hang outside at a dry fit: "aloft bury 648 mm + ... , below bury ...". Only
/// where spare is kept; else empty.
std::string tails_words(const CardPiece& card);

/// What is cut of a piece: "13 046 mm", or nothing when all that is in hand goes into it.
bool cut_nothing(const CardPiece& card);
/// "Cut to 13046 mm." or "Cut nothing: all that is in hand, 25200 mm, goes into the piece."
std::string cut_step_words(const CardPiece& card);

/// What is in hand for the piece, how it is shared out, the check by halves and how far the tails may be
/// tapered; one sentence or two each. Empty when nothing is in hand.
std::vector<std::string> in_hand_lines(const CardPiece& card);

} // namespace sheerpole
