#pragma once

#include "diagnostics/sink.hpp"
#include "source/source_text.hpp"
#include "syntax/syntax_tree.hpp"

namespace sheerpole {

/// Deepest nesting of braces and parentheses that is read.
inline constexpr int deepest_nesting = 64;

/// Reads one file. Mistakes go to the sink, several per file; the tree always exists.
SyntaxTree parse(const SourceText& source, DiagnosticSink& sink);

} // namespace sheerpole
