#pragma once

#include "backend/backend.hpp"

#include <iosfwd>

namespace sheerpole {

/// The `main` of a program that is one back end, to be named after `build --outside`: reads a request from
/// the standard input, answers on the standard output, returns the exit code.
///
/// A back end in C++ works on the checked rig, not on JSON. So the rig is worked out again from the texts
/// and settings that the request carries, by the compiler that is linked in. When that comes to anything
/// else than what the request says, the two are of different versions: the program says so and does not
/// answer. Programs in other languages read the JSON alone.
int plugin_main(const Backend& backend);

/// The same with these streams.
int plugin_main(const Backend& backend, std::istream& in, std::ostream& out, std::ostream& errors);

} // namespace sheerpole
