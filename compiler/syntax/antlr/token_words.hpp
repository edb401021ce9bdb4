#pragma once

#include "syntax/antlr/token_list.hpp"

#include <string>

namespace sheerpole {

/// What stands there, as a rigger would say it: "the number 12", "the end of the line", "the sign ,".
std::string describe(const TokenList& tokens, const antlr4::Token& token);

/// Whether a token of this type is a name, or a word that may be one.
bool is_word(std::size_t type);

/// Whether a token of this type begins a value and can not be the next word of a line.
bool begins_value(std::size_t type);

/// Whether the line goes no further: line end, closing brace, end of the file.
bool ends_line(std::size_t type);

/// Whether the type is `{`, `(` or `[`; and whether it is one of their counterparts.
bool opens(std::size_t type);
bool closes(std::size_t type);

/// `{` for `}`, and so on, both ways.
std::size_t counterpart(std::size_t type);

/// The sign itself, for `{`, `}`, `(`, `)`, `[` and `]`.
std::string sign_text(std::size_t type);

} // namespace sheerpole
