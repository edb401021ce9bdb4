#pragma once

#include "statics/mesh.hpp"
#include "statics/solver.hpp"
#include "statics/tangent_matrix.hpp"

namespace sheerpole::statics {

/// The motion of the least stiffness that the tangent has, by inverse iteration on the movements along the
/// axes, turnings following as they like. `tangent` is filled and was factored without shift, which was
/// `positive` definite or not; it may be factored otherwise after this.
Softest softest_motion(const Mesh& mesh, const Structure& structure, TangentMatrix& tangent, bool positive);

/// Whether what balances also stands: equilibrium, mechanism or unstable.
Outcome outcome_of(const Softest& softest, const TangentMatrix& tangent, bool positive);

} // namespace sheerpole::statics
