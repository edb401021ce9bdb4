#pragma once

#include "backend/drawing/drawing.hpp"

#include <set>
#include <string>
#include <string_view>

namespace sheerpole {

class MarkupBuffer;

/// A name as part of an XML id: letters, digits, `.`, `-` and `_` stay; any other byte becomes `_` and its
/// two hexadecimal digits, and `_` itself `__`, so that two names never make one id. The id as a whole must
/// begin with a letter: put a word before it.
std::string element_id(std::string_view name);

/// The drawing as an SVG 1.1 file in UTF-8: one element a line, attributes in one order, lengths with three
/// decimals, greys only, no script and nothing that is loaded from elsewhere. Titles and descriptions
/// become <title> and <desc>, which screen readers read. Every text carries textLength, so that it keeps to
/// its set width in any face.
std::string write_svg(const Drawing& drawing);

/// The same for a PDF: each group with a tag has it as its class, and links are written, to places in it
/// and to the PDFs of these names beside it.
std::string write_tagged_svg(const Drawing& drawing, const std::set<std::string>& papers);

/// The same as an element to stand in an HTML page: no declaration, no paper under it. Ids are put behind
/// `prefix`, so that several drawings can stand in one page.
std::string write_svg_element(const Drawing& drawing, const std::string& prefix);
/// The same at the end of a page.
void add_svg_element(const Drawing& drawing, const std::string& prefix, MarkupBuffer& into);

} // namespace sheerpole
