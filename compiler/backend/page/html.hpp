#pragma once

#include "backend/drawing/drawing.hpp"
#include "backend/page/document.hpp"
#include "backend/page/paper.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The text with the signs that HTML reads as markup written out; other control characters become blanks.
std::string html_text(std::string_view text);

/// The pages as one HTML file that needs nothing else: no script, no network, no file beside it. Each page
/// is an inline drawing with its text as text, and prints on a sheet of its own, of the size of the first.
std::string html_of_pages(const std::string& title, const std::vector<Drawing>& pages);

/// The document as one HTML file that needs nothing else: no network, no file beside it. It has a list of
/// its headings of level 2 and 3, tables with headings that a reading machine finds, drawings inline, whose
/// links lead to headings. All of it is there without its script, which only offers to leave out the rows
/// of tables that do not hold a word.
std::string html_of_document(const Document& document, PaperSize paper);

} // namespace sheerpole
