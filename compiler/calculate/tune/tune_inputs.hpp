#pragma once

#include "calculate/tune/tune_phrase.hpp"
#include "model/fact_name.hpp"
#include "model/rig.hpp"

#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

inline constexpr double mm_per_m = 1000.0;

/// One thing that the balance of a rig rests on, or asks for.
struct TuneInput {
  Remark of;               ///< "mast", "line of cap-shroud"
  std::string property;    ///< its name in the language
  std::string value{};     ///< as written; empty: it is not stated
  Provenance provenance{}; ///< of what is stated
  bool in_bounds = false;  ///< a `±` of it is stated
};

/// Bounds that are put in, each by how many of itself upwards.
struct MovedBound {
  BoundId bound;
  double by = 1.0;
};
using MovedBounds = std::vector<MovedBound>;

/// Reads what the balance of a rig rests on, keeps account of it and of what is lacking. Values are in
/// coherent SI units. With bounds that are moved every value is what it would be if these inputs were off
/// so.
class TuneInputs {
public:
  TuneInputs(const Rig& rig, MovedBounds moved) : rig_(rig), moved_(std::move(moved)) {}

  /// A number that is needed; nothing, and listed as not stated, when it is not there.
  std::optional<double> needed(const Remark& of, const std::vector<Particular>& facts, FactName name);
  /// A number that may be left out.
  std::optional<double> if_stated(const Remark& of, const std::vector<Particular>& facts, FactName name);
  /// A word that is needed; empty, and listed, when it is not there.
  std::string needed_word(const Remark& of, const std::vector<Particular>& facts, FactName name);
  /// A word that a type keeps itself.
  bool needed_word(const Remark& of, FactName name, const std::string& word);
  /// EA of a line in newtons: as stated, else modulus times metallic area.
  std::optional<double> axial_stiffness(MaterialId line);
  /// A value as it is with the moved bounds.
  double moved(double value, const Influences& influences);

  /// What cannot be mended by stating one property.
  void lacks(Remark what);
  void note(Remark what);

  std::vector<TuneInput> inputs;
  std::vector<Remark> lacking, notes;
  std::set<BoundId> bounds; ///< on which what was read rests
  /// Whether something is not stated or lacking.
  bool incomplete() const;

private:
  TuneInput& listed(const Remark& of, FactName name);

  const Rig& rig_;
  MovedBounds moved_;
};

} // namespace sheerpole
