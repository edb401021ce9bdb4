#pragma once

#include "limits/limit.hpp"
#include "model/piece_state.hpp"
#include "model/sourced.hpp"
#include "source/span.hpp"
#include "units/length.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// What the rig file says of one threshold.
struct StatedLimit {
  Limit limit{};
  std::optional<double> value; ///< nothing: switched off
  Provenance provenance;       ///< its text and source
  Span place;
};

/// What the rig file says of a piece that was measured once.
struct StatedSecondMeasure {
  SecondMeasure value = SecondMeasure::warn;
  Provenance provenance; ///< its text and source
};

/// The thresholds that hold for a rig: those stated in its files, else those of the table.
class Limits {
public:
  /// What is stated later counts.
  void state(StatedLimit stated);
  const std::vector<StatedLimit>& stated() const { return stated_; }
  const StatedLimit* find(Limit limit) const;

  /// In the coherent SI unit. Nothing when it is switched off, or is the owner's own and not stated.
  std::optional<double> value(Limit limit) const;
  std::optional<Length> length(Limit limit) const;
  bool switched_off(Limit limit) const;

  /// `second-measure`, a word and no threshold.
  void state(StatedSecondMeasure stated) { second_measure_ = std::move(stated); }
  const std::optional<StatedSecondMeasure>& stated_second_measure() const { return second_measure_; }
  SecondMeasure second_measure() const {
    return second_measure_ ? second_measure_->value : SecondMeasure::warn;
  }

private:
  std::vector<StatedLimit> stated_;
  std::optional<StatedSecondMeasure> second_measure_;
};

} // namespace sheerpole
