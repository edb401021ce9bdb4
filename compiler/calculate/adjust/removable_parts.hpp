#pragma once

#include "calculate/adjust/take_up.hpp"
#include "calculate/joints/joint.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// So many of some parts.
using PartCounts = std::vector<std::pair<PartId, int>>;

/// The parts that are in hand and used nowhere: the `in-hand` of the file less what the stacks use, part by
/// part. A part that is spent once is not there again.
class LooseParts {
public:
  explicit LooseParts(const Rig& rig);

  /// None when the file does not say how many there are.
  int left(PartId part) const;
  /// Whether it does.
  bool counted(PartId part) const;
  void spend(const PartCounts& parts);

private:
  std::map<std::size_t, int> left_; ///< by index of the part
};

/// The parts that a stay may take up: those of its `spare-parts`, each as often as it is named, or as many
/// as are loose where the file counts them; and loose ones like its removable parts.
PartCounts spare_parts(const Rig& rig, const Stay& stay, const LooseParts& loose);

/// What taking parts out of a stack and putting others in does where the things now meet.
struct NewJoint {
  Remark name; ///< "turnbuckle-12 to plate-10"
  JointResult result = JointResult::pass;
  Remark words;             ///< what was found, or how the pin fits
  Remark not_checked;       ///< what could not be compared; may be empty
  bool without_pin = false; ///< two eyes meet: the pin went with what was taken out
};

/// A stack as it would be.
struct ChangedStack {
  PartCounts out;
  PartCounts in;
  std::vector<NewJoint> joints; ///< those that were not there before, from aloft to deck
  std::vector<WhichEnd> stiff;  ///< ends at which nothing swings both ways any more

  /// Every new joint can be made and nothing was found wrong with it.
  bool can_be_made() const;
};

/// Takes removable parts out, from the deck upwards, and puts others in: beside one of its own kind when
/// the stack has it, else on that side of the first adjuster where it fits better. Parts that are not there
/// to be taken are left. Source: the comparisons of joints.
ChangedStack change_stack(const Rig& rig, StayId stay, const PartCounts& out, const PartCounts& in);

/// How far a stay can be adjusted with its stack as it is or changed, from how it is set.
struct PlayRow {
  ChangedStack stack; ///< nothing out and nothing in: by the screw alone
  Length to_tighten;  ///< the change of the stack counted in; less than nothing: not as tight as now
  Length to_slacken;
};

/// What the parts that can be taken out or put in add to what the adjusters do.
struct Play {
  std::vector<PlayRow>
      rows;            ///< by the adjusters alone, one out, two out, one more in; empty without such parts
  Length by_adjusters; ///< from the shortest to the longest, by them alone
  Length in_all;       ///< the same with every row that can be made
};

/// Removable parts are those that the stack marks so and that hold no eye. With more than four of them each
/// alone and all together are looked at. Source: arithmetic. Check (common practice, no source): 5 in of
/// throw and two removable toggles of 2 1/4 in are 9 1/2 in of play.
Play play_of(const Rig& rig, StayId stay, const std::vector<TakeUp>& adjusters, const LooseParts& loose);

/// The items of a stack that may be taken out.
std::vector<std::size_t> removable_items(const Rig& rig, const Stay& stay);

} // namespace sheerpole
