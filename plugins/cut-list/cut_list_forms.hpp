#pragma once

#include "plugins/cut-list/cut_list_block.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// For people, at most 100 columns wide as long as no single name is wider.
std::string cut_list_text(const CheckedRig& checked, const std::vector<CutListBlock>& blocks);

/// One flat table, one row a term and one a total.
std::string cut_list_csv(const CheckedRig& checked, const std::vector<CutListBlock>& blocks);

/// Everything; the keys are described in docs/backends/cut-list.md.
std::string cut_list_json(const CheckedRig& checked, const std::vector<CutListBlock>& blocks);

} // namespace sheerpole
