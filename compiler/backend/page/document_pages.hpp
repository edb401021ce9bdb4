#pragma once

#include "backend/page/document.hpp"
#include "backend/page/paper.hpp"

#include <vector>

namespace sheerpole {

/// The document as pages of paper. A drawing that is wider or higher than the inside of a page is drawn
/// smaller; one that is not is drawn to its own size.
std::vector<Drawing> pages_of_document(const Document& document, PaperSize paper);

} // namespace sheerpole
