#pragma once

#include "calculate/length_sum.hpp"
#include "model/reading.hpp"

#include <vector>

namespace sheerpole {

/// The terms of a measured length: the mean of the runs, less the hook or hoist offset when there is one.
/// Empty when the reading has no run. The spread of the runs (longest less shortest) is said in `how` of
/// the mean. Source: arithmetic mean of repeated readings, as in any surveying text; the offset is common
/// practice, no source.
std::vector<Term> reading_terms(const Reading& reading);

/// The offset of a reading as a term that takes away.
Term offset_term(const Reading& reading);

} // namespace sheerpole
