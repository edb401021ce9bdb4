#pragma once

#include "backend/not_yet.hpp"
#include "backend/page/page_flow.hpp"

#include <string_view>
#include <vector>

namespace sheerpole {

/// In place of the number to cut to, as large as that: NOT YET, and for how many reasons.
void add_not_yet(std::string_view what, const std::vector<DraftReason>& reasons, PageFlow& page,
                 double size);

/// In place of marks, boxes to tick and steps of work on a card that is a DRAFT: each reason with what
/// would settle it, then what may be done meanwhile.
void add_release(const std::vector<DraftReason>& reasons, std::string_view meanwhile, PageFlow& page);

} // namespace sheerpole
