#pragma once

#include "backend/page/paper_files.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One sheet at the time at which it is taken in the hand.
struct SheetInTurn {
  std::string step; ///< "measure", "order"; empty: the same as the one before
  std::string when; ///< "before anything is ordered"
  std::string name; ///< "Order list"
  std::string file; ///< "order-list.html"
};

/// The sheets in the order in which a stay is measured, made, fitted and looked after.
std::vector<SheetInTurn> sheets_in_turn(const CheckedRig& checked);

/// Which sheet when, and how far each stay is: a page to begin with, on a screen with links.
struct Index final : PagesBackend {
  Index();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
