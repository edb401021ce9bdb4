#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <cstddef>
#include <numbers>
#include <optional>
#include <span>
#include <vector>

namespace sheerpole {

/// What is left of a break load by one reduction after another, of a splice, a terminal or a bend: the
/// product. Source: common practice, no source; reductions at different places do not add up in truth, the
/// worst governs. Nothing when the load is not more than zero or a factor not more than 0 and at most 1.
std::optional<Force> reduced_break_load(Force break_load, std::span<const double> factors);

/// The weakest of parts that hang on each other.
struct WeakestLink {
  std::optional<std::size_t> weakest_known; ///< the first of the lowest; nothing when none is known
  std::vector<std::size_t> unknown;         ///< the parts that nobody has stated, in their order
  /// Of the chain; nothing while a part is unknown, as that may be the weakest.
  std::optional<Force> strength;
  /// What the chain carries at most: the lowest known. Nothing when none is known.
  std::optional<Force> at_most;
};

/// The chain carries no more than its weakest part; a part without a break load never counts as strong.
/// Source: statics. Nothing for no part, or one whose break load is less than zero.
std::optional<WeakestLink> weakest_link(std::span<const std::optional<Force>> break_loads);

/// Angle in radians between the two legs of an eye on a bare pin: 2 asin((D/2) / L), D the pin's diameter
/// and L from its centre to the throat. The rope has no thickness here; with it the angle is larger
/// (calculate/physics/eye_loop.hpp). Source: plane geometry. Nothing unless the diameter is more than zero
/// and the throat beyond the pin.
std::optional<double> eye_angle(Length pin_diameter, Length centre_to_throat);

/// The same of an eye measured flat, `inside_length` from the throat to the far side of the pin, which is
/// half a pin beyond its centre: 2 asin(0.5 / (k - 0.5)) of an eye k pins long. Source and range as above.
std::optional<double> eye_angle_of_inside_length(Length pin_diameter, Length inside_length);

/// What a lashing is made with.
struct LashingMake {
  Force cord_break_load;    ///< B, of the straight cord, more than 0
  int turns = 0;            ///< N, 1 to 1000: the cord goes there and back once in each, 2 N legs
  double bend_factor = 1.0; ///< left of B where the cord goes round the eyes, more than 0, at most 1
  double knot_factor = 1.0; ///< left of B in the knot that ends the last leg, more than 0, at most 1
};

/// What such a lashing carries, and where it gives.
struct LashingStrength {
  Force strength;
  double share = 0.0;       ///< of what it would be if all legs pulled alike
  bool at_the_knot = false; ///< the knot goes first
};

/// Hauled from one end and never worked in: the first leg has the highest tension T and each eye takes its
/// friction from the next, r = exp(-friction x wrap). The lashing gives at S = T (1 + r + ... + r^(2N-1))
/// when the first leg has B x bend factor or the knot, behind the last, B x knot factor, whichever comes
/// first. Source: the capstan law (lashing_share.hpp); the factors are the caller's: knots leave about
/// half, a bend of one cord diameter half, of three 0.8, of five 0.9 to 1 (common practice, no source).
/// Without friction all legs pull alike, and the knot sees as much as any.
std::optional<LashingStrength> lashing_strength(const LashingMake& make, double friction,
                                                double wrap_radians = std::numbers::pi);

/// The plain count: legs x cord x factor, of legs that all pull alike. Source: arithmetic; that they do so
/// is for the caller to say. Nothing unless the cord is more than zero, the legs 1 to 2000 and the factor
/// more than 0 and at most 1.
std::optional<Force> lashing_strength_by_legs(Force cord_break_load, int legs, double factor);

/// Which block the hauling part comes out of.
enum class HaulingPart {
  from_fixed_block,
  from_moving_block, ///< it is then one of the parts that carry the load
};

/// Load over the hauling pull of a tackle with `parts` parts of rope at the moving block, while the load is
/// being pulled in: each sheave hands on `sheave_efficiency` of the tension. With e for it the parts carry
/// 1, e, e^2 ... of the pull, and e, e^2, ... where the hauling part comes out of the fixed block. Without
/// friction it is the number of parts. Source: equilibrium of the moving block; the efficiency is the
/// caller's. Nothing unless the parts are 1 to 100 and the efficiency more than 0 and at most 1.
std::optional<double> tackle_advantage(int parts, HaulingPart hauling_part, double sheave_efficiency);

} // namespace sheerpole
