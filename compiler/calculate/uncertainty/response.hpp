#pragma once

#include "calculate/uncertainty/uncertainty.hpp"

#include <compare>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace sheerpole {

/// How a result follows its inputs near the stated values: what it moves by when input i is off by z_i
/// bounds is sum g_i z_i + sum h_ij z_i z_j. Exact for sums and for products of two inputs; of anything
/// else the second-order part of its series. An input that stands in several terms is one input: nothing is
/// counted as if it were independent of itself.
struct Response {
  struct Linear {
    std::size_t input = 0;
    double amount = 0.0; ///< g
    auto operator<=>(const Linear&) const = default;
  };
  struct Product {
    std::size_t first = 0;
    std::size_t second = 0; ///< may be the first
    double amount = 0.0;    ///< h
    auto operator<=>(const Product&) const = default;
  };
  std::vector<Linear> linear;
  std::vector<Product> products;
};

/// The least and the most that a response can come to while every input keeps within its bound. A mean of
/// readings has no bound: its 95 % range is taken.
struct WorstCase {
  double low = 0.0;
  double high = 0.0;
};
WorstCase worst_case(const Response& response, std::span<const UncertainInput> inputs);

/// The law of propagation of uncertainty, first order, inputs independent of each other: what is shared is
/// one input already. Source: JCGM 100:2008, 5.1.2, G.4.1 (Welch-Satterthwaite, rounded down), G.3.
struct Propagated {
  double standard = 0.0;
  double freedom = 0.0; ///< 0: unlimited
  double factor = 0.0;  ///< for 95 %
  double expanded = 0.0;
};
Propagated propagate(const Response& response, std::span<const UncertainInput> inputs);

/// How the results lie when all inputs are drawn at random. Source: JCGM 101:2008, 7; the 95 % range leaves
/// as many draws below as above.
struct Drawn {
  double mean = 0.0;
  double standard = 0.0;
  double low = 0.0;
  double high = 0.0;
  double within = 0.0; ///< share of draws between the limits of the request
};
struct DrawRequest {
  const Response* response = nullptr;
  double least = 0.0; ///< for Drawn::within
  double most = 0.0;
};
/// Draws every input once a draw, for all responses together, so that what they share moves them together.
/// Runs on as many threads as it is told; the result does not depend on how many, only on seed and number
/// of draws (at least 40). Responses that are alike, as those of port and starboard mostly are, are drawn
/// once. Memory: eight bytes a draw and response.
std::vector<Drawn> monte_carlo(std::span<const DrawRequest> requests,
                               std::span<const UncertainInput> inputs, std::size_t draws,
                               std::uint64_t seed, unsigned threads);

} // namespace sheerpole
