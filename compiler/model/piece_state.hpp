#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace sheerpole {

/// How far a piece is from the knife: the one vocabulary for it. Papers, tables and data files say these
/// words and no others.
enum class PieceState : std::uint8_t {
  not_measured,  ///< nothing was read in place: good for ordering, no cut unless `cut-from: drawing` is
                 ///< stated
  not_yet,       ///< a DRAFT: what moves the cut is assumed, missing or contradicts itself
  measured_once, ///< read in place, with nothing to hold it against
  ways_differ,   ///< confirmed, and a drawing or a stated length says something else
  ready,         ///< a second run or a second way agrees within the limit `routes-apart`
  on_record      ///< it is cut, or further: its record says so
};

inline constexpr std::array<std::string_view, 6> piece_state_names{
    "not measured", "not yet", "measured once", "ways differ", "ready", "on record"};
static_assert(piece_state_names.size() == static_cast<std::size_t>(PieceState::on_record) + 1);

constexpr std::string_view name_of(PieceState state) {
  return piece_state_names[static_cast<std::size_t>(state)];
}

/// What comes of a piece that was measured once: the words of `second-measure` in the block `limits`.
enum class SecondMeasure : std::uint8_t {
  warn,  ///< it is said on every paper and by the check `measured-once`
  draft, ///< the piece is a DRAFT until it has been measured a second time
  off    ///< it is the state of the piece and nothing more
};

inline constexpr std::array<std::string_view, 3> second_measure_names{"warn", "draft", "off"};
static_assert(second_measure_names.size() == static_cast<std::size_t>(SecondMeasure::off) + 1);

constexpr std::string_view name_of(SecondMeasure second) {
  return second_measure_names[static_cast<std::size_t>(second)];
}

} // namespace sheerpole
