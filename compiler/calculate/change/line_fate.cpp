#include "calculate/change/line_fate.hpp"

#include "calculate/adjust/piece_history.hpp"
#include "calculate/geometry/junctions.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace sheerpole {

namespace {

constexpr Length same_diameter = Length::millimetres(0.005);

std::string line_name(const StayView& view, const Piece& piece) {
  return (*view.rig)[piece.material].name;
}

/// Whether an end is made otherwise than before: round another part, or by another splice.
bool remade(const Rig& old_rig, const PieceEnd& was, const Rig& new_rig, const PieceEnd& is) {
  return was.part_name(old_rig) != is.part_name(new_rig) ||
         was.splice_name(old_rig) != is.splice_name(new_rig);
}

/// What one end uses of the cut.
Length used_by(const Piece& piece, WhichEnd end) {
  Length sum;
  for (const Term& term : piece.cut.terms)
    if (term.is_of(end))
      sum += term.amount;
  return sum;
}

/// How a piece in hand fits: "52 mm too long".
Remark fits(Length too_long) {
  if (magnitude(too_long) < least_change)
    return ChangePhrase::right_length;
  return {too_long > Length{} ? ChangePhrase::too_long : ChangePhrase::too_short, {magnitude(too_long)}};
}

Remark at(bool upper, bool lower) {
  if (upper && lower)
    return ChangePhrase::at_both_ends;
  return {ChangePhrase::at_end, {upper ? WhichEnd::upper : WhichEnd::lower}};
}

/// Whether all is stated that tells one line from another whatever they are called.
bool says_what_it_is(const LineMaterial& line) {
  return !line.construction.text.empty() && !line.grade.empty() && line.diameter.value > Length{};
}

/// Why a line is another one: by what it is, whatever it is called: another kind, size, construction or
/// grade. What one of two files leaves open differs from nothing; where it is left open what they are, two
/// names are two lines. Nothing: it is the same line.
std::optional<Remark> another_line(const LineMaterial& was, const LineMaterial& is) {
  if (was.name != is.name && !(says_what_it_is(was) && says_what_it_is(is)))
    return Remark(ChangePhrase::another_line, {Words{is.name}, Words{was.name}});
  if (was.kind != is.kind)
    return Remark(ChangePhrase::another_kind, {Words{is.name}});
  if (magnitude(was.diameter.value - is.diameter.value) >= same_diameter)
    return Remark(ChangePhrase::another_size, {Words{is.name}, is.diameter.value, was.diameter.value});
  if (!was.construction.text.empty() && !is.construction.text.empty() &&
      !is_same_construction(was.construction, is.construction))
    return Remark(ChangePhrase::another_construction,
                  {Words{is.name}, Words{is.construction.text}, Words{was.construction.text}});
  if (!was.grade.empty() && !is.grade.empty() && was.grade != is.grade)
    return Remark(ChangePhrase::another_grade, {Words{is.name}, Words{is.grade}, Words{was.grade}});
  return std::nullopt;
}

/// Two batches that are both stated are two coils of rope: one piece was made of the one, and the file now
/// speaks of a piece of the other.
std::optional<Remark> another_batch(const StayView& was, const Piece& old_one, const StayView& is,
                                    const Piece& new_one) {
  const auto index = [](const Piece& piece) { return static_cast<std::size_t>(piece.number - 1); };
  const std::string before = batch_of(*was.rig, *was.derived, index(old_one));
  const std::string after = batch_of(*is.rig, *is.derived, index(new_one));
  if (before.empty() || after.empty() || before == after)
    return std::nullopt;
  return Remark(ChangePhrase::another_batch, {Words{after}, Words{before}});
}

/// By how much a piece that hangs there may be off before it is made anew.
Length least_to_remake(const Rig& rig) {
  return rig.boat.remake_tolerance ? std::max(rig.boat.remake_tolerance->value, least_change)
                                   : least_change;
}

/// A setting of an adjuster and how it is said.
struct ReachableSetting {
  Length length;
  Remark words;
};

/// The setting nearest to a length: any for a screw or a lashing, a hole for what is pinned in a row of
/// holes. Between two holes the stay is off by what is left, and that is said.
ReachableSetting nearest_setting(const Part& part, Length length) {
  if (!part.step || !part.shortest || part.step->value <= Length{})
    return {length, {ChangePhrase::set_to, {Words{part.name}, length}}};
  const double steps = std::round((length - part.shortest->value) / part.step->value);
  const Length at_hole = part.shortest->value + part.step->value * steps;
  const Count hole{static_cast<std::int64_t>(steps) + 1};
  const Length off = at_hole - length;
  if (magnitude(off) < least_change)
    return {at_hole, {ChangePhrase::pinned_in_hole, {Words{part.name}, hole, at_hole}}};
  return {at_hole, {ChangePhrase::between_holes, {Words{part.name}, hole, at_hole, Remarks{{fits(off)}}}}};
}

/// The old piece in the new stay, with nothing done to it but turning the one adjuster.
std::optional<Remark> hanging(const StayView& is, Length too_long) {
  if (is.derived->adjusters.size() != 1 || is.derived->pieces.size() != 1)
    return std::nullopt;
  const TakeUp& adjuster = is.derived->adjusters.front();
  // A piece that is longer has its adjuster shorter by as much.
  if (too_long > adjuster.to_tighten || -too_long > adjuster.to_slacken)
    return std::nullopt;
  const ReachableSetting setting = nearest_setting((*is.rig)[adjuster.part], adjuster.set.value - too_long);
  const Length longer = setting.length - adjuster.set.value;
  return Remark(ChangePhrase::hangs, {Remarks{{fits(too_long)}}, Remarks{{setting.words}},
                                      adjuster.to_tighten + longer, adjuster.to_slacken - longer});
}

/// Up to here a difference at a junction is shared out to first order; the error is of the order of its
/// square over the length of a leg, under 2 mm for a leg of 2 m. A choice of the project.
constexpr Length most_at_junction = Length::millimetres(50.0);

/// How much too long the one piece of a stay is, when it stays as it is and hangs where it hung; nothing
/// when that cannot be told.
std::optional<Length> too_long_as_it_hangs(const StayView& was, const StayView& is, StayId id) {
  const Stay& stay = (*is.rig)[id];
  const auto old_stay =
      std::find_if(was.all->stays.begin(), was.all->stays.end(),
                   [&](const DerivedStay& one) { return (*was.rig)[one.stay].name == stay.name; });
  const DerivedStay& now = is.all->stays[id.index()];
  if (old_stay == was.all->stays.end() || old_stay->pieces.size() != 1 || now.pieces.size() != 1)
    return std::nullopt;
  const Piece& before = old_stay->pieces.front();
  const Piece& after = now.pieces.front();
  if (another_line((*was.rig)[before.material], (*is.rig)[after.material]) ||
      remade(*was.rig, before.upper, *is.rig, after.upper) ||
      remade(*was.rig, before.lower, *is.rig, after.lower))
    return std::nullopt;
  const ChangedLength body = changed_length(before.body, after.body);
  if (!body.comparable || magnitude(body.difference()) > most_at_junction)
    return std::nullopt;
  return -body.difference();
}

/// The stays of a junction together: its place gives way, so that the adjuster of one takes what the others
/// differ by. Source: virtual work at the plate; a small difference of a leg counts with the share of the
/// tension that the leg carries.
std::optional<Remark> hanging_at_junction(const StayView& was, const StayView& is, Length too_long) {
  if (was.all == nullptr || is.all == nullptr)
    return std::nullopt;
  struct Member {
    StayId stay;
    double weight = 1.0;
  };
  for (const JunctionBalance& balance : junction_balances(*is.rig)) {
    if (!balance.not_checked.empty() || !balance.leg_share)
      continue;
    std::vector<Member> members{{balance.single, 1.0}};
    for (const JunctionLeg& leg : balance.loaded)
      members.push_back({leg.stay, leg.share.value_or(0.0)});
    if (std::none_of(members.begin(), members.end(),
                     [&](const Member& one) { return one.stay == is.derived->stay; }))
      continue;
    Length sum;
    bool others = false;
    for (const Member& one : members) {
      const auto off = too_long_as_it_hangs(was, is, one.stay);
      if (!off)
        return std::nullopt;
      sum += one.weight * *off;
      others = others || (one.stay != is.derived->stay && magnitude(*off) >= least_change);
    }
    if (!others && is.derived->adjusters.size() == 1)
      return std::nullopt; // its own adjuster is asked first
    for (const Member& one : members) {
      const DerivedStay& stay = is.all->stays[one.stay.index()];
      if (stay.adjusters.size() != 1 || one.weight <= 0.0)
        continue;
      const TakeUp& adjuster = stay.adjusters.front();
      const Length taken = sum * (1.0 / one.weight);
      if (taken <= adjuster.to_tighten && -taken <= adjuster.to_slacken)
        return Remark(ChangePhrase::hangs_by_junction,
                      {Remarks{{fits(too_long)}}, Words{(*is.rig)[balance.at].base},
                       Words{(*is.rig)[adjuster.part].name}, Words{(*is.rig)[one.stay].name},
                       adjuster.set.value - taken, adjuster.to_tighten - taken,
                       adjuster.to_slacken + taken});
    }
  }
  return std::nullopt;
}

/// A piece that is on record hangs there as long as it came out, not as long as it was to be. The record
/// may stand in either file: it was often written after the old one.
void take_as_made(const StayView& was, const Piece& piece, const StayView& is, PieceChange& change) {
  const bool moved = magnitude(change.body.difference()) >= least_change ||
                     magnitude(change.cut.difference()) >= least_change;
  if (!change.body.comparable || !moved)
    return; // what came out otherwise than it was to be is no change
  for (const StayView* view : {&was, &is}) {
    if (view->derived->pieces.size() < static_cast<std::size_t>(piece.number))
      continue;
    const PieceHistory history =
        piece_history(*view->rig, *view->derived, static_cast<std::size_t>(piece.number - 1));
    const PieceEntry* entry = history.last_measured();
    const auto longer = entry == nullptr ? std::nullopt : entry->longer();
    if (!longer || change.body.unknown_was)
      continue;
    // In the new file it is held against what it is to be now.
    const Length as_made =
        view->derived->pieces[static_cast<std::size_t>(piece.number - 1)].body.known() + *longer;
    change.cut.was += as_made - change.body.was;
    change.body.was = as_made;
    change.as_made = true;
    return;
  }
}

struct Remaking {
  const Piece* was = nullptr;
  const Piece* is = nullptr;
  bool upper = false; ///< that end has to be made anew whatever the length
  bool lower = false;
};

/// Rope: a splice is opened, more or less of the tail is cut off, and the eye is made again.
void judge_rope(const Remaking& made, Length too_long, PieceChange& change) {
  const Length over = change.cut.was - change.cut.is;
  const Remarks fit{{fits(too_long)}};
  if (over < -least_change) {
    change.fate = LineFate::replaced;
    change.why = {ChangePhrase::lacks_rope, {fit, -over}};
    return;
  }
  change.fate = LineFate::remade;
  const Remarks how{{too_long > least_change    ? ChangePhrase::shorter
                     : too_long < -least_change ? ChangePhrase::longer
                                                : ChangePhrase::as_long}};
  const Remarks where{
      {made.upper || made.lower ? at(made.upper, made.lower) : Remark(ChangePhrase::at_one_end)}};
  if (over > least_change)
    change.why = {ChangePhrase::respliced_and_trimmed, {fit, how, where, over}};
  else
    change.why = {ChangePhrase::respliced, {fit, how, where}};
}

/// Wire: the terminal goes with the wire that is in it, and a new one is put on.
void judge_wire(const Remaking& made, Length too_long, PieceChange& change) {
  const Length upper = used_by(*made.was, WhichEnd::upper);
  const Length lower = used_by(*made.was, WhichEnd::lower);
  const bool both = made.upper && made.lower;
  const bool at_lower = made.upper != made.lower ? made.lower : !made.upper && lower <= upper;
  const Length lost = both ? upper + lower : at_lower ? lower : upper;
  const Remarks fit{{fits(too_long)}};
  const Remarks where{{at(both || !at_lower, both || at_lower)}};
  const Length left = change.cut.was - lost - change.cut.is;
  if (left < -least_change) {
    change.fate = LineFate::replaced;
    change.why = {ChangePhrase::lacks_wire, {fit, where, -left}};
    return;
  }
  change.fate = LineFate::remade;
  change.why = {ChangePhrase::new_terminal, {fit, where, lost, left}};
}

void judge(const StayView& was, const StayView& is, const Remaking& made, PieceChange& change) {
  if (auto another = another_line((*was.rig)[made.was->material], (*is.rig)[made.is->material])) {
    change.fate = LineFate::replaced;
    change.why = std::move(*another);
    return;
  }
  if (auto another = another_batch(was, *made.was, is, *made.is)) {
    change.fate = LineFate::replaced;
    change.why = std::move(*another);
    return;
  }
  if (!change.body.comparable) {
    change.fate = LineFate::not_checked;
    change.why = ChangePhrase::length_not_known;
    return;
  }
  if (!made.was->missing.empty() || !made.is->missing.empty()) {
    change.fate = LineFate::not_checked;
    change.why = ChangePhrase::number_missing;
    return;
  }
  const Length too_long = *change.too_long;
  const bool same_ends = !made.upper && !made.lower;
  if (same_ends && magnitude(too_long) < least_change) {
    const bool same_cut = magnitude(change.cut.difference()) < least_change;
    change.fate = same_cut ? LineFate::stays : LineFate::remade;
    change.why = same_cut ? ChangePhrase::stays : ChangePhrase::made_by_other_numbers;
    return;
  }
  if (const Length least = least_to_remake(*is.rig);
      same_ends && magnitude(too_long) <= least && least > least_change) {
    change.fate = LineFate::stays;
    change.why = {ChangePhrase::within_tolerance, {Remarks{{fits(too_long)}}, least}};
    return;
  }
  if (same_ends) {
    auto found = hanging_at_junction(was, is, too_long);
    if (!found)
      found = hanging(is, too_long);
    if (found) {
      change.fate = LineFate::hangs;
      change.why = std::move(*found);
      return;
    }
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
  change.why = too_long > Length{} ? Remark(ChangePhrase::for_its_maker, {too_long})
                                   : Remark(ChangePhrase::too_short, {-too_long});
}

/// A DRAFT was never to be cut to, so the old file does not say how long the piece is that hangs there;
/// only a record of it would.
void take_no_draft_for_what_hangs(const StayView& was, const Piece& old_one, const StayView& is,
                                  const Piece& new_one, PieceChange& change) {
  const bool by_length = change.fate == LineFate::hangs || change.fate == LineFate::remade ||
                         (change.fate == LineFate::replaced &&
                          !another_line((*was.rig)[old_one.material], (*is.rig)[new_one.material]) &&
                          !another_batch(was, old_one, is, new_one));
  if (!by_length || change.as_made || was.is_draft == nullptr || !(*was.is_draft)(old_one) ||
      is_on_record(*was.rig, old_one) || is_on_record(*is.rig, new_one))
    return;
  change.fate = LineFate::not_checked;
  change.why = ChangePhrase::draft_not_on_record;
}

} // namespace

ChangedLength changed_length(const LengthSum& was, const LengthSum& is) {
  ChangedLength change{.unknown_was = was.unknown,
                       .unknown_is = is.unknown,
                       .was = was.known(),
                       .is = is.known(),
                       .comparable = was.unknown == is.unknown};
  // X is the same length only where it is the same mark.
  if (was.unknown && is.unknown)
    change.comparable = was.unknown_source.derivation == is.unknown_source.derivation;
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
                     .incomplete_was = !old_one.missing.empty(),
                     .incomplete_is = !new_one.missing.empty(),
                     .why = {}};
  take_as_made(was, old_one, is, change);
  if (change.body.comparable)
    change.too_long = -change.body.difference();
  judge(was, is,
        {&old_one, &new_one, remade(*was.rig, old_one.upper, *is.rig, new_one.upper),
         remade(*was.rig, old_one.lower, *is.rig, new_one.lower)},
        change);
  take_no_draft_for_what_hangs(was, old_one, is, new_one, change);
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
                     .incomplete_was = !piece.missing.empty(),
                     .incomplete_is = !piece.missing.empty(),
                     .fate = LineFate::new_piece,
                     .why = ChangePhrase::none_before};
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
                     .incomplete_was = !piece.missing.empty(),
                     .incomplete_is = !piece.missing.empty(),
                     .fate = LineFate::taken_off,
                     .why = ChangePhrase::hangs_no_more};
  return change;
}

} // namespace sheerpole
