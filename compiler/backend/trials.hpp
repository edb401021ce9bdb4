#pragma once

#include <cstddef>
#include <string>

namespace sheerpole {

/// A share of random draws in words that promise nothing: "99 812 of 100 000 draws", "all of 100 000
/// draws", "none of 100 000 draws".
std::string trials_words(double share, std::size_t draws);

} // namespace sheerpole
