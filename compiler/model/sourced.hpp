#pragma once

#include "model/influence.hpp"
#include "model/provenance.hpp"

#include <optional>

namespace sheerpole {

/// A value with where it is from and, when stated, the bound of its error (same unit as the value).
template <class Value>
struct Sourced {
  Value value{};
  Provenance provenance;
  std::optional<Value> tolerance; ///< plus or minus
  Influences influences = {};     ///< the stated bounds on which the tolerance rests
};

} // namespace sheerpole
