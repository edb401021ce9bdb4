#pragma once

#include "backend/backend.hpp"

#include <vector>

namespace sheerpole {

/// One page for each finding and README.md, which lists them by subject.
std::vector<OutputFile> finding_pages();

} // namespace sheerpole
