#pragma once

#include "driver/pdf/text_painter.hpp"

#include <cairo.h>
#include <pugixml.hpp>

#include <cstddef>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A place of a document that its readers find in a list beside it.
struct Bookmark {
  int level = 0; ///< 0: of the document itself
  std::string words;
  std::size_t page = 1;
  double y = 0.0; ///< in the units of the drawing, from the top
};

/// Draws the pages of one document that backend/drawing/svg_writer.cpp wrote: groups, lines, polylines,
/// polygons, circles, rectangles and texts in millimetres. That is all of SVG which our drawings use;
/// anything else is refused and never left out silently. A class of a group is an element of the structure,
/// its id a place that links lead to; a page without a class is a figure.
class PagePainter {
public:
  explicit PagePainter(TextPainter& texts) : texts_(texts) {}

  /// Takes the next page, to be drawn later: links may lead to places of pages behind them. Returns what is
  /// wrong with it, or nothing.
  std::optional<std::string> take(std::string_view svg);
  /// Draws the page of this number, from 1; what went wrong, or nothing.
  std::optional<std::string> paint(cairo_t* context, std::size_t number);

  std::size_t pages() const { return pages_.size(); }
  /// Words for each figure, in the order in which they were begun.
  const std::vector<std::string>& figures() const { return figures_; }
  /// Where papers of several kinds of pages begin, and their headings.
  std::vector<Bookmark> bookmarks() const;

private:
  using Fault = std::optional<std::string>; ///< what went wrong, or nothing
  Fault node(cairo_t* context, const pugi::xml_node& node);
  Fault group(cairo_t* context, const pugi::xml_node& node);
  Fault children(cairo_t* context, const pugi::xml_node& node);
  Fault text(cairo_t* context, const pugi::xml_node& node);
  void note_heading(const pugi::xml_node& heading, int level);
  std::string words_of_figure(const pugi::xml_node& figure) const;

  TextPainter& texts_;
  std::vector<std::unique_ptr<pugi::xml_document>> pages_;
  std::set<std::string> places_;
  std::vector<std::string> figures_;
  std::vector<Bookmark> headings_;
  std::vector<Bookmark> titles_;
  std::size_t page_ = 0;
  bool in_figure_ = false;
};

} // namespace sheerpole
