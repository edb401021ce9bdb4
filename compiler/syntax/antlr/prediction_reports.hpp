#pragma once

#include "source/source_text.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What the generated parser says of its own choices while it reads a sound file: ambiguities, choices that
/// took more than the simple kind of lookahead, and choices that took more than one token at all. The
/// grammar is in order when there is nothing to say. For tests of the grammar.
std::vector<std::string> prediction_reports(const SourceText& source);

} // namespace sheerpole
