#pragma once

#include "calculate/derived.hpp"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>

namespace sheerpole {

/// A derived length before and after. With `unknown` the length X lies in it.
struct ChangedLength {
  bool unknown_was = false;
  bool unknown_is = false;
  Length was;
  Length is;
  /// Both are known to the same X, so that they can be told apart by a number.
  bool comparable = true;

  Length difference() const { return is - was; }
};

/// Lengths that differ by less than this are the same: half of the last printed digit.
inline constexpr Length least_change = Length::millimetres(0.05);

/// What becomes of a piece that hangs there, when it was made as the old rig says.
enum class LineFate {
  stays,      ///< nothing about it changes
  hangs,      ///< as it is, with its adjuster set otherwise
  remade,     ///< out of itself: an end is opened and spliced anew, or cut and given a new terminal
  replaced,   ///< by a new piece: too short, or of another line
  new_piece,  ///< there was none
  taken_off,  ///< the stay is gone
  not_checked ///< a length is missing that would tell
};

/// What is said of a line that hangs there, and of what is stated otherwise.
enum class ChangePhrase : std::uint16_t {
  // How the old piece fits.
  right_length,
  too_long,
  too_short,
  // What becomes of it.
  stays,
  within_tolerance,
  made_by_other_numbers,
  hangs,
  hangs_by_junction,
  set_to,
  pinned_in_hole,
  between_holes,
  respliced,
  respliced_and_trimmed,
  lacks_rope,
  new_terminal,
  lacks_wire,
  for_its_maker,
  // How a splice is made anew.
  shorter,
  longer,
  as_long,
  // Where.
  at_one_end,
  at_end,
  at_both_ends,
  // Another line.
  another_line,
  another_size,
  another_construction,
  another_grade,
  another_kind,
  another_batch,
  // Not to be told.
  length_not_known,
  number_missing,
  draft_not_on_record,
  none_before,
  hangs_no_more,
  // What is stated: of what, and which property.
  named,
  piece_at_stage,
  reading_by,
  reading_by_on,
  passage_at,
  line_in_stack,
  of_part,
  spare_bury_of,
  end_of_part,
  of_end_of_part
};
constexpr PhraseSubject subject_of(ChangePhrase) {
  return PhraseSubject::change;
}

/// One piece of rope or wire before and after.
struct PieceChange {
  std::string name;     ///< `cap-shroud.port`; `backstay-upper 2 of 3`
  std::string line_was; ///< name of the material; empty: there was no such piece
  std::string line_is;
  ChangedLength body; ///< as made before, and as it has to be
  ChangedLength cut;
  std::optional<Length> too_long; ///< of the old piece over the new body; below nothing it is too short
  bool incomplete_was = false;    ///< an input of the cut was missing: what is known of it is no cut
  bool incomplete_is = false;
  bool as_made = false; ///< `was` is as long as the piece came out, by its record
  LineFate fate = LineFate::not_checked;
  Remark why; ///< "52 mm too long; can be re-spliced: ..."
};

/// Whether a piece of a rig was never to be cut as she is described: a DRAFT.
using IsDraft = std::function<bool(const Piece&)>;

/// A stay with what was worked out of it. Points into a rig.
struct StayView {
  const Rig* rig = nullptr;
  const Stay* stay = nullptr;
  const DerivedStay* derived = nullptr;
  const Derived* all = nullptr;      ///< of the same rig, for stays that meet this one at a junction
  const IsDraft* is_draft = nullptr; ///< of the same rig; null: nobody knows
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
