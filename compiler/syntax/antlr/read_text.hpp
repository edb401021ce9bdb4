#pragma once

#include "syntax/antlr/syntax_report.hpp"
#include "syntax/antlr/token_list.hpp"
#include "syntax/syntax_tree.hpp"

namespace sheerpole {

/// The text of a string token without its quotes, `\"` and `\\` resolved. A backslash before anything else
/// is reported and kept. The closing quote may be missing. Controls and what is no character come out as
/// U+FFFD, so that no paper and no screen has to guard itself against them.
Text read_text(const TokenList& tokens, const antlr4::Token& token, SyntaxReport& report);

} // namespace sheerpole
