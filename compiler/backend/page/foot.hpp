#pragma once

#include "backend/drawing/drawing.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

// The one foot of all papers: what it is, whose and of which state of her rig (paper_identity.hpp) on the
// left, the number of the page on the right.

inline constexpr double foot_size = 2.6; ///< em, millimetres

/// The words in as many lines as they take beside the number on a page this wide between its margins.
std::vector<std::string> foot_lines(std::string_view words, double width, double size = foot_size);

/// Height of so many lines, with the rule above them.
double foot_height(std::size_t lines, double size = foot_size);

/// Draws a rule, the lines and the number at the lower margin. It is page 1 of 1 until number_pages().
void add_foot(const std::vector<std::string>& lines, double margin, Drawing& page, double size = foot_size);

/// Numbers the pages of one file through, whatever they were numbered before: "page 3 of 14". A page
/// without a foot stays without a number.
void number_pages(std::vector<Drawing>& pages);

} // namespace sheerpole
