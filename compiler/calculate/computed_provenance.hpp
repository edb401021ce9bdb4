#pragma once

#include "model/provenance.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Adds the names in `more` that are not there yet, at the end and in their order.
void add_assumptions(std::vector<std::string>& assumptions, const std::vector<std::string>& more);

/// Where a number is from that was made of several: their common source class, or computed when they
/// differ; the place of the first that has one; every assumption of any of them. `parts` must not be empty.
Provenance combine(const std::vector<const Provenance*>& parts, std::string note);

} // namespace sheerpole
