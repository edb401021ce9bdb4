#pragma once

#include "backend/text_page.hpp"
#include "plugins/cut-list/cut_list_block.hpp"

namespace sheerpole {

/// One numbered block of the cut list: what the piece is, its ends, take-up, and the worked sum.
void print_block(const CheckedRig& checked, const CutListBlock& block, int number, TextPage& page);

} // namespace sheerpole
