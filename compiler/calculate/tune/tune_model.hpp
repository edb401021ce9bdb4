#pragma once

#include "calculate/derived.hpp"
#include "calculate/tune/tune_inputs.hpp"
#include "model/rig.hpp"
#include "statics/structure.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerpole {

/// By what the unstressed length of a stay is known.
enum class LengthKnownBy {
  nothing,
  taken_up,     ///< what its adjuster has taken is stated
  reading,      ///< its tension was read
  dock_tension, ///< only what it is to have is stated
};

/// A stay in the balance of the rig.
struct TuneStay {
  StayId stay;
  std::vector<statics::StayId> legs; ///< from aloft to deck; one where the line is free to run
  /// Clamped at its tips when all its legs had one tension.
  bool seized_under_tension = false;
  std::size_t screwed = 0; ///< the leg whose length the adjuster takes
  LengthKnownBy known_by = LengthKnownBy::nothing;
  double taken_mm = 0.0;                ///< of `taken_up`: less than the drawn path
  std::optional<double> taken_bound_mm; ///< its ±
  struct Read {
    double newtons = 0.0;
    double bound_newtons = 0.0;
    bool bound_stated = false;
  };
  std::vector<Read> readings; ///< of its leg at the deck
  std::optional<double> dock_newtons;
  std::optional<double> break_newtons; ///< break load of its line
  /// What is turned: the last adjuster of the stack; nothing in a stay without one.
  std::optional<std::size_t> adjuster; ///< in DerivedStay::adjusters
  double step_mm = 0.0; ///< what one turn takes, or one hole, or 1 mm where nothing is turned
  bool by_turns = false;
  double to_tighten_mm = 0.0, to_slacken_mm = 0.0;

  statics::StayId at_deck() const { return legs.back(); }
};

/// A mast, a bowsprit or a boomkin in the balance of the rig.
struct TuneSpar {
  std::size_t spar = 0; ///< in Rig::spars
  statics::SparId element;
  statics::NodeId head{};                 ///< its last node
  statics::Vector forward{}, starboard{}; ///< unit vectors square to it; of a bowsprit the first is up
  /// Where spreaders stand on it, from the heel up: each height once.
  struct Place {
    PointId root;
    statics::NodeId node;
    double along_mm = 0.0;
  };
  std::vector<Place> spreaders{};
  /// The nodes on its own line that a fitting belongs to.
  std::vector<std::pair<PointId, statics::NodeId>> fittings{};
};

/// A rig as a structure: tension-only stays along their paths, spars that bend, what holds them. Not to be
/// worked with while something is lacking.
struct TuneModel {
  statics::Structure structure;
  std::vector<TuneStay> stays;
  std::vector<TuneSpar> spars;
  std::vector<std::pair<PointId, statics::NodeId>> places; ///< where each point is
  std::vector<TuneInput> inputs;                           ///< with an empty value: not stated
  std::vector<Remark> lacking;                             ///< what else is in the way
  std::vector<Remark> notes;                               ///< what was taken so
  std::vector<Remark> draft;                               ///< why what comes out is a draft
  std::vector<BoundId> bounds;                             ///< the stated bounds that its numbers rest on

  bool complete() const;
};

/// The structure of a rig. A stay is as long unstressed as its drawn path less what its adjuster has taken,
/// or, where its tension was read or only its dock tension is stated, as that tension asks for on its drawn
/// path, to be fitted. Its EA is that of its lines over the part of it that is line: hardware does not
/// stretch. Fittings off the line of a spar stand on arms ten times as stiff as the spar. With `moved`
/// every number is what it would be if these inputs were off so. Nothing that carries
/// has a default; what is not stated is listed. Sources: Hooke's law; the rest is geometry and choices of
/// the project (docs/calculations/tune.md).
TuneModel tune_model(const Rig& rig, const Derived& derived, const MovedBounds& moved = {});

/// The same with each line that was seized under tension still free to run over its tips: one element.
TuneModel tune_model_before_seizing(const Rig& rig, const Derived& derived, const MovedBounds& moved = {});

} // namespace sheerpole
