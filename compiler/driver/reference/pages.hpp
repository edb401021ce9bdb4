#pragma once

#include "backend/backend.hpp"
#include "diagnostics/catalogue.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What a rig file can declare and state, from the table of kinds: each kind, each end, and the word `line`
/// of a stack.
std::string kinds_page();

/// docs/language/glossary.md: words of the trade and of the papers in plain words.
std::string glossary_page();

/// docs/calculations/thresholds.md: the thresholds of the checks with the class of each number.
std::string limits_page();

/// The text so that none of its signs is read as markup. Words between backticks stay as code.
std::string markdown_text(std::string_view text);

/// The text as code inside a line; empty for an empty text. `|` is escaped, as a cell of a table needs it.
std::string markdown_code(std::string_view text);

/// One row of a table, the cells as they are.
std::string markdown_row(const std::vector<std::string>& cells);

/// A table's heading and the line below it.
std::string markdown_heading_row(const std::vector<std::string>& cells);

/// One part of the page of a finding.
struct FindingSection {
  std::string_view heading;
  std::string body;
  bool is_verbatim = false; ///< lines as they stand in a file or on the screen, not words to be wrapped
};

/// What is told of a finding, in order, for the terminal and for the pages of docs alike.
std::vector<FindingSection> finding_sections(const CatalogueEntry& entry);

/// One page for each finding and README.md, which lists them by subject.
std::vector<OutputFile> finding_pages();

/// docs/begin: README.md, and for each kind of rig of which a first file can be made a page and its
/// picture.
std::vector<OutputFile> begin_pages();

/// All words of the language with what they mean, as a JSON document for editors: keywords, kinds with what
/// they state, settings in a stack, ends, units and threads. The form is described in
/// docs/language/completion.md.
std::string completion_json();

} // namespace sheerpole
