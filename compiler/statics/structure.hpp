#pragma once

#include "base/id.hpp"
#include "statics/vector.hpp"

#include <array>
#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

// What stands: places, stays that pull, spars that push and bend, and what holds them. Lengths in
// millimetres, forces in newtons, EI and GJ in N mm2 (1 N m2 is 1e6 of them), EA in newtons. Nothing has a
// default that carries: a stiffness that is not stated is 0, and `faults_of` says so.

namespace sheerpole::statics {

/// A place at which lines, spars or supports meet, as it is drawn: every spar straight and without load.
struct Node {
  Vector place_mm;
};
using NodeId = Id<Node>;

/// A length of line with one tension: from the first place of its path to the last, free to run over those
/// between. A stay that is clamped at a spreader's tip is two of these, one for each leg. Straight, without
/// weight; it pulls with EA (l - L0) / L0, l being its length now and L0 its length without tension, and
/// never pushes.
struct Stay {
  std::vector<NodeId> path;             ///< two or more, each another than the one before
  double axial_stiffness_newtons = 0.0; ///< EA, over 0
  double unstressed_mm = 0.0;           ///< L0, over 0
};
using StayId = Id<Stay>;

/// What a spar is at a place of its length; all over 0.
struct Section {
  double axial_stiffness_newtons = 0.0;    ///< EA
  double bending_in_side_newton_mm2 = 0.0; ///< EI against bending in the direction of the spar's `side`
  double bending_square_newton_mm2 = 0.0;  ///< EI against bending square to `side`
  double torsion_newton_mm2 = 0.0;         ///< GJ
};

/// A section, `at_mm` along the spar as drawn from its first node. Between two stations it changes evenly.
struct Station {
  double at_mm = 0.0;
  Section section;
};

/// What it is there; beyond the ends as at the ends. One station or more, by rising place.
Section section_at(const std::vector<Station>& stations, double at_mm);

/// How the first node of a spar holds it.
struct RootJoint {
  bool swings_in_side = false; ///< hinged: may turn in the plane of the spar and its `side`
  bool swings_square = false;  ///< hinged in the plane of the spar square to `side`
  bool twists = false;         ///< may turn about its own axis

  /// A ball joint: the spar is a bar that pushes or pulls along its length.
  bool pinned() const { return swings_in_side && swings_square && twists; }
};

/// A mast, a boom or a spreader: straight between its nodes as drawn. Spars that have a node in common are
/// one piece there, but for what the root joint of a later one lets go.
struct Spar {
  std::vector<NodeId> nodes;     ///< two or more, along the spar
  std::vector<Station> stations; ///< one or more, by rising `at_mm`; beyond the ends as at the ends
  /// One of the two directions in which it bends; not along the spar. Only the part square to it counts.
  Vector side;
  RootJoint root; ///< at the first node; a spar with pinned root has two nodes
  /// Into how many elements each stretch between two nodes is cut, 1 to 64. With 4 the tensions of the
  /// cases in tests/reference/statics are within 8e-5 of those with 16, with 2 within 1.3e-3.
  std::size_t pieces_a_panel = 4;
};
using SparId = Id<Spar>;

/// How a place is held in one direction: without a bound on stiffness, with the give of what holds it, or
/// only where it has moved further than a play.
struct Hold {
  double stiffness_newtons_per_mm = std::numeric_limits<double>::infinity(); ///< over 0
  double play_mm = 0.0;                                                      ///< each way, 0 or more
};

/// A hold that is stiff without bound but has play is taken as this stiff where it touches: 0.001 mm for
/// each kN.
inline constexpr double stiff_contact_newtons_per_mm = 1e6;

enum class Turning {
  free,
  twist_held, ///< may lean every way, not turn about the axis of the first spar that has this node
  held,       ///< built in
};

/// What holds a node at its drawn place. At most one to a node; along x, y and z.
struct Support {
  NodeId node;
  std::array<std::optional<Hold>, 3> along; ///< nothing: free that way
  Turning turning = Turning::free;
};
using SupportId = Id<Support>;

/// A force that stays as it is however the place moves.
struct Load {
  NodeId node;
  Vector force_newtons;
};

struct Structure {
  std::vector<Node> nodes;
  std::vector<Stay> stays;
  std::vector<Spar> spars;
  std::vector<Support> supports;
  std::vector<Load> loads;
};

/// Held in all three directions without give: a chainplate in a stiff hull.
Support fixed_point(NodeId node);
/// Held in all three directions, each giving by so many mm for each kN (0: stiff).
Support giving_point(NodeId node, Vector mm_per_kilonewton);
/// Held in place and against turning about the spar's own axis, free to lean: a mast step.
Support pinned_heel(NodeId node);

/// Beyond these a number is a slip, and squares of it would leave what a double holds: a stiffness in its
/// unit, a place in mm or a load in N, and the shortest line.
inline constexpr double most_stated = 1e20, farthest_mm = 1e9, shortest_unstressed_mm = 1e-3;

/// Whether a line can be so long without tension.
bool can_be_unstressed(double unstressed_mm);

/// What a structure cannot be worked with for.
enum class FaultKind {
  not_a_number,          ///< a place or a load is not finite, or beyond `farthest_mm`
  no_such_node,          ///< an id beyond `nodes`
  stay_path,             ///< fewer than two places, or two that follow each other are one
  stay_stiffness,        ///< EA not over 0, or over `most_stated`
  stay_length,           ///< no unstressed length, see `can_be_unstressed`
  spar_nodes,            ///< fewer than two, or two that follow each other are one
  spar_stations,         ///< none, or not by rising place
  spar_axial_stiffness,  ///< EA not over 0, or over `most_stated`; so with EI and GJ
  spar_bending,          ///< an EI not over 0 where the spar bends
  spar_torsion,          ///< GJ not over 0 where the spar can be twisted
  spar_side,             ///< no direction, or along the spar
  spar_pinned_with_more, ///< a pinned root on a spar of more than two nodes
  support_hold,          ///< a stiffness not over 0 or a play below 0
  support_twice,         ///< two supports of one node
  nothing_to_move,       ///< no place is free
};

/// A fault and where: the place in the vector of nodes, stays, spars, supports or loads, as the kind says.
struct Fault {
  FaultKind kind{};
  std::size_t index = 0;
  friend bool operator==(const Fault&, const Fault&) = default;
};

/// Everything that is wrong with a structure, in the order of its parts; nothing when it can be worked
/// with.
std::vector<Fault> faults_of(const Structure& structure);

/// The length of a path as drawn, in mm.
double drawn_length_mm(const Structure& structure, const Stay& stay);

/// L0 of a line that is `stretched_mm` long under a tension: l EA / (EA + T). For a rig that was measured
/// while it stood. Lengths in mm, forces in newtons; nothing unless l and EA are over 0, T 0 or more and
/// all of them finite. Source: Hooke's law.
std::optional<double> unstressed_length_mm(double stretched_mm, double tension_newtons,
                                           double axial_stiffness_newtons);

} // namespace sheerpole::statics
