#pragma once

#include <cstddef>
#include <string>

namespace sheerpole::bench {

/// A rig file with this many stays, each with its own points, part and stack, in the manner of the example
/// boats. About 0.7 kB a stay; same number, same bytes.
std::string generated_boat(std::size_t stays);

} // namespace sheerpole::bench
