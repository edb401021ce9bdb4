#pragma once

#include <functional>
#include <vector>

namespace sheerpole {

/// Level of error correction, by the two bits that the code itself has for it: ISO/IEC 18004, table 12
/// (from memory).
enum class QrLevel { medium = 0, low = 1, high = 2, quartile = 3 };

/// The modules of a code under that of the eight masks which ISO/IEC 18004, 7.8.3, takes: the one of the
/// least penalty, of several the first. `is_black(row, column)` tells the same code under mask 0; `across`
/// is 4 v + 17 for its version v, 1 to 40. Row by row from the top.
///
/// A library that tries masks does so module by module, which is ten times the work of all else; here a
/// row is looked at as a whole.
std::vector<bool> best_masked(int across, QrLevel level,
                              const std::function<bool(int row, int column)>& is_black);

} // namespace sheerpole
