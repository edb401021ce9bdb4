#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// A name as part of an XML id: letters, digits, `.`, `-` and `_` stay; any other byte becomes `_` and its
/// two hexadecimal digits, and `_` itself `__`, so that two names never make one id. The id as a whole must
/// begin with a letter: put a word before it.
std::string element_id(std::string_view name);

} // namespace sheerpole
