#pragma once

#include "backend/page/document.hpp"
#include "backend/page/paper.hpp"

#include <string>

namespace sheerpole {

/// The document as one HTML file that needs nothing else: no network, no file beside it. It has a list of
/// its headings of level 2 and 3, tables with headings that a reading machine finds, drawings inline, whose
/// links lead to headings. All of it is there without its script, which only offers to leave out the rows
/// of tables that do not hold a word.
std::string html_of_document(const Document& document, PaperSize paper);

} // namespace sheerpole
