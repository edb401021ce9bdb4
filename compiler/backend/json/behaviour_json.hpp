#pragma once

#include "backend/json/json.hpp"

namespace sheerpole {

/// How well a cut is known, with the share of each input.
Json uncertainty_json(const Rig& rig, const Uncertainty& found, const Derived& derived);

/// Every input with a bound or a scatter: `{name, bound, distribution, degrees_of_freedom, place}`; the
/// bound is in the coherent SI unit of the input.
Json inputs_json(const Rig& rig, const Derived& derived, const SourceSet& sources);

/// The slips that would explain a difference: `[{words, unexplained_mm}]`
Json slips_json(const RouteComparison& other);

/// The marks of a piece and what its cut leaves out.
Json bench_json(const Piece& piece);

/// Adds to a stay's object what follows from its lengths: slips, uncertainty, account, temperature,
/// tension, sag, the line before, fits, joints. Lengths in mm, unrounded.
void add_behaviour_json(const DerivedStay& stay, const Derived& derived, const Rig& rig, Json& json);

} // namespace sheerpole
