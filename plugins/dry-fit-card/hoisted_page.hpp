#pragma once

#include "plugins/dry-fit-card/dry_fit_card.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The card of the hoisted dry fit of one rope stay, eyes seized and nothing opened: how high the lower
/// bearing should hang above the pin at the deck, what to do when it does not, and which slip is likely.
/// One page, more only for a stay of many toggles. Empty for wire, whose terminals cannot be hoisted before
/// they are pressed.
std::vector<Drawing> hoisted_pages(const StayFit& fit, const std::string& boat, PaperSize size);

} // namespace sheerpole
