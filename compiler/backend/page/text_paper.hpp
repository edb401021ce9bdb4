#pragma once

#include "backend/backend.hpp"
#include "backend/page/page_flow.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A finished text of lines (backend/text_page.hpp) as a paper to print: the same words in the same
/// columns, in a face of fixed pitch as large as its widest line allows. A line across the page of equal
/// signs begins a section and becomes a rule. A section that fits a page but not what is left of one begins
/// the next page; so do lines that stand together, without an empty one between.
struct TextPaper {
  std::string file;  ///< "cut-list.pdf"
  std::string name;  ///< "Cut list": foot of each page
  std::string about; ///< whose it is: foot of each page
  std::string draft; ///< why nothing in it is final; empty: it is
};

/// The words for a draft in papers beside the cut list, which names the numbers; empty when no rig is one.
std::string draft_as_in_cut_list(const BackendRequest& request);

PagedFile text_paper(const TextPaper& paper, std::string_view text, PaperSize size);

} // namespace sheerpole
