#pragma once

#include "backend/json/json.hpp"

namespace sheerpole {

/// The marks of a piece and what its cut leaves out.
Json bench_json(const Piece& piece);

/// Adds to a stay's object what follows from its lengths: slips, uncertainty, account, temperature,
/// tension, sag, the line before, fits, joints. Lengths in mm, unrounded.
void add_behaviour_json(const DerivedStay& stay, const Derived& derived, const Rig& rig, Json& json);

} // namespace sheerpole
