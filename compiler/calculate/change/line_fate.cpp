#include "calculate/change/line_fate.hpp"

#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

std::string line_name(const StayView& view, const Piece& piece) {
  return (*view.rig)[piece.material].name;
}

/// Whether an end is made otherwise than before: round another part, or by another splice.
bool remade(const PieceEnd& was, const PieceEnd& is) {
  return was.part != is.part || was.splice != is.splice;
}

/// What one end uses of the cut, by the names that its terms have.
Length used_by(const Piece& piece, std::string_view where) {
  Length sum;
  for (const Term& term : piece.cut.terms)
    if (!term.of_standing_part && term.name.ends_with(where))
      sum += term.amount;
  return sum;
}

/// "aloft", "below", "aloft and below", or nothing.
std::string ends_words(bool aloft, bool below) {
  return aloft && below ? "aloft and below" : aloft ? "aloft" : below ? "below" : "";
}

/// The old piece in the new stay, with nothing done to it but turning the one adjuster.
std::optional<std::string> hanging_words(const StayView& is, Length too_long) {
  if (is.derived->adjusters.size() != 1 || is.derived->pieces.size() != 1)
    return std::nullopt;
  const TakeUp& adjuster = is.derived->adjusters.front();
  // A piece that is longer has its adjuster shorter by as much.
  if (too_long > adjuster.to_tighten || -too_long > adjuster.to_slacken)
    return std::nullopt;
  return "set " + (*is.rig)[adjuster.part].name + " to " + length_text(adjuster.set.value - too_long) +
         ", which leaves " + length_text(adjuster.to_tighten - too_long) + " to tighten and " +
         length_text(adjuster.to_slacken + too_long) + " to slacken";
}

struct Remaking {
  const Piece* was = nullptr;
  const Piece* is = nullptr;
  bool aloft = false; ///< that end has to be made anew whatever the length
  bool below = false;
};

/// Rope: a splice is opened, more or less of the tail is cut off, and the eye is made again.
void judge_rope(const Remaking& made, Length too_long, PieceChange& change) {
  const Length over = made.was->cut.known() - made.is->cut.known();
  std::string where = ends_words(made.aloft, made.below);
  if (where.empty())
    where = "at one end";
  std::string words = magnitude(too_long) < least_change ? "of the right length"
                      : too_long > Length{}              ? length_text(too_long) + " too long"
                                                         : length_text(-too_long) + " too short";
  if (over < -least_change) {
    change.fate = LineFate::replaced;
    change.words = words + "; spliced anew it lacks " + length_text(-over) + " of rope";
    return;
  }
  change.fate = LineFate::remade;
  words += "; can be re-spliced";
  words += too_long > least_change ? " shorter" : too_long < -least_change ? " longer" : "";
  words += " " + where + ": open the splice, do not cut the eye off";
  if (over > least_change)
    words += "; " + length_text(over) + " more than before is trimmed";
  change.words = words + ". Measure the piece at its tension before it is opened";
}

/// Wire: the terminal goes with the wire that is in it, and a new one is put on.
void judge_wire(const Remaking& made, Length too_long, PieceChange& change) {
  const Length aloft = used_by(*made.was, "aloft");
  const Length below = used_by(*made.was, "below");
  const bool one_end = made.aloft != made.below;
  const bool lower = one_end ? made.below : !made.aloft && below <= aloft;
  const Length lost = made.aloft && made.below ? aloft + below : lower ? below : aloft;
  const std::string where = made.aloft && made.below ? "aloft and below" : lower ? "below" : "aloft";
  const std::string words = magnitude(too_long) < least_change ? "of the right length"
                            : too_long > Length{}              ? length_text(too_long) + " too long"
                                                               : length_text(-too_long) + " too short";
  const Length left = made.was->cut.known() - lost - made.is->cut.known();
  if (left < -least_change) {
    change.fate = LineFate::replaced;
    change.words =
        words + "; cut off at its terminal " + where + " it lacks " + length_text(-left) + " for a new one";
    return;
  }
  change.fate = LineFate::remade;
  change.words = words + "; can be cut and given a new terminal " + where + ": the old one is lost with " +
                 length_text(lost) + " of wire, and " + length_text(left) + " is cut off besides";
}

