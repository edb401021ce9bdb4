#pragma once

#include "backend/page/page_flow.hpp"
#include "plugins/dry-fit-card/stay_fit.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The card of one stay: one page, more only when its stack is longer than a page.
std::vector<Drawing> fit_pages(const StayFit& fit, const std::string& boat, PaperSize size);

} // namespace sheerpole
