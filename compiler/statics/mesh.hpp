#pragma once

#include "statics/beam.hpp"
#include "statics/structure.hpp"
#include "statics/vector.hpp"

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace sheerpole::statics {

/// Where everything is: how each place of a mesh has moved from its drawn place, and turned.
struct Configuration {
  std::vector<Vector> moved_mm;
  std::vector<Rotation> turned;
};

/// The numbers of the unknowns that an element moves; `held` for those that cannot.
inline constexpr int held = -1;
using Unknowns = std::vector<int>;

/// Takes what each element adds to the tangent: the block of element number `element`, square, by rows, as
/// wide as its unknowns.
class StiffnessSink {
public:
  virtual ~StiffnessSink() = default;
  virtual void add(std::size_t element, std::span<const double> block) = 0;
};

/// A structure cut into elements, its movements numbered. The first places are the structure's nodes, in
/// their order; then come those between the pieces of its spars.
class Mesh {
public:
  /// `structure` has no faults.
  explicit Mesh(const Structure& structure);

  struct Line { ///< a stay
    std::vector<std::size_t> places;
    std::vector<Vector> legs_mm; ///< as drawn
    double drawn_mm = 0.0;
    double axial_stiffness_newtons = 0.0;
  };
  struct Bar { ///< a pinned spar
    std::size_t first = 0, second = 0;
    Vector along_mm;
    double drawn_mm = 0.0;
    double axial_stiffness_newtons = 0.0;
  };
  struct Beam {
    std::size_t first = 0, second = 0;
    BeamElement element;
  };
  struct Contact { ///< a support that gives or has play
    std::size_t place = 0, axis = 0;
    double stiffness_newtons_per_mm = 0.0, play_mm = 0.0;
  };
  struct TwistHold {
    std::size_t place = 0;
    Vector side, square;
    double stiffness_newton_mm = 0.0;
  };
  /// A spar's places and pieces, in order; one bar or one or more beams.
  struct SparPieces {
    std::vector<std::size_t> places;
    std::vector<double> at_mm;       ///< of each place, along the spar as drawn
    std::vector<std::size_t> beams;  ///< numbers in beams(), none for a bar
    std::vector<std::size_t> panels; ///< for each beam: which panel it is part of
    std::size_t bar = 0;             ///< number in bars(), when there are no beams
  };

  std::size_t places() const { return drawn_mm_.size(); }
  std::size_t unknowns() const { return unknowns_; }
  /// Those of a place: along x, y, z and about them.
  const std::array<int, movements_of_end>& unknowns_of(std::size_t place) const { return numbers_[place]; }
  const std::vector<Line>& lines() const { return lines_; }
  const std::vector<Bar>& bars() const { return bars_; }
  const std::vector<Beam>& beams() const { return beams_; }
  const std::vector<SparPieces>& spars() const { return spars_; }
  /// The unknowns of each element: lines first, then bars, beams, contacts and holds against twisting.
  const std::vector<Unknowns>& elements() const { return elements_; }

  Configuration as_drawn() const;
  /// The largest distance between two drawn places along one axis, in mm.
  double size_mm() const { return size_mm_; }
  /// The shortest piece of spar that bends, in mm; 0 without one.
  double shortest_piece_mm() const { return shortest_piece_mm_; }
  /// The largest EA / L of any element, N/mm; what rounding of a place costs in force goes with it.
  double stiffest_newtons_per_mm() const { return stiffest_; }

  /// Energy in N mm, of the loads too; `unstressed_mm` is by stay.
  double energy(std::span<const double> unstressed_mm, const Configuration& at) const;
  /// The same; `forces` becomes its derivative by each unknown (N and N mm), and the second derivatives are
  /// given to `sink`. A stay that is slack adds nothing.
  double derivatives(std::span<const double> unstressed_mm, const Configuration& at,
                     std::span<double> forces, StiffnessSink& sink) const;
  /// What every place would have to be held with, held or not: by place, forces and moments along x, y, z.
  std::vector<std::array<Vector, 2>> holding_forces(std::span<const double> unstressed_mm,
                                                    const Configuration& at) const;
  /// Moves on by a step of all unknowns.
  Configuration moved_by(const Configuration& from, std::span<const double> step, double share) const;

  /// A stay now: how much longer than L0 (mm, below 0 when slack), and how its length changes with each of
  /// its unknowns.
  double extension_mm(std::size_t line, double unstressed_mm, const Configuration& at) const;
  std::vector<double> length_by_unknown(std::size_t line, const Configuration& at) const;
  BeamElement::Ends ends_of(const Beam& beam, const Configuration& at) const;
  double bar_compression_newtons(std::size_t bar, const Configuration& at) const;

private:
  void cut_spar(const Structure& structure, const Spar& spar);
  void hold(const Structure& structure);
  void number();
  /// Calls `add` with each element's number, its forces and its stiffness; adds up the energy.
  template <class Add>
  double visit(std::span<const double> unstressed_mm, const Configuration& at, Add&& add) const;

  std::vector<Vector> drawn_mm_;
  std::vector<bool> turns_; ///< by place: whether a beam ends there
  std::vector<std::array<bool, movements_of_end>> fixed_;
  std::vector<std::array<int, movements_of_end>> numbers_;
  std::size_t unknowns_ = 0;
  std::vector<Line> lines_;
  std::vector<Bar> bars_;
  std::vector<Beam> beams_;
  std::vector<Contact> contacts_;
  std::vector<TwistHold> twist_holds_;
  std::vector<SparPieces> spars_;
  std::vector<Unknowns> elements_;
  std::vector<Load> loads_;
  double size_mm_ = 0.0, shortest_piece_mm_ = 0.0, stiffest_ = 0.0;
};

} // namespace sheerpole::statics
