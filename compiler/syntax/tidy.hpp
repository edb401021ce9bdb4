#pragma once

#include "diagnostics/sink.hpp"
#include "source/source_text.hpp"

#include <optional>
#include <string>

namespace sheerpole {

/// The same text laid out in the way of the language: indentation, blanks, blank lines, comments in
/// columns. No word, sign or comment is changed, added, dropped or moved past another, and the tree is the
/// same. Tidying twice is tidying once. Lines end as the first one of the file does, and the last one ends
/// too.
///
/// Nothing when the text can not be read; what is wrong with it goes to the sink.
std::optional<std::string> tidy(const SourceText& source, DiagnosticSink& sink);

} // namespace sheerpole
