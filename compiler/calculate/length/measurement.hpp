#pragma once

#include "calculate/length/pin_to_pin.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

namespace sheerpole {

/// What on the boat a length was read from.
enum class MeasuredBy : std::uint8_t {
  nothing,
  reading,   ///< a tape, a laser, an old stay, a cord
  statement, ///< a stated pin-to-pin whose source is `measured`
  points     ///< a path each of whose points is `measured`
};

/// What holds a measured length against a second measurement.
enum class ConfirmedBy : std::uint8_t { second_run, reading, statement, points, dry_fit };

/// A second run or a second way that comes to the same length within the limit `routes-apart`, or a dry fit
/// that hung where it should, with the limit `hang-apart`.
struct Confirmation {
  ConfirmedBy by = ConfirmedBy::second_run;
  std::optional<std::size_t> reading; ///< of the readings of the stay, where it is one
  std::optional<Length> within; ///< spread of the runs, or what the two ways differ; nothing of two marks
};

/// How well the length of a stay is measured, before anything is said of its parts and splices.
struct Measurement {
  MeasuredBy by = MeasuredBy::nothing;
  std::optional<Confirmation> confirmed;
  /// Why it is cut from the drawing all the same: stated at the stay, else at the boat. Only where nothing
  /// is measured: what was read in place stands above a drawing.
  std::optional<std::string> from_drawing;

  bool in_place() const { return by != MeasuredBy::nothing; }
};

/// A reading of what is assumed measures nothing. Points that are drawn, computed or assumed make a length
/// plausible and neither measure nor confirm it. A cord that was hoisted again and came to the same mark is
/// confirmed. Source: common practice, no source: measure twice.
Measurement measurement_of(const Rig& rig, const Stay& stay, const PinToPin& length);

} // namespace sheerpole
