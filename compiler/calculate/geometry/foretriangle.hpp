#pragma once

#include "model/rig.hpp"

#include <optional>

namespace sheerpole {

/// The foretriangle as the points make it.
struct Foretriangle {
  StayId forestay;
  std::optional<Length> height; ///< of the upper pin above the sheer; nothing: sheer-at-mast not stated
  /// From the fore side of the mast, where the upper pin stands, to the foot, level; the mast is followed
  /// down along its lean to the height of the foot. Nothing when the upper end is on no stated mast.
  std::optional<Length> base;
};

/// The stay that the foretriangle goes by: of those on the centreline that carry a sail and run down and
/// forward the one with the foremost foot. Nothing when there is none.
std::optional<StayId> forestay_of(const Rig& rig);

/// Nothing without a forestay. Source: plane geometry, exact; which stay is meant is common practice, no
/// source.
std::optional<Foretriangle> foretriangle(const Rig& rig);

} // namespace sheerpole
