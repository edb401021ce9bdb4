#pragma once

#include "diagnostics/catalogue.hpp"

#include <string_view>
#include <vector>

namespace sheerpole {

/// One part of the page of a finding.
struct FindingSection {
  std::string_view heading;
  std::string_view body;
  bool is_rig_text = false; ///< lines of a rig file, not words to be wrapped
};

/// What is told of a finding, in order, for the terminal and for the pages of docs alike.
std::vector<FindingSection> finding_sections(const CatalogueEntry& entry);

} // namespace sheerpole
