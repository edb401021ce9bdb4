#pragma once

#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerpole {

/// What one end of a line is made fast to: the neighbour in the stack. Both pointers are null when the line
/// ends bare.
struct LineEnd {
  WhichEnd where = WhichEnd::upper;
  const StackItem* item = nullptr;
  const Part* part = nullptr;

  bool bare() const { return part == nullptr; }
  /// The end of the part that has this type and takes the line: the one that faces it, else the other one,
  /// because a part may be used either way round. Null when neither has the type.
  const End* of_type(EndType type) const;
};

/// The end of the line at stack[line] that lies in the direction `where`.
LineEnd line_end(const Rig& rig, const Stay& stay, std::size_t line, WhichEnd where);

/// Whether a splice holds by its bury; one that does not say its sort does.
bool holds_by_bury(const Splice& splice);

/// One end of a rope that is spliced round a part.
struct SplicedEnd {
  std::size_t line = 0; ///< in the stack: the rope
  std::size_t item = 0; ///< in the stack: the part
  const LineMaterial* rope = nullptr;
  LineEnd end;
  const Splice* splice = nullptr;

  /// Tail that is buried, without rope kept for a later length.
  Length bury() const { return splice->bury.value.at(rope->diameter.value); }
  bool is_bury() const { return holds_by_bury(*splice); }
  /// Whether its seat is pear-shaped: the legs lie in a groove to the throat and pull nothing apart there.
  bool on_pear() const;
  /// How much of the buried tail is tapered; nothing when it is not stated.
  std::optional<Length> tapered() const;
};

/// The spliced ends of the ropes of a stay, from aloft to deck.
std::vector<SplicedEnd> spliced_ends(const Rig& rig, const Stay& stay);

/// How an eye lies round its seat.
struct EyeShape {
  Length seat;                     ///< diameter
  Length bearing_to_throat;        ///< from the crown of the seat
  double seats = 0.0;              ///< the same in diameters of the seat
  double half_angle_radians = 0.0; ///< between a leg and the line of pull
};

/// Nothing when the seat or its throat is not stated, or the throat lies within the rope on the seat.
/// Source: geometry (physics/rope_work.hpp).
std::optional<EyeShape> eye_shape(const SplicedEnd& end);

/// Rope that the eye uses beyond the bearing: as it counts for the cut, measured by a test wrap or stated
/// by the splice, and worked out from the seat.
struct EyeWays {
  Length stated;
  bool wrapped = false; ///< by a test wrap round this very part
  Span place;           ///< where it is stated
  Length geometry;
};
/// Nothing unless both are there, and for an allowance in rope diameters, which is a rule and no measure. A
/// rule or a length that is smaller than any eye round this seat can be, by more than a diameter of the
/// rope that gives, is held against the least that it takes, whatever the throat. Source:
/// cut/eye_allowance.hpp.
std::optional<EyeWays> eye_ways(const SplicedEnd& end);

/// By how much the eyes of a stay would make it too long if their parts are as their seats say: of each
/// what the cut takes less what the shape asks for. What is assumed is left out. Nothing where no seat has
/// a shape. Source: cut/eye_allowance.hpp.
std::optional<Length> eyes_too_long(const Rig& rig, const Stay& stay);

} // namespace sheerpole
