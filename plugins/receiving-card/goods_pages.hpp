#pragma once

#include "backend/page/page_flow.hpp"
#include "plugins/receiving-card/goods.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Everything that comes in for the rig, line by line and part by part, with what is wanted and room for
/// what is found.
std::vector<Drawing> goods_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);

} // namespace sheerpole
