#pragma once

#include "backend/drawing/drawing.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The pages as one HTML file that needs nothing else: no script, no network, no file beside it. Each page
/// is an inline drawing with its text as text, and prints on a sheet of its own, of the size of the first.
std::string html_of_pages(const std::string& title, const std::vector<Drawing>& pages);

} // namespace sheerpole
