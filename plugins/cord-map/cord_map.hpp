#pragma once

#include "backend/backend.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A stay that a knot keeps.
struct KnottedStay {
  const Stay* stay = nullptr;
  const Reading* reading = nullptr;
};

/// One knot of a cord. Both sides of a pair where one knot was made for both.
struct CordKnot {
  std::optional<int> tally;       ///< little knots in its tail
  std::vector<KnottedStay> stays; ///< in the order of the rig
  std::optional<Length> expected; ///< U to the knot as path, statement or estimate have it; never cut by
};

/// One cord with its knots, from its upper end on as far as their places are expected, else as tallied.
struct CordOfRig {
  const Record* record = nullptr;
  std::vector<CordKnot> knots;
};

/// The cords that the rig declares, in the order of the file; of each stay the reading that makes its
/// length.
std::vector<CordOfRig> cords_of(const CheckedRig& checked);

/// The map of one cord.
std::vector<Drawing> cord_map_pages(const Rig& rig, const CordOfRig& cord, const std::string& boat,
                                    PaperSize size);

/// Back end `cord-map`: a page for each messenger cord, its knots drawn with the stays that they keep, and
/// boxes to tick when a knot is laid out. Makes nothing for a rig without cords.
struct CordMap final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
