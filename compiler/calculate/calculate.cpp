#include "calculate/calculate.hpp"

#include "calculate/adjust/piece_history.hpp"
#include "calculate/cut/cut_phrase.hpp"
#include "calculate/cut/line_ends.hpp"
#include "calculate/joints/crown.hpp"
#include "calculate/joints/joint_comparison.hpp"
#include "calculate/length/body.hpp"
#include "calculate/length/measurement.hpp"
#include "calculate/length/pin_to_pin.hpp"
#include "calculate/uncertainty/rig_uncertainty.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// Lengths, pieces and adjusters.
DerivedStay lengths_of(const Rig& rig, StayId id) {
  const Stay& stay = rig[id];
  PinToPin length = pin_to_pin(rig, stay);
  const Hardware parts = hardware(rig, stay);
  DerivedStay result;
  result.stay = id;
  result.route = length.route;
  result.body = body(length.sum, parts);
  result.pieces = pieces_of(rig, id, length.sum, parts);
  result.measurement = measurement_of(rig, stay, length);
  result.readings = std::move(length.readings);
  result.pin_to_pin = std::move(length.sum);
  result.other_routes = std::move(length.other_routes);
  result.not_corrected = std::move(length.not_corrected);
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (auto adjuster = take_up(rig, stay, i)) {
      adjuster->stay = id;
      result.adjusters.push_back(std::move(*adjuster));
    }
  return result;
}

/// The cut of the piece that takes what the others leave, less what is only marked off on it: a bury that
/// is longer by a hand moves no bearing, and is no doubt about the stay.
Length cut_of(const Rig& rig, StayId id) {
  // Trials come here by the thousand, so nothing else of the stay is worked out.
  const Stay& stay = rig[id];
  const LengthSum pins = pin_to_pin(rig, stay).sum;
  const Hardware parts = hardware(rig, stay);
  const std::vector<std::size_t> lines = lines_of(stay);
  const bool has_rest = std::any_of(lines.begin(), lines.end(),
                                    [&](std::size_t line) { return !stay.stack[line].line_length; });
  if (!has_rest)
    return body(pins, parts).known();
  const std::vector<Piece> pieces = pieces_of(rig, id, pins, parts);
  Length sum;
  for (std::size_t i = 0; i < pieces.size(); ++i)
    if (!stay.stack[lines[i]].line_length) {
      for (const Term& term : pieces[i].cut.terms)
        if (!term.marked_off())
          sum += term.amount;
      break;
    }
  return sum;
}

/// Nothing is cut to a length of which two ways say something else altogether.
void block_by_ways(const Rig& rig, const Stay& stay, DerivedStay& derived) {
  for (const RouteComparison& other : derived.other_routes) {
    const Length taken = derived.pin_to_pin.known();
    if (!other.speaks_of_now() || other.is_assumed() || !far_apart(rig, taken, other.length))
      continue;
    for (Piece& piece : derived.pieces)
      piece.blocked.push_back({{CutPhrase::ways_far_apart, {taken, other.length}},
                               CutPhrase::ways_far_apart_mend,
                               other.provenance.place.value_or(stay.place)});
    return;
  }
}

/// Nothing is cut on a thimble whose length says that its crown lies where its shape says that it does not.
void block_by_crowns(const Rig& rig, const Stay& stay, DerivedStay& derived) {
  const std::vector<std::size_t> lines = lines_of(stay);
  for (const Joint& joint : derived.joints) {
    const auto crown = crown_at(rig, stay, joint);
    if (!crown || !crown->on_the_wrong_side())
      continue;
    const MissingInput block{
        {CutPhrase::crown_block, {crown->part, crown->length.value, *crown->beyond, crown->short_by()}},
        {CutPhrase::crown_mend, {crown->part}},
        crown->length.provenance.place.value_or(rig[crown->part].place)};
    for (std::size_t i = 0; i < derived.pieces.size(); ++i)
      // The length of a line that is stated does not come of its thimbles; the same thimble at both ends is
      // one mistake.
      if (auto& blocked = derived.pieces[i].blocked;
          !stay.stack[lines[i]].line_length &&
          std::none_of(blocked.begin(), blocked.end(),
                       [&](const MissingInput& earlier) { return earlier.what == block.what; }))
        blocked.push_back(block);
  }
}

