#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace sheerpole {

/// A length that is wanted in one, and what is ordered of it when no stock holds it.
struct WholeLength {
  std::string of; ///< what it is for
  std::int64_t mm = 0;
  long tenths = 0; ///< of a metre, with its kerf, rounded up
};

/// Tenths of a metre, rounded up: an order that is short by a hair is short.
long tenths_up_mm(std::int64_t mm);

/// Lengths of one line that are in stock, from which others are taken whole.
class LengthsInStock {
public:
  void add(std::int64_t mm, std::int64_t count = 1);

  /// Takes these, the longest first, each whole off the shortest length that still holds it, with a kerf
  /// behind each but at the end of a length. Those that find no place, the longest first.
  std::vector<WholeLength> take(std::vector<WholeLength> wanted, std::int64_t kerf_mm);

  bool empty() const { return lengths_.empty(); }

private:
  struct Lengths {
    std::int64_t mm = 0;
    std::int64_t count = 1;
  };
  bool take_one(std::int64_t mm, std::int64_t kerf_mm);

  std::vector<Lengths> lengths_;
};

} // namespace sheerpole
