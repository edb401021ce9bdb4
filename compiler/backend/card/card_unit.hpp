#pragma once

#include "backend/tenths.hpp"
#include "model/rig.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace sheerpole {

/// A length as a card prints it: whole parts of its unit, so that printed lengths add up.
struct CardLength {
  bool unknown = false;   ///< to be added to X
  std::int64_t parts = 0; ///< of CardUnit::part()

  friend CardLength operator+(CardLength a, CardLength b) {
    return {a.unknown || b.unknown, a.parts + b.parts};
  }
  friend CardLength operator-(CardLength a, CardLength b) {
    return {a.unknown != b.unknown, a.parts - b.parts};
  }
};

/// The one unit of a card, and what its lengths are rounded to.
struct CardUnit {
  enum class Kind { millimetres, inches, feet_and_inches };
  Kind kind = Kind::millimetres;
  std::int64_t step = 10; ///< parts that every length is a whole multiple of: 1 mm, 1/16 in
  std::string shop;       ///< whose unit it is; empty: nobody's, so millimetres
  std::string remark;     ///< why something that a shop states is not used; empty: nothing

  /// 0.1 mm, or 1/64 in.
  Length part() const;
  /// Rounds half away from zero to the step.
  CardLength round(Length length, bool unknown = false) const;
  /// The same of a total of printed rows. The cut list has its feet and inches of this number as well: of
  /// the exact length a card would have another one where it lies at half a step.
  CardLength round(Tenths printed, bool unknown = false) const { return round(printed.length(), unknown); }
  /// Away from zero to the step: what is known to so much is not said to be known better.
  CardLength round_outwards(Length length) const;
};

/// The unit of the rig's cards: that of the shop for which the rig is restated, else that of the only shop
/// that the files state, else millimetres to 1 mm. A `round-to` that the unit can not print exactly is not
/// used, which the remark says.
CardUnit card_unit(const Rig& rig);

/// Without the name of the unit: "12\u202f998" with a thin blank, "X + 1003", "X"; inches bear their marks:
/// `511 3/4"`.
std::string card_text(const CardUnit& unit, CardLength length);
/// For use in a sentence: "12\u202f998 mm", `42' 7 3/4"`.
std::string card_amount(const CardUnit& unit, CardLength length);
std::string card_amount(const CardUnit& unit, Length length);

/// What lengths are in, and rounded to: "millimetres to 1 mm", `inches to 1/16" (shop loft)`.
std::string unit_words(const CardUnit& unit);

/// In a note to a number of the card: in the unit of the card, millimetres as exact as any sentence has
/// them, "57.15 mm".
std::string note_amount(const CardUnit& unit, Length length);

} // namespace sheerpole
