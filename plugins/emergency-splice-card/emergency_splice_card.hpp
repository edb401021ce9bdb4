#pragma once

#include "backend/page/paper_files.hpp"
#include "plugins/emergency-splice-card/spare_line.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The card of one spare length.
std::vector<Drawing> spare_pages(const SpareLine& spare, const std::string& boat, PaperSize size);
/// The page of a rig without rope and wire.
std::vector<Drawing> nothing_to_carry(const std::string& boat, PaperSize size);

/// Made ahead and carried aboard with a spare length: how a stay that is lost at sea is replaced.
struct EmergencySpliceCard final : PagesBackend {
  EmergencySpliceCard();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
