#pragma once

#include "syntax/syntax_tree.hpp"

#include <string>

namespace sheerpole {

/// The tree as indented text, one node a line, with the names and values as written. For `--print syntax`.
std::string print_tree(const SyntaxTree& tree);

} // namespace sheerpole
