#pragma once

#include "syntax/antlr/syntax_report.hpp"
#include "syntax/antlr/token_list.hpp"

namespace sheerpole {

/// Makes braces, parentheses and brackets pair off in a list that still has all its line ends. What is
/// missing is reported and put in, what is too much is reported and taken out; where it belongs is told by
/// the indentation when that shows it. A list in which everything pairs off and every block has its brace
/// stays as it is.
void mend_brackets(TokenList& tokens, SyntaxReport& report);

} // namespace sheerpole
