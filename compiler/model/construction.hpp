#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// How the strands of a line lie to each other.
enum class Lay {
  unknown,
  laid,         ///< twisted: three-strand rope
  braided,      ///< a single braid; hollow when it has eight or more strands and no core is named
  double_braid, ///< a cover over a core
  parallel,     ///< parallel fibres or strands in a cover
  strand,       ///< wire: strands of wires, 1x19, 7x7
  solid,        ///< rod
  links         ///< chain
};

/// What its fibres are.
enum class Fibre {
  unknown,
  hmpe,
  aramid,
  liquid_crystal_polymer,
  polyester,
  polyamide,
  polypropylene,
  pbo,
  metal
};

/// The construction of a line, read once from its text when the rig is put together.
struct Construction {
  std::string text;                        ///< as written
  std::optional<int> strands;              ///< of a rope, or strands of a wire: 12, 1
  std::optional<int> wires_in_strand = {}; ///< of a wire: 19
  Lay lay = Lay::unknown;
  Fibre fibre = Fibre::unknown;
  bool heat_set = false; ///< stated as heat-set, and not as not heat-set
  /// Whether a tail can be buried in it: false for what is laid, solid or filled, nothing when the text
  /// does not tell.
  std::optional<bool> hollow = {};
};

/// Reads "12-strand HMPE, not heat-set", "1x19", "3-strand polyester". What a text does not say stays
/// unknown.
Construction read_construction(std::string_view text);

/// Whether two texts say the same of a line: the same words, in whatever order, signs and letters. A word
/// more, such as "compacted", may be another wire, so it is another construction.
bool is_same_construction(const Construction& a, const Construction& b);

} // namespace sheerpole
