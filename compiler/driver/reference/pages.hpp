#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What a rig file can declare and state, from the table of kinds: each kind, each end, and the word `line`
/// of a stack.
std::string kinds_page();

/// docs/calculations/thresholds.md: the thresholds of the checks with the class of each number.
std::string limits_page();

/// The text so that none of its signs is read as markup. Words between backticks stay as code.
std::string markdown_text(std::string_view text);

/// The text as code inside a line; empty for an empty text. `|` is escaped, as a cell of a table needs it.
std::string markdown_code(std::string_view text);

/// One row of a table, the cells as they are.
std::string markdown_row(const std::vector<std::string>& cells);

/// A table's heading and the line below it.
std::string markdown_heading_row(const std::vector<std::string>& cells);

} // namespace sheerpole
