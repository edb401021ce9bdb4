#pragma once

#include "backend/card/card_piece.hpp"
#include "backend/page/page_flow.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The card of one piece: one page, more only when a stack or its marks are longer than a page.
std::vector<Drawing> card_pages(const CardPiece& card, const std::string& boat, PaperSize size);

} // namespace sheerpole
