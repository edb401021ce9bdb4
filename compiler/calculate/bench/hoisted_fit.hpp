#pragma once

#include "calculate/adjust/take_up.hpp"
#include "calculate/cut/piece.hpp"
#include "model/rig.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What is said about the hoisted dry fit.
enum class HangPhrase : std::uint16_t {
  // Of what the height is made up.
  hardware_below,
  less_gap,
  gap_above_pin,
  still_to_shrink,
  stretch_to_come,
  // Slips that would explain a difference.
  part_slip,
  gap_slip,
  offset_slip,
  eye_slip,
  contraction_slip,
  contractions_slip,
  hardware_slip,
  inch_as_24,
  inch_as_25,
  foot_slip,
  decimetre_slip,
  metre_slip,
  other_knot,
  // What to do.
  lay_out_longer,
  one_toggle_more,
  screw_gives_out,
  hangs_right,
  screw_takes_up,
  one_toggle_out,
  toggles_out,
  lay_out_shorter,
  // Why it is not known, and why it blocks.
  hardware_not_known,
  piece_not_known,
  gap_not_stated,
  gap_too_long,
  hung_high,
  hung_low
};
constexpr PhraseSubject subject_of(HangPhrase) {
  return PhraseSubject::hang;
}

/// What takes up how far a stay hangs off: in the order from too short to too long.
enum class HangMend : std::uint8_t {
  lay_out_longer,
  toggle_more,
  give_out,
  right,
  take_up,
  toggles_out,
  lay_out_shorter
};

/// One part of the height at which the lower bearing hangs.
struct HangTerm {
  HangPhrase name = HangPhrase::hardware_below;
  Length amount; ///< with its sign
};

/// How far off the height may be for one mend; the ends are those of how much higher it hangs than it
/// should, less than nothing when lower. Higher is shorter.
struct HangBand {
  std::optional<Length> from; ///< nothing: however low
  std::optional<Length> to;   ///< nothing: however high
  HangMend mend = HangMend::right;
  int toggles = 0; ///< of toggles_out: how many
};

/// A slip that moves the height by so much, up or down.
struct HangSlip {
  Length off;
  Remark words;
};

/// One hoisted dry fit as the file records it.
struct FoundHang {
  std::string date; ///< ISO 8601; may be empty
  std::string by;
  Length hung;        ///< from the pin at the deck up to the lower bearing
  Length should_hang; ///< with the gap of that day
  Length high;        ///< the first less the second: the stay is short by it, long when less than nothing
  HangBand band;      ///< into which it falls
  std::vector<HangSlip> slips; ///< that explain it, the likeliest first; two at most
  Span place;

  /// Whether the line may be opened: it hangs right, or the adjusters take up what is off.
  bool releases() const {
    return band.mend == HangMend::right || band.mend == HangMend::give_out ||
           band.mend == HangMend::take_up;
  }
};

/// The hoisted dry fit of one stay: its eyes seized, hung with all its hardware aloft from a halyard beside
/// the pin, nothing cut or opened. The pins are as far apart as they are, so the height at which the lower
/// bearing should hang does not depend on their distance: it is a number for a length X too.
///   height = hardware below the line - hoist gap - what the splices still take - (stretch to come,
///   negative)
/// Check (common practice, no source): 24 in of hardware, 4 in of gap: 20 in.
struct HoistedFit {
  std::vector<HangTerm> terms;        ///< the gap among them when it is stated
  std::optional<Sourced<Length>> gap; ///< as the stay states it
  std::optional<Length> without_gap;  ///< height above the pin at the deck, the gap left out
  Remark not_known;                   ///< why there is none
  Length right;                 ///< so far off it is right: limit hang-apart and what the gap may be off
  std::vector<HangBand> bands;  ///< from short to long
  std::vector<HangSlip> slips;  ///< the least first
  std::vector<FoundHang> found; ///< by date; the last counts

  std::optional<Length> hangs_at() const {
    return without_gap && gap ? std::optional(*without_gap - gap->value) : std::nullopt;
  }
  /// The dry fit that counts; null when none is recorded.
  const FoundHang* latest() const { return found.empty() ? nullptr : &found.back(); }
};

/// Nothing for a stay without a line. Source: arithmetic of the stack; common practice, no source.
std::optional<HoistedFit> hoisted_fit(const Rig& rig, StayId stay, const std::vector<Piece>& pieces,
                                      const std::vector<TakeUp>& adjusters);

/// What a mend asks for, as a remark.
Remark words_of(const HangBand& band);

/// Blocks the piece that takes what the others leave when the last dry fit does not release it.
void block_by_dry_fit(const Rig& rig, StayId stay, const HoistedFit& fit, std::vector<Piece>& pieces);

} // namespace sheerpole
