#pragma once

#include "syntax/antlr/syntax_report.hpp"
#include "syntax/antlr/token_list.hpp"

namespace sheerpole {

/// Reports every refused spelling in a list that still has all its line ends, and puts what was meant in
/// its place, so that the parser does not stumble over it again. Lines on which something had to be left
/// out are noted in the list as doubtful.
void mend_spellings(TokenList& tokens, SyntaxReport& report);

} // namespace sheerpole
