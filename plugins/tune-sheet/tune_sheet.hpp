#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Back end `tune-sheet`: how the rig stands at the dock, what one turn on each adjuster does, the turns
/// for what is wished for, other days. A rig that does not state what that rests on has a sheet that says
/// what is lacking.
struct TuneSheet final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
