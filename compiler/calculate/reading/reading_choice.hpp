#pragma once

#include "model/rig.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace sheerpole {

/// What the rounding of sums may leave between two lengths that are the same.
inline constexpr Length rounding_of_sums = Length::millimetres(0.005);

/// Why a reading does not make the length.
enum class PassedOver : std::uint8_t {
  older,          ///< another one has a later date
  counted_out,    ///< another one is stated to count
  agrees,         ///< as good as the one taken, and says the same within the bounds
  contradicts,    ///< as good as the one taken, and says something else
  not_comparable, ///< as good as the one taken; one of the two is a cord without a number
};

/// A reading that says a length and does not make it.
struct OtherReading {
  std::size_t reading = 0; ///< of the readings of the stay
  PassedOver why = PassedOver::older;
  std::optional<Length> apart; ///< the one taken less this one; nothing where they cannot be compared
  Length allowed;              ///< by how much the two may differ
};

/// Which reading makes the length of a stay, and how the others stand to it.
struct ReadingChoice {
  std::optional<std::size_t> taken; ///< of the readings of the stay; nothing: there is none
  std::vector<OtherReading> others; ///< as good ones first, then the rest from the latest date on

  /// The reading that might as well have been taken and does not say the same; null when there is none. The
  /// length is a DRAFT then.
  const OtherReading* contradiction() const;
};

/// Chooses the reading that makes the length of a stay, whatever their order in the file: of those with
/// `counts: yes`, else of all, the one of the latest date. A reading without a date may be the latest, so
/// it stands beside the one that is. Among several that are left a cord without a number is taken before a
/// number, since nothing can be cut to it unseen; then those with a date, then tape, cord, old stay and
/// laser in this order, then the longer. They agree where they differ by no more than their stated bounds
/// together, or where one states none by the limit `routes-apart`; two cords without a number agree where
/// both carry the same mark. Source: common practice, no source.
ReadingChoice choose_reading(const Rig& rig, const Stay& stay);

/// Whether all that two readings state is the same, to the last word: likelier one that was typed twice
/// than two hoists. Source: a choice of the project.
bool word_for_word(const Reading& one, const Reading& other);

/// The limit `routes-apart`; where it is switched off, its usual value: a state of a piece needs one.
Length routes_apart(const Rig& rig);

} // namespace sheerpole
