#pragma once

#include "calculate/cutting/pattern_program.hpp"
#include "calculate/cutting/problem.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace sheerpole::cutting {

/// Every pattern that can stand in a packing of ranked cost `most` or less: those whose cost exceeds the
/// prices of their pieces by no more than `most` exceeds the bound. Of the patterns of a kind that counts
/// whole only those are listed to which no further piece can be added; a packing may cut one too many
/// instead. Nothing when there are more than `most_patterns` or listing them takes more than `steps`; what
/// it takes is taken from `steps`. Source: variable fixing by reduced costs, textbook method.
std::optional<std::vector<Pattern>> patterns_within(const Problem& problem, const Prices& prices,
                                                    RankedCost most, std::int64_t most_patterns,
                                                    std::int64_t& steps);

} // namespace sheerpole::cutting
