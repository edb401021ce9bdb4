#pragma once

#include "syntax/antlr/slip_findings.hpp"
#include "syntax/antlr/token_list.hpp"

namespace sheerpole {

/// Reports every refused spelling in a list that still has all its line ends, and puts what was meant in
/// its place, so that the parser does not stumble over it again. Lines on which something had to be left
/// out are noted in the list as doubtful.
void mend_spellings(TokenList& tokens, SyntaxReport& report);

/// Where a number stands: as a part of `(x, y, z)`, in a setting in parentheses, or in a line.
enum class NumberPlace { vector, setting, line };

/// Reports the malformed number at `index` with the readings that it could have had. In a vector, `1,2,3`
/// is taken apart; elsewhere the number stays, and makes an error expression.
void mend_number(TokenList& tokens, std::size_t index, NumberPlace where, SyntaxReport& report);

/// Makes braces, parentheses and brackets pair off in a list that still has all its line ends. What is
/// missing is reported and put in, what is too much is reported and taken out; where it belongs is told by
/// the indentation when that shows it. A list in which everything pairs off and every block has its brace
/// stays as it is.
void mend_brackets(TokenList& tokens, SyntaxReport& report);

} // namespace sheerpole
