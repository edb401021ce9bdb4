#pragma once

#include <string>

namespace sheerpole {

/// All words of the language with what they mean, as a JSON document for editors: keywords, kinds with what
/// they state, settings in a stack, ends, units and threads. The form is described in
/// docs/language/completion.md.
std::string completion_json();

} // namespace sheerpole
