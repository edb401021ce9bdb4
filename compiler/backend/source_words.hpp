#pragma once

#include "calculate/derived.hpp"
#include "model/provenance.hpp"

#include <string>

namespace sheerpole {

/// How a number is known, in words: "maker, certificate 1142", "computed, from points; rests on assumed
/// cap-tang". A value that was written in another unit than mm is echoed: "maker, written 7 3/8 in".
std::string source_words(const Provenance& provenance);

/// The way that a pin-to-pin length was found: "a reading", "the stated length", "the points of its path",
/// "not known as a number".
std::string_view route_words(LengthRoute route);

/// The same as one word for tables and data files: reading, stated, path, unknown.
std::string_view name_of(LengthRoute route);

} // namespace sheerpole
