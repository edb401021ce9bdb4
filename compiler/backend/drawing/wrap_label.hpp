#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Breaks a text into lines whose label boxes are at most `width` millimetres wide, at blanks, or inside a
/// word that is wider than a line: after a hyphen where there is one. At least one line, also for an empty
/// text; no text is lost but the blanks at the breaks. A single character wider than a line stands alone.
std::vector<std::string> wrap_label(std::string_view text, double size, double width, bool bold = false);

} // namespace sheerpole
