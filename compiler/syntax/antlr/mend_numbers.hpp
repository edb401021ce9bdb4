#pragma once

#include "syntax/antlr/syntax_report.hpp"
#include "syntax/antlr/token_list.hpp"

namespace sheerpole {

/// Where a number stands: as a part of `(x, y, z)`, in a setting in parentheses, or in a line.
enum class NumberPlace { vector, setting, line };

/// Reports the malformed number at `index` with the readings that it could have had. In a vector, `1,2,3`
/// is taken apart; elsewhere the number stays, and makes an error expression.
void mend_number(TokenList& tokens, std::size_t index, NumberPlace where, SyntaxReport& report);

} // namespace sheerpole
