#pragma once

#include "calculate/tune/tune_model.hpp"
#include "statics/quantity.hpp"
#include "statics/solver.hpp"

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

namespace sheerpole {

/// Something of a standing rig that is told: a number in N or mm.
struct TuneQuantity {
  enum class Kind {
    tension,        ///< of a stay, in its leg at the deck
    head_aft,       ///< of a mast's head, from its drawn place
    head_starboard, ///< the same
    bend_forward,   ///< of a mast at a spreader, from the straight line between heel and head
    bend_starboard, ///< the same
  };
  Kind kind = Kind::tension;
  std::size_t number = 0; ///< in TuneModel::stays or TuneModel::spars
  std::size_t place = 0;  ///< of a bend: in TuneSpar::spreaders
  statics::Quantity what;
};

/// A rig that stands at the dock, or why it does not.
struct TunedRig {
  TuneModel model;
  std::unique_ptr<statics::Solver> solver; ///< null while something is lacking
  statics::State state;
  std::vector<Remark> trouble; ///< empty: it stands as `state` says
  std::vector<TuneQuantity> quantities;

  bool stands() const { return solver != nullptr && trouble.empty(); }
  /// Of each quantity in a state, N or mm.
  std::vector<double> values(const statics::State& at) const;
};

/// How the rig stands: with the unstressed lengths that are stated, fitted to the tensions that were read,
/// or to the dock tensions where nothing else is known (statics/measured_state.hpp). A line that was seized
/// under tension is looked at free to run first; then each leg keeps the length that it has there. Takes
/// some milliseconds; nothing asks for it but the tune sheet and its tables.
TunedRig tuned_rig(const Rig& rig, const Derived& derived, const MovedBounds& moved = {});

/// Why a search for a state did not end in one; empty when it did.
Remark trouble_of(const Rig& rig, const TuneModel& model, const statics::State& state);

/// The name of the point that a node is at, without its side; else of the spar.
std::string name_of_node(const Rig& rig, const TuneModel& model, statics::NodeId node);

} // namespace sheerpole
