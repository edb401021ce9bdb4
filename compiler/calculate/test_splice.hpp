#pragma once

#include "model/rig.hpp"

#include <optional>

namespace sheerpole {

/// What a splice that was made to be measured says of a rope.
struct TestSplice {
  Sourced<double> contraction;              ///< (before - after) / bury
  std::optional<Sourced<double>> recovered; ///< (set - after) / (before - after)
  Span place;
};

/// The last test splice on this rope; nothing when there is none, or when its numbers make no sense: longer
/// after than before. Source: arithmetic of the two marks; the method is common practice, no source.
std::optional<TestSplice> test_splice(const Rig& rig, const LineMaterial& material);

} // namespace sheerpole
