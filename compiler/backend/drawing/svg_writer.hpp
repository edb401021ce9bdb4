#pragma once

#include "backend/drawing/drawing.hpp"

#include <string>

namespace sheerpole {

/// The drawing as an SVG 1.1 file in UTF-8: one element a line, attributes in one order, lengths with three
/// decimals, greys only, no script and nothing that is loaded from elsewhere. Titles and descriptions
/// become <title> and <desc>, which screen readers read. Every text carries textLength, so that it keeps to
/// its set width in any face.
std::string write_svg(const Drawing& drawing);

/// The same as an element to stand in an HTML page: no declaration, no paper under it. Ids are put behind
/// `prefix`, so that several drawings can stand in one page.
std::string write_svg_element(const Drawing& drawing, const std::string& prefix);

} // namespace sheerpole
