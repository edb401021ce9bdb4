#pragma once

#include "backend/backend.hpp"
#include "backend/diagram/symbols/part_symbol.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A derived length in whole millimetres, with thin blanks: "11\u202f382"; with an unknown X: "X", "X +
/// 12", "X - 260". Rounded once, here.
std::string printed_distance(bool unknown, Length known);
std::string printed_sum(const LengthSum& sum);

/// Length of a part in millimetres: whole, or with one decimal where the stated length is not.
std::string printed_part(Length length);

/// Where an adjuster stands in its range, ready to print.
struct StripAdjuster {
  double share = 0.0;   ///< of the range, 0 at the shortest
  std::string shortest; ///< "60"
  std::string longest;  ///< "260"
  std::string tighten;  ///< "to tighten 100 mm, 12.5 turns"
  std::string slacken;
  bool operator==(const StripAdjuster&) const = default;
};

/// One item of the stack.
struct StripCell {
  std::optional<PartKind> kind; ///< nothing for a piece of line
  PartLook look = {};           ///< of a part: what its symbol shows
  int count = 1;
  bool boat_fitting = false;
  bool line = false;
  LineMaterial::Kind line_kind = LineMaterial::Kind::wire;
  std::string title;
  std::string
      length; ///< "82 mm", "set to 160 mm", "X - 260 mm", "length not stated"; empty for a boat fitting
  std::optional<StripAdjuster> adjuster;
  bool pinned_above = false; ///< a pin joins it to the item before it
  bool operator==(const StripCell&) const = default;
};

/// Everything printed of one stay, or of a pair that does not differ.
struct Strip {
  std::string name; ///< `cap-shroud.port`; `cap-shroud` for a pair
  std::string title;
  std::string sides;   ///< "", "port", "port and starboard alike"
  std::string summary; ///< "body 11382 mm, 12-strand HMPE heat-set 9 mm"; with an unknown X also what X is
  std::string pin_to_pin;
  bool draft = false;
  std::string upper_end = {}; ///< one word for each end
  std::string lower_end = {};
  std::vector<StripCell> cells;
  std::vector<std::string>
      distances; ///< from the upper pin, before the first cell, then after each; "" where none is printed
};

/// The strips of the rig in the order of its stays; the second of a pair without a difference is left out.
std::vector<Strip> strip_contents(const CheckedRig& checked);

} // namespace sheerpole
