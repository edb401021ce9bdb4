#pragma once

#include "calculate/cutting/problem.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace sheerpole::cutting {

/// What an integer program makes smallest.
enum class Aim {
  cost,        ///< mm
  stocks_begun ///< their number, at no more than a given cost
};

struct IntegerSolution {
  std::optional<Packing> packing; ///< nothing when there is none within the cost, or none was found
  bool finished = false; ///< every choice was looked at: there is no better one from these patterns
};

/// The best whole numbers of the given patterns: each item cut or skipped as often as demanded or oftener,
/// no kind of stock used up, the cost at most `most_cost`. By COIN-OR CBC, in one thread, silent, at most
/// `nodes` of branching. `good_enough`: stop at the first solution whose aim is no greater.
IntegerSolution solve_integer(const Problem& problem, std::span<const Pattern> patterns, Aim aim,
                              std::int64_t most_cost, std::int64_t good_enough, int nodes);

} // namespace sheerpole::cutting