/// Nothing is cut that its adjusters could not put right if its eyes are as their seats say.
void block_by_eyes(const Rig& rig, const Stay& stay, DerivedStay& derived) {
  const auto off = eyes_too_long(rig, stay);
  if (!off || derived.adjusters.empty() || derived.pieces.size() != 1)
    return;
  Length room;
  for (const TakeUp& adjuster : derived.adjusters)
    room += *off > Length{} ? adjuster.to_tighten : adjuster.to_slacken;
  constexpr Length rounding = Length::millimetres(0.001);
  if (magnitude(*off) <= room + rounding)
    return;
  derived.pieces.front().blocked.push_back(
      {{*off > Length{} ? CutPhrase::eyes_long_block : CutPhrase::eyes_short_block,
        {magnitude(*off), room}},
       CutPhrase::eyes_mend,
       stay.place});
}

/// What follows from the lengths.
void add_behaviour(const Rig& rig, LooseParts& loose, DerivedStay& derived) {
  const Stay& stay = rig[derived.stay];
  const Reading* reading = derived.route == LengthRoute::reading && derived.readings.taken
                               ? &stay.readings[*derived.readings.taken]
                               : nullptr;
  for (RouteComparison& other : derived.other_routes)
    if (!other.expected_x) // else there is no difference to explain
      other.slips =
          likely_slips(rig, stay, reading, other.other, derived.pin_to_pin.known(), other.difference);
  block_by_ways(rig, stay, derived);
  derived.joints = joints_of(rig, derived.stay);
  for (Joint& joint : derived.joints)
    compare_joint(rig, joint);
  block_by_crowns(rig, stay, derived);
  block_by_eyes(rig, stay, derived);
  derived.chain = stay_chain(rig, derived.stay, derived.joints);
  derived.thermal = thermal_table(rig, stay, derived.pieces, usual_temperatures());
  derived.tensions = tension_estimates(rig, derived.stay);
  derived.sag = sag(rig, stay);
  derived.replacement = replacement(rig, stay, derived.pieces);
  derived.play = play_of(rig, derived.stay, derived.adjusters, loose);
  derived.fits = fit_stack(rig, derived.stay, derived.pin_to_pin, loose);
  derived.first_fit = first_fit(stay, derived.pieces, derived.adjusters);
  if (derived.first_fit)
    block_by_first_fit(stay, *derived.first_fit, derived.pieces);
  derived.hoisted_fit = hoisted_fit(rig, derived.stay, derived.pieces, derived.adjusters);
  if (derived.hoisted_fit)
    block_by_dry_fit(rig, derived.stay, *derived.hoisted_fit, derived.pieces);
  // Hung in its place it was held against the pins themselves.
  const FoundHang* hung = derived.hoisted_fit ? derived.hoisted_fit->latest() : nullptr;
  Measurement& measured = derived.measurement;
  if (measured.in_place() && !measured.settled() && hung != nullptr && hung->band.mend == HangMend::right)
    measured.confirmed = Confirmation{ConfirmedBy::dry_fit, {}, magnitude(hung->high)};
}

bool has_in_hand(const DerivedStay& stay) {
  return std::any_of(stay.pieces.begin(), stay.pieces.end(),
                     [](const Piece& piece) { return piece.in_hand.has_value(); });
}

std::vector<DerivedPosition> positions_of(const Rig& rig) {
  std::vector<DerivedPosition> result;
  for (std::size_t state = 0; state < rig.states.size(); ++state) {
    const std::vector<StatePosition>& positions = rig.states[state].positions;
    for (std::size_t i = 0; i < positions.size(); ++i)
      result.push_back(state_position(rig, state, i));
  }
  return result;
}

} // namespace

Derived calculate(const Rig& rig, unsigned threads, DoubtFor reader) {
  Derived derived;
  derived.stays.reserve(rig.stays.size());
  for (std::size_t i = 0; i < rig.stays.size(); ++i)
    derived.stays.push_back(lengths_of(rig, StayId{static_cast<std::uint32_t>(i)}));
  LooseParts loose(rig);
  for (DerivedStay& stay : derived.stays)
    add_behaviour(rig, loose, stay);
  if (std::any_of(derived.stays.begin(), derived.stays.end(), has_in_hand))
    add_uncertainty(with_shared_bury(rig, derived), cut_of, derived, threads, reader);
  else
    add_uncertainty(rig, cut_of, derived, threads, reader);
  for (DerivedStay& stay : derived.stays)
    stay.account = account(rig, rig[stay.stay], stay.pieces, stay.adjusters, stay.uncertainty,
                           stay.first_fit, came_out(rig, stay));
  derived.positions = positions_of(rig);
  derived.load_screenings = load_screenings(rig);
  return derived;
}

} // namespace sheerpole
