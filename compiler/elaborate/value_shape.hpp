#pragma once

#include "diagnostics/sink.hpp"
#include "syntax/syntax_tree.hpp"

#include <string>

namespace sheerpole {

/// Reports a list, a path, or a word such as `free` where one value belongs; false when it did. `what`
/// names the value behind "the": "length of toggle-12".
bool one_value(const Value& value, const std::string& what, DiagnosticSink& sink);

/// Reports the words `free`, `clamped` and `ends` outside a path; false when it did.
bool no_passage(const Value& value, const std::string& what, DiagnosticSink& sink);

} // namespace sheerpole
