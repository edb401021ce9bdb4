#pragma once

#include "calculate/change/rig_change.hpp"

namespace sheerpole {

/// A stay with what was worked out of it. Points into a rig.
struct StayView {
  const Rig* rig = nullptr;
  const Stay* stay = nullptr;
  const DerivedStay* derived = nullptr;
};

/// What becomes of piece `i` of the old stay where piece `i` of the new one has to hang. Fills lengths,
/// fate and words.
PieceChange compare_piece(const StayView& was, const StayView& is, std::size_t i);

/// A piece of a stay that is new, and of one that is gone.
PieceChange new_piece(const StayView& is, std::size_t i);
PieceChange gone_piece(const StayView& was, std::size_t i);

/// The two sums side by side.
ChangedLength changed_length(const LengthSum& was, const LengthSum& is);

} // namespace sheerpole
