#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

#include <string>

namespace sheerpole {

/// The whole rig as text, for `--print rig`: one line a fact, every number in mm, kN or as a plain number,
/// with the text as written, the class of its source and the note. The form is for reading and for
/// comparing two runs; it is no interchange format.
std::string print_rig(const Rig& rig);

/// Every calculated length as the sum of its terms, stay by stay, in millimetres with two decimals. For
/// people who look into the compiler; documents are made by back ends.
std::string print_derived(const Rig& rig, const Derived& derived);

} // namespace sheerpole
