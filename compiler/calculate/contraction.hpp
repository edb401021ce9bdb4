#pragma once

#include "calculate/length_sum.hpp"
#include "calculate/line_end.hpp"
#include "model/splice.hpp"

#include <vector>

namespace sheerpole {

/// What opening the weave for a bury shortens the rope by, less what pre-tensioning gives back: fraction x
/// bury as one term, the same over the spare bury as another when there is one, and the recovered share of
/// both as a term that takes away. `splice.contraction` must be stated. Source: common practice, no source;
/// the fraction is a property of one rope and belongs to a test splice on it.
std::vector<Term> contraction_terms(const Splice& splice, const Term& bury, const Term* spare_bury,
                                    Where where);

} // namespace sheerpole
