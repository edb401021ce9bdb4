#pragma once

#include "backend/backend.hpp"
#include "diagnostics/catalogue.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

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

} // namespace sheerpole
