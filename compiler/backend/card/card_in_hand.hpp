#pragma once

#include "backend/card/card_piece.hpp"

#include <optional>
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

/// What an eye takes, throat to throat, as the marks of the card have it; nothing where it has no such
/// marks.
std::optional<CardLength> throat_to_throat(const CardPiece& card, WhichEnd end);

/// At what load splices on this rope are set before the piece is measured again: of the last test splice on
/// record that states it.
std::optional<Force> setting_load(const CardPiece& card);

/// What is cut of a piece: "13 046 mm", or nothing when all that is in hand goes into it.
bool cut_nothing(const CardPiece& card);
/// "Cut to 13046 mm." or "Cut nothing: all that is in hand, 25200 mm, goes into the piece."
std::string cut_step_words(const CardPiece& card);

/// What lies past the bearings before anything is buried, aloft and below, as the card prints its marks.
struct CardHalves {
  CardLength upper;
  CardLength lower;
};
CardHalves card_halves(const CardPiece& card);
/// "They must be alike.", "41 mm more must lie aloft."
std::string halves_differ_words(const CardPiece& card);

/// What is in hand for the piece, how it is shared out, the check by halves and how far the tails may be
/// tapered; one sentence or two each. Empty when nothing is in hand. A card from the cord has the check by
/// halves in a box of its own.
std::vector<std::string> in_hand_lines(const CardPiece& card);

} // namespace sheerpole
