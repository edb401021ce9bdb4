#pragma once

#include "model/rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Which points of a rig are tips of spreaders.
class SpreaderTips {
public:
  explicit SpreaderTips(const Rig& rig);

  /// The spreaders that this stay goes over, from aloft to deck; not those at which it ends.
  std::vector<const Spreader*> under(const Stay& stay) const;

private:
  std::vector<const Spreader*> by_point_; ///< by the index of the point; null where there is no tip
};

/// The name without the side: "lower-spreader".
std::string base_name(const Spreader& spreader);

/// The line that a stay has over its spreaders.
struct LineOverTips {
  const LineMaterial* rope = nullptr; ///< the thickest of its ropes; null: it is not rope
  bool not_known = false;             ///< it is partly rope: which of its lines is there is not stated
};
LineOverTips line_over_tips(const Rig& rig, const Stay& stay);

} // namespace sheerpole
