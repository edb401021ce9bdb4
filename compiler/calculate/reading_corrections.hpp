#pragma once

#include "calculate/length_sum.hpp"
#include "model/rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Adds the corrections of the tape to what was `read` off it. Where the tape states a part of a correction
/// and the rest is missing, says so in `not_corrected`.
void add_tape_corrections(const Rig& rig, const Reading& reading, Length read, std::vector<Term>& terms,
                          std::vector<std::string>& not_corrected);

/// Adds what an old stay of `old_line` was longer under the dock tension than under the pull with which it
/// was measured.
void add_old_stretch(const Rig& rig, const Stay& stay, const Reading& reading, Length read,
                     std::vector<Term>& terms, std::vector<std::string>& not_corrected);

} // namespace sheerpole
