#pragma once

#include "backend/page/page_flow.hpp"
#include "plugins/sign-off/pin_list.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Every pin and thread with boxes to tick.
std::vector<Drawing> sign_off_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);
/// One stay at a time: what holds the mast meanwhile, off, on, pinned, secured.
std::vector<Drawing> replacement_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);

} // namespace sheerpole
