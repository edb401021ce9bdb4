#pragma once

#include "calculate/reading/reading_choice.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// Which of the ways to the pin-to-pin length was taken.
enum class LengthRoute { reading, stated, path, unknown };

/// A slip of measuring that would explain a difference.
struct LikelySlip {
  Remark words;       ///< "toggle-12, 82 mm, was left out"
  Length unexplained; ///< what it leaves of the difference
};

/// Two ways to one length, side by side.
struct RouteComparison {
  LengthRoute other = LengthRoute::path;
  Length length;     ///< by the other way
  Length difference; ///< the way taken minus the other way
  Provenance provenance;
  std::vector<LikelySlip> slips = {}; ///< the likeliest first
  /// The X that this way leads one to expect, where the way taken is X: for ordering and to see whether the
  /// mark can be right, never for a cut. `difference` says nothing then.
  std::optional<Length> expected_x = {};
  std::optional<PassedOver> why = {}; ///< of a reading: why it was not taken

  /// Whether it speaks of the same boat as the way taken: a reading that a later one stands above is an
  /// older state of her, and X has no number.
  bool speaks_of_now() const {
    return !expected_x && why != PassedOver::older && why != PassedOver::counted_out &&
           why != PassedOver::not_comparable;
  }

  /// What nobody knows is no witness against what somebody read.
  bool is_assumed() const { return !provenance.assumptions.empty(); }
};

/// Whether two ways to one length differ by more than the limit `routes-apart`. Readings are held against
/// each other by `readings-contradict`, X has no number to compare, and what nobody knows is no witness
/// against what somebody read.
bool ways_differ(const Rig& rig, const RouteComparison& other);

/// The slips of measuring that would explain why two ways to the pin-to-pin length of a stay differ: a part
/// of the stack counted twice or left out, the offset taken off twice or not at all, the tape held at its
/// first decimetre, foot or inch, a whole metre or foot miscounted, the next hole, the other side of the
/// boat, feet and inches read as decimal feet. `difference` is the way taken less the other. Only slips
/// that leave no more than 3 mm unexplained, the nearest first, two at most; none when the ways agree to 3
/// mm. Of ways that are far apart (far_apart) a factor of 10, 12, 2.54, 25.4 or 0.3048 within 3 % comes
/// first, and a metre or a foot miscounted within 20 mm. `length` is by the way taken, and `reading` the
/// reading that it is, null where it is none. Source: common practice, no source.
std::vector<LikelySlip> likely_slips(const Rig& rig, const Stay& stay, const Reading* reading,
                                     LengthRoute other, Length length, Length difference);

/// Whether two ways to one length differ by more than the share `routes-far-apart` of the longer: beyond
/// what anything is measured to. Nothing is far apart where that limit is switched off.
bool far_apart(const Rig& rig, Length one, Length other);

} // namespace sheerpole
