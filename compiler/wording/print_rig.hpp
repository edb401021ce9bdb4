#pragma once

#include "model/rig.hpp"

#include <string>

namespace sheerpole {

/// The whole rig as text, for `--print rig`: one line a fact, every number in mm, kN or as a plain number,
/// with the text as written, the class of its source and the note. The form is for reading and for
/// comparing two runs; it is no interchange format.
std::string print_rig(const Rig& rig);

} // namespace sheerpole
