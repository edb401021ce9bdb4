#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace sheerpole {

/// Spreads the bits of a number. Source: Steele, Lea and Flood, Fast splittable pseudorandom number
/// generators (2014), SplitMix64.
constexpr std::uint64_t mixed(std::uint64_t x) {
  x += 0x9e3779b97f4a7c15U;
  x = (x ^ (x >> 30U)) * 0xbf58476d1ce4e5b9U;
  x = (x ^ (x >> 27U)) * 0x94d049bb133111ebU;
  return x ^ (x >> 31U);
}

/// Random numbers that are the same on every machine. Source: Blackman and Vigna, Scrambled linear
/// pseudorandom number generators (2021), xoshiro256++.
class RandomStream {
public:
  /// Streams of different seeds, inputs or blocks have nothing in common.
  RandomStream(std::uint64_t seed, std::uint64_t input, std::uint64_t block) {
    std::uint64_t x = mixed(mixed(mixed(seed) ^ input) ^ block);
    for (std::uint64_t& word : state_)
      word = x = mixed(x);
  }

  std::uint64_t next() {
    const std::uint64_t result = turned(state_[0] + state_[3], 23) + state_[0];
    const std::uint64_t shifted = state_[1] << 17U;
    state_[2] ^= state_[0];
    state_[3] ^= state_[1];
    state_[1] ^= state_[2];
    state_[0] ^= state_[3];
    state_[2] ^= shifted;
    state_[3] = turned(state_[3], 45);
    return result;
  }
  /// Evenly between 0 and 1, neither of them included.
  double uniform() { return (static_cast<double>(next() >> 12U) + 0.5) * 0x1.0p-52; }

private:
  static constexpr std::uint64_t turned(std::uint64_t x, unsigned bits) {
    return (x << bits) | (x >> (64U - bits));
  }
  std::array<std::uint64_t, 4> state_{};
};

/// The value below which a standard normal variable lies with this probability, 0 < p < 1. Source: Wichura,
/// Algorithm AS 241 (PPND16), Applied Statistics 37 (1988); about sixteen figures.
double normal_quantile(double probability);

/// The value t for which a Student variable of `freedom` degrees lies between -t and t in 95 of 100 cases;
/// for 0, which means no end of degrees, 1.95996. Source: the finite sums of Abramowitz and Stegun,
/// Handbook of Mathematical Functions, 26.7.3 and 26.7.4, solved by bisection; values as JCGM 100:2008,
/// table G.2.
double student_factor_95(std::size_t freedom);

} // namespace sheerpole
