#pragma once

#include "units/force.hpp"

#include <numbers>
#include <optional>

namespace sheerpole {

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

} // namespace sheerpole
