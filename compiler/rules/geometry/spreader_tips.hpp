#pragma once

#include "calculate/geometry/spar_lines.hpp"
#include "model/rig.hpp"
#include "rules/by_side.hpp"
#include "rules/check_report.hpp"

#include <functional>
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

/// The line that a stay has over its spreaders.
struct LineOverTips {
  const LineMaterial* rope = nullptr; ///< the thickest of its ropes; null: it is not rope
  bool not_known = false;             ///< it is partly rope: which of its lines is there is not stated
};
LineOverTips line_over_tips(const Rig& rig, const Stay& stay);

/// "upper-spreader" of "upper-spreader.port".
std::string without_side(const std::string& name);

/// Looks at one spreader, calling it by the name given.
using LookAtTip = std::function<void(const SpreaderTip& tip, const std::string& name, StayReport& report)>;

/// Looks at the tip of each spreader. What both sides have alike, to the last word and place, is said once,
/// about the spreader without a side.
void look_at_tips(const Rig& rig, CheckReport& report, const LookAtTip& look);

/// Who carries a tip: "cap-shroud is clamped to it; intermediate runs free over it".
Remarks who_carries(const Rig& rig, const SpreaderTip& tip);

/// The tips that a stay goes over, from aloft to deck, each with its line.
struct TipOfStay {
  const SpreaderTip* tip = nullptr;
  const LineOverTip* line = nullptr;
};
std::vector<std::vector<TipOfStay>> tips_by_stay(const Rig& rig, const std::vector<SpreaderTip>& tips);

} // namespace sheerpole
