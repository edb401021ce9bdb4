#pragma once

#include "syntax/written_words.hpp"

#include <cstddef>
#include <vector>

namespace sheerpole {

/// For each word, whether a blank parts it from the word before when both stand on one line.
std::vector<bool> word_gaps(const std::vector<WrittenWord>& words);

} // namespace sheerpole
