#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sheerpole {

/// How wide a page of help is: as wide as the terminal, from 60 to 120 columns; 120 where it goes
/// elsewhere.
std::size_t help_width();

/// The library's page of help in lines of so many columns: what an option is stays in its own column, and
/// lists of words stand there alone and not in its name as well.
std::string fitted_help(std::string_view page, std::size_t width);

} // namespace sheerpole
