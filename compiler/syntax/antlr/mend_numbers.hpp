#pragma once

#include "syntax/antlr/syntax_report.hpp"
#include "syntax/antlr/token_list.hpp"

namespace sheerpole {

/// Reports the malformed number at `index` with the readings that it could have had. With `in_vector`,
/// `1,2,3` is taken apart; elsewhere the number stays, and makes an error expression.
void mend_number(TokenList& tokens, std::size_t index, bool in_vector, SyntaxReport& report);

} // namespace sheerpole
