#pragma once

#include "backend/text_page.hpp"
#include "plugins/cut-list/cut_list_block.hpp"

namespace sheerpole {

/// What the bench wants to know of one piece: its marks from both ends, the dry fit, the sum by hand, how
/// well it is known and what is left out. `of_several` names the piece in the heading.
void print_bench(const CheckedRig& checked, const ListedPiece& listed, bool of_several, TextPage& page);

} // namespace sheerpole
