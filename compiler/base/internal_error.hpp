#pragma once

#include <source_location>
#include <string_view>

namespace sheerpole {

/// Our own bug: prints what was broken and where in the compiler, then exits with code 3. Never for a
/// user's mistake.
[[noreturn]] void internal_error(std::string_view what,
                                 std::source_location place = std::source_location::current());

} // namespace sheerpole
