#pragma once

#include "calculate/derived.hpp"

#include <vector>

namespace sheerpole {

/// What one end of a piece uses beyond the body, how it is made, and what is missing to know it.
struct EndUse {
  std::vector<Term> terms;
  std::vector<MissingInput> missing;
  PieceEnd end;
};

} // namespace sheerpole
