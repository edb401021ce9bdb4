#pragma once

#include "limits/limit.hpp"
#include "model/sourced.hpp"
#include "source/span.hpp"
#include "units/length.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What the rig file says of one threshold.
struct StatedLimit {
  Limit limit{};
  std::optional<double> value; ///< nothing: switched off
  Provenance provenance;       ///< its text and source
  Span place;
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

private:
  std::vector<StatedLimit> stated_;
};

} // namespace sheerpole
