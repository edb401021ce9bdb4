#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::fuzz {

/// A row of numbers that is the same on every machine: SplitMix64 (Steele, Lea and Flood, "Fast splittable
/// pseudorandom number generators", 2014).
class Dice {
public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next();
  /// From 0 to `sides` - 1; `sides` is over 0.
  std::size_t below(std::size_t sides) { return static_cast<std::size_t>(next() % sides); }

private:
  std::uint64_t state_;
};

/// What the inputs of a target are made of.
struct Material {
  std::vector<std::string> words;
  std::vector<std::string> texts;        ///< whole inputs that lie in no folder of a corpus
  std::string (*piece)(Dice&) = nullptr; ///< a new line, block or value as the grammar has it
};

/// The text changed in one to four places, as people and programs change a text: a word put in the place of
/// another, a block doubled, moved or left out, one made anew, numbers made odd, a piece of `other` brought
/// in, bytes spoilt.
std::string mutated(std::string_view text, std::string_view other, const Material& material, Dice& dice,
                    std::size_t longest);

} // namespace sheerpole::fuzz
