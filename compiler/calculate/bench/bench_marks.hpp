#pragma once

#include "calculate/cut/end_use.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace sheerpole {

/// A place along a piece, measured from one of its ends. With `unknown` the length X lies between.
struct MarkPlace {
  bool unknown = false;
  Length known;
};

/// What is marked on a piece, from its cut end inwards.
enum class MarkKind : std::uint8_t {
  cut_end,
  mouth_of_terminal,
  crown_of_loop, ///< of a wire that goes round a thimble, a dead-eye or a mast and back along itself
  trim_of_tail,
  taper_begins,
  throat_on_tail,
  throat_on_standing_part,
  tail_comes_out
};

/// A place along a messenger cord that keeps X: from its upper end U and from its knot L, each inwards, so
/// that less than nothing is past that end. One of the two is known, the other is X less it.
struct CordPlace {
  MarkPlace from_upper;
  MarkPlace from_lower;
};

/// Where the cord lies along a piece whose length is X.
struct CordLayout {
  Length upper; ///< the bearing aloft of the piece, inside U
  Length lower; ///< its bearing below, inside L
  // Rope that is laid out beyond the bearings, and is gone from there when the splices have drawn in.
  Length drawn_in_upper; ///< by the splice aloft
  Length drawn_in_lower; ///< by the splice below
  Length behaves; ///< by the line itself, laid out below: stretch, bedding; less than nothing: inside
};

/// One mark to be made on the bench, from either end of the piece as it is cut.
struct BenchMark {
  MarkKind kind = MarkKind::cut_end;
  WhichEnd end = WhichEnd::upper; ///< whose mark it is
  MarkPlace from_upper;
  MarkPlace from_lower;
  std::optional<CordPlace> on_cord = {}; ///< of a piece whose length is X
};

/// Why there is no mark.
enum class BenchPhrase : std::uint16_t { throat_not_stated };
constexpr PhraseSubject subject_of(BenchPhrase) {
  return PhraseSubject::bench;
}

/// How a piece is marked and looked at before the line is opened.
struct BenchMarks {
  std::vector<BenchMark> marks; ///< from aloft to deck; the first and the last are the cut ends
  /// Bearing to bearing with both eyes formed and nothing buried: where the ends should hang at the
  /// dry fit. Of a wire with its terminals laid beside it. Nothing when something of it is missing.
  std::optional<MarkPlace> dry_fit;
  std::optional<CordLayout> cord = {}; ///< of a piece whose length is X
  /// Why there is no mark at a throat: "seat of thimble-16: throat not stated".
  std::vector<Remark> not_known;
};

/// The marks of a piece, laid out straight and cut, from one zero and from the other end: what is trimmed,
/// where the taper begins, where the tail goes into the standing part, where the standing part begins,
/// where the tail comes out of it; of a wire the depth in its terminals. The tail comes out as far inside
/// the throat as it is long, on rope that nothing has been drawn into yet: the splice shortens afterwards,
/// with the tail in it, and does not move the mark. Common practice, no source. An eye's loop is the
/// allowance plus crown to throat; where the throat of the seat is not stated the mark beyond the loop is
/// not known, and said so. `complete`: nothing is missing of the cut. Source: arithmetic of the terms of
/// the cut.
BenchMarks bench_marks(const LengthSum& body, const LengthSum& cut, bool complete, const EndUse& upper,
                       const EndUse& lower);

/// Where the bearings of a piece lie on the cord.
struct CordBearings {
  Length upper; ///< inside U
  Length lower; ///< inside L
};

/// The bearings of the line at stack[line] on the cord that keeps X: below U lie what the reading states
/// between U and the bearing aloft, and the stack down to the line; above L what it states there, and the
/// stack up to the line. A part of the stack without a length counts for nothing: the piece is incomplete
/// then, which is said of its cut. Source: arithmetic.
CordBearings cord_bearings(const Rig& rig, const Stay& stay, std::size_t line, const LengthSum& pin_to_pin);

/// Adds to the marks of a piece of unknown length their places on the cord. What an end uses lies past its
/// bearing, with the rope that its splice draws in; what the line does along its whole length lies past the
/// bearing below. So the marks from U and those from L make one piece: U to the upper cut end, X, and L to
/// the lower cut end add up to the cut. Source: arithmetic; that rope to be drawn in is laid out beyond the
/// bearing is common practice, no source.
void lay_on_cord(const CordBearings& bearings, const LengthSum& cut, const EndUse& upper,
                 const EndUse& lower, BenchMarks& marks);

} // namespace sheerpole
