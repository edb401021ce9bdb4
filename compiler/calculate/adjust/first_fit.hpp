#pragma once

#include "calculate/adjust/take_up.hpp"
#include "calculate/cut/piece.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// A stay whose splices take something that the cut does not count, since by the rule equals-first-creep
/// the first creep gives it back. It has two lengths: at its first fit it is short by that, after setting
/// it is as worked out.
struct FirstFit {
  std::optional<Length> short_by; ///< of all its splices; nothing: no test splice says how much
  Length to_slacken;              ///< what the adjusters give out

  /// Whether the adjusters give out what is missing at the first fit; true while it is not known.
  bool has_room() const;
};

/// Nothing when no splice of the stay goes by the rule. Source: common practice, no source; the amount is
/// share of contraction x bury.
std::optional<FirstFit> first_fit(const Stay& stay, const std::vector<Piece>& pieces,
                                  const std::vector<TakeUp>& adjusters);

/// Blocks the pieces that go by the rule when there is no room.
void block_by_first_fit(const Stay& stay, const FirstFit& fit, std::vector<Piece>& pieces);

} // namespace sheerpole
