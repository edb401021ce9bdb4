#pragma once

#include "calculate/behaviour/behaviour_phrase.hpp"
#include "model/rig.hpp"
#include "units/force.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// By what a tension is estimated.
enum class TensionMethod : std::uint8_t { swing, pulse, stretch, gauge };

/// The tension of a stay as one reading gives it.
struct TensionEstimate {
  TensionMethod method = TensionMethod::swing;
  std::optional<Force> tension;
  std::optional<Force> tolerance; ///< plus or minus, of all bounds that it rests on; nothing without any
  Influences influences;          ///< those bounds
  std::optional<double> share_of_break;
  Remark how;
  Remark not_checked; ///< why there is no tension
  std::string date;
  std::string by;
  Span place;
};

/// How deep the longest straight run of a stay hangs.
struct Sag {
  Length span;
  Force tension;
  Length depth;        ///< square to the chord
  Length extra_length; ///< of the line over the chord
};

/// The tension of a stay from each of its tension-readings: of a first swing or a pulse by Mersenne's law
/// of the taut string over the free length, of a stretch over a marked length by Hooke's law. What an
/// estimate lacks is said in its place; a gauge shows it. Bounds add as squares, each to the first order:
/// the frequency, the time and the free length count twice.
std::vector<TensionEstimate> tension_estimates(const Rig& rig, StayId stay);

/// How deep the longest straight run of a stay hangs under its own weight at the dock tension: square to
/// its chord, by the parabola w L^2 cos(slope) / (8 T). Nothing when dock-tension, linear-mass or a path is
/// not stated. Source: statics of a shallow cable; the elastic catenary differs by less than 1 % while the
/// sag is less than a sixteenth of the span.
std::optional<Sag> sag(const Rig& rig, const Stay& stay);

} // namespace sheerpole