void judge(const StayView& is, const Remaking& made, PieceChange& change) {
  if (change.line_was != change.line_is) {
    change.fate = LineFate::replaced;
    change.words = change.line_is + " in place of " + change.line_was;
    return;
  }
  if (!change.body.comparable) {
    change.fate = LineFate::not_checked;
    change.words = "its length is not known in both to the same mark";
    return;
  }
  if (!made.was->missing.empty() || !made.is->missing.empty()) {
    change.fate = LineFate::not_checked;
    change.words = "a number is missing on which its cut rests";
    return;
  }
  const Length too_long = *change.too_long;
  const bool same_ends = !made.aloft && !made.below;
  if (same_ends && magnitude(too_long) < least_change) {
    const bool same_cut = magnitude(change.cut.difference()) < least_change;
    change.fate = same_cut ? LineFate::stays : LineFate::remade;
    change.words = same_cut ? "stays as it is" : "of the right length; its ends are made by other numbers";
    return;
  }
  if (same_ends)
    if (const auto hanging = hanging_words(is, too_long)) {
      change.fate = LineFate::hangs;
      change.words = (too_long > Length{} ? length_text(too_long) + " too long; "
                                          : length_text(-too_long) + " too short; ") +
                     *hanging;
      return;
    }
  switch ((*is.rig)[made.is->material].kind) {
  case LineMaterial::Kind::rope:
    judge_rope(made, too_long, change);
    return;
  case LineMaterial::Kind::wire:
    judge_wire(made, too_long, change);
    return;
  case LineMaterial::Kind::rod:
  case LineMaterial::Kind::chain:
    break;
  }
  change.fate = LineFate::not_checked;
  change.words = too_long > Length{}
                     ? length_text(too_long) + " too long; whether it can be shortened is for "
                                               "whoever makes it"
                     : length_text(-too_long) + " too short";
}

} // namespace

std::string_view name_of(LineFate fate) {
  switch (fate) {
  case LineFate::stays:
    return "stays as it is";
  case LineFate::hangs:
    return "hangs as it is";
  case LineFate::remade:
    return "can be remade";
  case LineFate::replaced:
    return "is to be replaced";
  case LineFate::new_piece:
    return "is new";
  case LineFate::taken_off:
    return "comes off";
  case LineFate::not_checked:
    break;
  }
  return "not checked";
}

ChangedLength changed_length(const LengthSum& was, const LengthSum& is) {
  ChangedLength change{.unknown_was = was.unknown,
                       .unknown_is = is.unknown,
                       .was = was.known(),
                       .is = is.known(),
                       .comparable = was.unknown == is.unknown};
  // X is the same length only where it is the same mark.
  if (was.unknown && is.unknown)
    change.comparable = was.unknown_source.note == is.unknown_source.note;
  return change;
}

PieceChange compare_piece(const StayView& was, const StayView& is, std::size_t i) {
  const Piece& old_one = was.derived->pieces[i];
  const Piece& new_one = is.derived->pieces[i];
  PieceChange change{.name = new_one.name,
                     .line_was = line_name(was, old_one),
                     .line_is = line_name(is, new_one),
                     .body = changed_length(old_one.body, new_one.body),
                     .cut = changed_length(old_one.cut, new_one.cut),
                     .too_long = {},
                     .words = {}};
  if (change.body.comparable)
    change.too_long = -change.body.difference();
  judge(is,
        {&old_one, &new_one, remade(old_one.upper, new_one.upper), remade(old_one.lower, new_one.lower)},
        change);
  return change;
}

PieceChange new_piece(const StayView& is, std::size_t i) {
  const Piece& piece = is.derived->pieces[i];
  PieceChange change{.name = piece.name,
                     .line_was = {},
                     .line_is = line_name(is, piece),
                     .body = changed_length(piece.body, piece.body),
                     .cut = changed_length(piece.cut, piece.cut),
                     .too_long = {},
                     .fate = LineFate::new_piece,
                     .words = "there was none"};
  return change;
}

PieceChange gone_piece(const StayView& was, std::size_t i) {
  const Piece& piece = was.derived->pieces[i];
  PieceChange change{.name = piece.name,
                     .line_was = line_name(was, piece),
                     .line_is = {},
                     .body = changed_length(piece.body, piece.body),
                     .cut = changed_length(piece.cut, piece.cut),
                     .too_long = {},
                     .fate = LineFate::taken_off,
                     .words = "it hangs no more"};
  return change;
}

} // namespace sheerpole
