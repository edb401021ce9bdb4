#pragma once

#include <string_view>

namespace sheerpole {

void print_out(std::string_view text);
void print_error(std::string_view text);

/// Says what is being done, on the error stream and only when that is a terminal.
void print_progress(std::string_view text);

/// Colours are for terminals, and not where NO_COLOR is set.
bool out_has_colour();
bool error_has_colour();

} // namespace sheerpole
