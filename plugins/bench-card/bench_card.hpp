#pragma once

#include "backend/card/card_piece.hpp"
#include "backend/page/paper_files.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One thing to do, to be ticked off.
struct CardStep {
  std::string text;
  bool stop = false;  ///< to be signed before anyone goes on
  bool write = false; ///< what was found is written behind it
};

/// The parts of the stack that have to be on the line before its second end is closed, in the order in
/// which they go on from the end that is made first, below: what is worn on it, then what its eyes bear on.
std::vector<std::string> threaded_first(const CardPiece& card);

/// The order of work at the bench, by the numbers of the marks. The stop comes before the first step that
/// cannot be undone; of a wire that is laid out by a cord its end aloft is closed before, since the cord is
/// laid along it.
std::vector<CardStep> card_steps(const CardPiece& card);

/// The card of one piece: one page, more only when a stack or its marks are longer than a page.
std::vector<Drawing> card_pages(const CardPiece& card, const std::string& boat, PaperSize size);

/// One card for each piece, to be carried to the bench: what to mark, what to thread on, in which order.
struct BenchCard final : PagesBackend {
  BenchCard();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
