#pragma once

#include "backend/backend.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/page/paper_files.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A mark for the second end, from the bearing of the first: what is added to the body, the length from
/// bearing to bearing.
struct SpareMark {
  std::string name;
  CardLength beyond_body;
};

/// "body", "body + 160", "body - 52".
std::string of_body(const CardUnit& unit, CardLength beyond);

/// The marks of the second end of stays that have other marks there than the longest.
struct OtherEnd {
  std::vector<std::string> pieces;
  std::vector<SpareMark> marks;
};

/// What one spare length of one rope or wire is made for.
struct SpareLine {
  CardPiece longest; ///< the longest piece of this line, of those whose length is known or estimated
  std::vector<CardPiece> pieces;         ///< all pieces of it, in the order of the rig
  std::vector<std::string> not_compared; ///< whose length is X and has no estimate: any may be longer

  /// Nobody says of any piece how long it is, so `longest` is only the first.
  bool none_compared() const { return not_compared.size() == pieces.size(); }
  CardLength end_again; ///< what the greediest end of them all uses: one end may be made twice
  CardLength to_carry;  ///< cut of the longest piece and that
  std::optional<Length> about_to_carry = {}; ///< the same for ordering; nothing: X, and nobody says about
  std::vector<CardMark> first;               ///< marks of the end aloft, from the cut end
  std::vector<SpareMark> second;             ///< of the end below
  std::vector<std::string> as_second;        ///< the pieces whose end below has these marks
  std::vector<OtherEnd> others;              ///< of the end below, where that of another piece differs
};

/// At how much the adjusters of its stay are set: "330 mm"; nothing without one.
std::string set_words(const CardPiece& card);

/// One for each rope and each wire of the rig, in the order in which the stays meet them. Rod and chain are
/// not made up aboard. The longest piece is that with the longest cut; a cut that is X counts by the
/// estimate of its stay or the points of its path, and without either it is not compared.
std::vector<SpareLine> spare_lines(const CheckedRig& checked);

std::vector<std::string> rope_at_home(const SpareLine& spare);
std::vector<std::string> rope_aboard(const SpareLine& spare);
std::vector<std::string> wire_at_home(const SpareLine& spare);
std::vector<std::string> wire_aboard(const SpareLine& spare);

/// A part of the file that takes the wire of the spare length; empty texts: not stated.
struct SpareTerminal {
  std::string name;
  std::string wire; ///< size and construction that it is made for
  std::string inserted;
  std::string thread;
  std::string in_hand;
};

/// Those whose wire socket is stated for this size of wire, in the order of the file.
std::vector<SpareTerminal> spare_terminals(const SpareLine& spare);

/// The card of one spare length.
std::vector<Drawing> spare_pages(const SpareLine& spare, const std::string& boat, PaperSize size);
/// The page of a rig without rope and wire.
std::vector<Drawing> nothing_to_carry(const std::string& boat, PaperSize size);

/// Made ahead and carried aboard with a spare length: how a stay that is lost at sea is replaced.
struct EmergencySpliceCard final : PagesBackend {
  EmergencySpliceCard();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
