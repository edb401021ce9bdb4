#pragma once

#include <cstddef>
#include <string>

namespace sheerpole {

/// A whole number with a blank before each three digits: "100 000".
std::string grouped(std::size_t number);

/// A share of random draws in words that promise nothing: "99 812 of 100 000 draws", "all of 100 000
/// draws", "none of 100 000 draws".
std::string trials_words(double share, std::size_t draws);

/// A share of a variance, 0 to 1: "86.4 %", "all of it", "under 0.1 %".
std::string variance_words(double share);

} // namespace sheerpole
