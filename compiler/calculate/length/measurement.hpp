#pragma once

#include "calculate/length/pin_to_pin.hpp"
#include "model/rig.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

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

/// Another way to the same length that gives something else, beyond the limit `routes-apart`.
struct Dispute {
  LengthRoute way = LengthRoute::path;
  Length difference; ///< the way taken less this one
  bool measured = false;
};

/// How well the length of a stay is measured, before anything is said of its parts and splices.
struct Measurement {
  MeasuredBy by = MeasuredBy::nothing;
  std::optional<Confirmation> confirmed;
  /// Why it is cut from the drawing all the same: stated at the stay, else at the boat. Only where nothing
  /// is measured: what was read in place stands above a drawing.
  std::optional<std::string> from_drawing;

  std::vector<Dispute> disputes = {}; ///< in the order of the ways

  bool in_place() const { return by != MeasuredBy::nothing; }
  /// What is still open about the length. A stay that hung right in its place settles it.
  bool ways_differ() const {
    return !disputes.empty() && !(confirmed && confirmed->by == ConfirmedBy::dry_fit);
  }
  /// Confirmed, and no other measurement says something else. A drawing that differs is open and no
  /// measurement.
  bool settled() const {
    return confirmed && !(ways_differ() && std::any_of(disputes.begin(), disputes.end(),
                                                       [](const Dispute& one) { return one.measured; }));
  }
};

/// A reading of what is assumed measures nothing. Points that are drawn, computed or assumed make a length
/// plausible and neither measure nor confirm it. A cord that was hoisted again and came to the same mark is
/// confirmed; one that repeats another word for word confirms nothing. Source: common practice, no source:
/// measure twice.
Measurement measurement_of(const Rig& rig, const Stay& stay, const PinToPin& length);

} // namespace sheerpole
