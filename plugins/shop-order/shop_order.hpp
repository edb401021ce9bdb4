#pragma once

#include "backend/backend.hpp"
#include "backend/page/paper_files.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What a shop that makes the pieces has to know, and blanks for what the two have to agree on: no number
/// to cut to stands on it of a piece that is a DRAFT, and pieces on record are not ordered again.
struct ShopOrder final : PagesBackend {
  ShopOrder();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
