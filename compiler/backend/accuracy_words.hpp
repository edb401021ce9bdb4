#pragma once

#include "calculate/derived.hpp"
#include "model/remark.hpp"

#include <functional>
#include <string>

namespace sheerpole {

// How well a length is known, as several papers say it. A range rests on the inputs for which a tolerance
// is stated and on no other: alone, the range of a stay of which little is stated would look the best of
// all. So a paper that prints a range names beside it what has no tolerance.

/// By how much a length may be off, in millimetres to one decimal, rounded half away from zero: "± 6.8"
/// where that is the same both ways as printed, else "-6.9 / +6.8".
std::string range_words(Length low, Length high);

/// What of a cut has no tolerance in the file, as a paper that has little room names it: "length of
/// toggle-12 and 3 more"; the proof sheet has all of them. Empty when everything has one. `spoken` puts a
/// name into words.
std::string without_tolerance(const Uncertainty& found,
                              const std::function<std::string(const Remark&)>& spoken);

} // namespace sheerpole
