#pragma once

#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What became of a reading.
struct ReadingLength {
  std::vector<Term> terms;                ///< empty when the reading has no run
  std::vector<std::string> not_corrected; ///< "temperature: the tape's own is not stated"
};

/// The terms of a measured length: the mean of the runs, less the hook offset, plus the hoist offset, with
/// the corrections of the tape that the reading names (standard, temperature, pull, sag of each free span),
/// and of an old stay the stretch from the pull to the dock tension. A correction is made when all of its
/// numbers are stated; when some are, what is missing is said. The spread of the runs (longest less
/// shortest) is said in `how` of the mean. Sources: arithmetic mean of repeated readings and the tape
/// corrections of surveying texts, see physics/tape_correction.hpp; Hooke's law; the offsets are common
/// practice, no source.
ReadingLength reading_length(const Rig& rig, const Stay& stay, const Reading& reading);

/// The offset of a reading as a term that takes away.
Term offset_term(const Reading& reading);

} // namespace sheerpole
