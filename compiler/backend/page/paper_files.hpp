#pragma once

#include "backend/backend.hpp"
#include "backend/page/document.hpp"
#include "backend/page/page_flow.hpp"
#include "backend/text_page.hpp"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// What stands on every page of a text that is printed.
struct TextPaper {
  std::string file;       ///< "take-up.pdf"
  std::string name;       ///< "Take-up": foot of each page
  std::string boat = {};  ///< whose it is
  std::string about;      ///< identity_words(): foot of each page
  std::string draft = {}; ///< why nothing in it is final; empty: it is, or its text says where it is not
};

/// A finished text of lines (backend/text_page.hpp) as a paper to print: the same words in the same
/// columns, in a face of fixed pitch as large as its widest line allows. A line across the page of equal
/// signs begins a section and becomes a rule. A section that fits a page but not what is left of one begins
/// the next page; so do lines that stand together, without an empty one between.
PagedFile text_paper(const TextPaper& paper, std::string_view text, PaperSize size);

/// The same of a text that rests on the lengths of the cut list: a draft where one of those is.
PagedFile text_paper_of_lengths(TextPaper paper, std::string_view text, const BackendRequest& request);

/// The head of a text: what it is, whose, and whether any length in it is a draft.
void begin_text(const std::string& name, const CheckedRig& checked, TextPage& page);

/// A finished text with its foot, for the file of its own; pages have feet of their own.
std::string with_foot(const std::string& text, const std::string& about);

/// What `pages` makes of each, one behind the other.
template <class Range, class Pages>
std::vector<Drawing> pages_of_each(const Range& all, const Pages& pages) {
  std::vector<Drawing> behind_each_other;
  for (const auto& one : all)
    for (Drawing& page : pages(one))
      behind_each_other.push_back(std::move(page));
  return behind_each_other;
}

/// A back end that makes pages and nothing else: one HTML file and a PDF of the same.
class PagesBackend : public Backend {
public:
  struct About {
    std::string name;    ///< `bench-card`
    std::string file;    ///< `bench-cards`, without its ending
    std::string title;   ///< "Bench cards", of the boat
    std::string summary; ///< one line, in a rigger's words
  };

  explicit PagesBackend(About about) : about_(std::move(about)) {}
  BackendDescription describe() const final;
  OutputBundle generate(const BackendRequest& request) const final;

  virtual std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const = 0;

private:
  About about_;
};

/// Pages as one HTML file and as a PDF, numbered through, behind what is in the bundle.
void add_pages(const std::string& name, const std::string& title, std::vector<Drawing> pages,
               OutputBundle& bundle);

/// A document as one HTML file and, for those who ask, as a PDF, behind what is in the bundle.
void add_document(const std::string& name, const Document& document, const BackendRequest& request,
                  OutputBundle& bundle);

} // namespace sheerpole
