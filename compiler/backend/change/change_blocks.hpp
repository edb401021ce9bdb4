#pragma once

#include "backend/page/document.hpp"
#include "results/checked_rig.hpp"

namespace sheerpole {

/// What differs between two rigs, at the end of the document: a heading of level 3 a stay with why, lengths
/// and what becomes of its line, and its strips before and after; parts, lines to order, findings that are
/// new or gone. Says so when nothing differs.
void add_change(const CheckedRig& was, const CheckedRig& is, Document& document);

} // namespace sheerpole
