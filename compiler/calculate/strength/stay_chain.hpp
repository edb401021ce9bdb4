#pragma once

#include "calculate/joints/joint.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"
#include "units/force.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What a link of the chain is.
enum class LinkKind {
  line,       ///< the stay's own line, and each of its splices
  other_line, ///< a piece of another material, and its splices
  part,       ///< a part, by its break-load
  lashing,    ///< the cord of a lashing
  pin,        ///< a pin in double shear
  hole        ///< the edge of a hole under its pin
};

/// A number that a link lacks.
struct UnstatedStrength {
  Remark property; ///< "break-load"
  Remark of;       ///< "tang-10"
};

/// One link of a stay.
struct ChainLink {
  LinkKind kind = LinkKind::part;
  std::size_t item = 0; ///< in the stack; of a pin the part with the jaw, of a hole that with the eye
  Remark name;          ///< "hmpe-9, long-bury aloft", "pin of tang-10"
  std::optional<Force> break_load;          ///< nothing: unknown, which is never taken for strong
  Remark how;                               ///< "6 passes x 1 leg x 15 kN x 50 %"
  std::vector<UnstatedStrength> not_stated; ///< not empty when it is unknown
  std::string meant; ///< why its part is meant to be the weakest, as the file says; empty when it is not
  /// A hole whose pressure is not stated is no link of its own: the break load of its part speaks for it.
  bool counted = true;
  Provenance provenance;
};

/// The links of a stay from aloft to deck. The stay carries no more than its weakest link.
struct StayChain {
  std::vector<ChainLink> links;
  std::optional<std::size_t> line;    ///< the weakest known link of the stay's own line, splices included
  std::optional<std::size_t> weakest; ///< the weakest known of all
  std::vector<std::size_t> unknown;   ///< those counted that are not known
};

/// The chain of break loads of a stay:
///   line: break load; each splice: line x efficiency of the splice;
///   part: its break-load; lashing: passes x legs counted (limit lashing-legs) x cord x knot-factor;
///   pin: pin-break-load, else double shear, 2 (pi/4) d^2 pin-stress;
///   hole: pin (in a bush: hole) diameter x thickness x bearing-stress.
/// A `pin` that lies in the joint goes before what the part with the jaw states. Threads, the cheeks of
/// jaws and the bend of a line round its seat are not in it. Source: statics; the factors are those that
/// the file states.
StayChain stay_chain(const Rig& rig, StayId stay, const std::vector<Joint>& joints);

} // namespace sheerpole
