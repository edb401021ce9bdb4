#pragma once

#include "calculate/cut/end_use.hpp"

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
  trim_of_tail,
  taper_begins,
  throat_on_tail,
  throat_on_standing_part
};

/// One mark to be made on the bench, from either end of the piece as it is cut.
struct BenchMark {
  MarkKind kind = MarkKind::cut_end;
  WhichEnd end = WhichEnd::upper; ///< whose mark it is
  MarkPlace from_upper;
  MarkPlace from_lower;
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
  /// Why there is no mark at a throat: "seat of thimble-16: throat not stated".
  std::vector<Remark> not_known;
};

/// The marks of a piece, laid out straight and cut, from one zero and from the other end: what is trimmed,
/// where the taper begins, where the tail goes into the standing part, where the standing part begins; of a
/// wire the depth in its terminals. An eye's loop is the allowance plus crown to throat; where the throat
/// of the seat is not stated the mark beyond the loop is not known, and said so. `complete`: nothing is
/// missing of the cut. Source: arithmetic of the terms of the cut.
BenchMarks bench_marks(const LengthSum& body, const LengthSum& cut, bool complete, const EndUse& upper,
                       const EndUse& lower);

} // namespace sheerpole
