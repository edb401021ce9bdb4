#pragma once

#include "backend/backend.hpp"
#include "backend/page/page_flow.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What stands on every page of a text that is printed.
struct TextPaper {
  std::string file;       ///< "take-up.pdf"
  std::string name;       ///< "Take-up": foot of each page
  std::string about;      ///< whose it is: foot of each page
  std::string draft = {}; ///< why nothing in it is final; empty: it is, or its text says where it is not
};

/// A finished text of lines (backend/text_page.hpp) as a paper to print: the same words in the same
/// columns, in a face of fixed pitch as large as its widest line allows. A line across the page of equal
/// signs begins a section and becomes a rule. A section that fits a page but not what is left of one begins
/// the next page; so do lines that stand together, without an empty one between.
PagedFile text_paper(const TextPaper& paper, std::string_view text, PaperSize size);

/// The same of a text that rests on the lengths of the cut list: a draft where one of those is.
PagedFile text_paper_of_lengths(TextPaper paper, std::string_view text, const BackendRequest& request);

} // namespace sheerpole
