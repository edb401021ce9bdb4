#pragma once

#include "backend/page/page_flow.hpp"
#include "plugins/labels/piece_label.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One label, millimetres. Two beside each other and six below each other fit between the margins of either
/// sheet.
inline constexpr double label_width = 90.0;
inline constexpr double label_height_on_sheet = 40.0;
inline constexpr int labels_beside = 2;
inline constexpr int labels_below = 6;

/// The labels in a grid, row by row, with dashed lines to cut along.
std::vector<Drawing> label_pages(const std::vector<PieceLabel>& labels, const std::string& boat,
                                 PaperSize size);

} // namespace sheerpole
