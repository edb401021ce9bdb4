#pragma once

#include "model/part.hpp"

#include <string>

namespace sheerpole {

/// "82.0", of an adjuster "216.0 to 300.0"; millimetres. Empty when it is not stated.
std::string length_or_range(const Part& part);

/// "jaw (gap 12.0 mm, pin 1/2 in)".
std::string end_words(const End& end);

/// How the length or the range is known; empty when it is not stated.
std::string length_source(const Part& part);

} // namespace sheerpole
