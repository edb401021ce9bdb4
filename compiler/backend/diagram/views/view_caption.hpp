#pragma once

#include "backend/diagram/views/view_block.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Words above a view: over the left column, over the centreline and over the right column. May be empty.
struct ViewHeadings {
  std::string left;
  std::string middle;
  std::string right;
};

ViewHeadings view_headings(ViewKind kind);

/// First from where the view is seen, then what a reader must know of it.
std::vector<std::string> view_caption(const Rig& rig, const ViewBlock& block);

} // namespace sheerpole
