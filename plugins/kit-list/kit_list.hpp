#pragma once

#include "backend/backend.hpp"
#include "backend/order/order_items.hpp"
#include "backend/page/paper_files.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One thing to keep aboard.
struct KitItem {
  std::string what;        ///< "hmpe-9, 12-strand HMPE, 9 mm"
  std::string amount = {}; ///< "13.0 m", "2"; empty: one
  std::string why = {};    ///< "the longest piece: cap-shroud"
};

/// What a stay that goes would be made of again, by what the rig has: as much line as its longest piece
/// takes, one of each part, two of each small part, the cord that measures the longest stay. Common
/// practice, no source.
std::vector<KitItem> kit_of_rig(const CheckedRig& checked);

/// The tools for that: fids for each rope, cutters for each wire, a tape as long as the longest stay.
/// Common practice, no source.
std::vector<KitItem> kit_of_tools(const CheckedRig& checked);

/// What to keep aboard, to tick through before a passage.
struct KitList final : PagesBackend {
  KitList();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
