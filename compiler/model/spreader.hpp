#pragma once

#include "model/particular.hpp"
#include "model/point.hpp"
#include "source/span.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One spreader on one side, from its root on the mast to its tip.
struct Spreader {
  std::string name; ///< `upper-spreader.port`
  std::string title;
  Side side = Side::centre;
  PointId root;
  PointId tip;
  Span place;
  std::string hold = {};                    ///< fixed or swinging; empty when not stated
  std::vector<Particular> particulars = {}; ///< the rest of what is stated
};

} // namespace sheerpole
