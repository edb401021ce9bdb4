#pragma once

#include <cairo.h>

#include <map>
#include <memory>
#include <string>
#include <string_view>

namespace sheerpole {

/// One line of text: where its base line begins, ends or has its middle, and how wide it is set.
struct PaintedText {
  std::string_view words; ///< UTF-8
  double x = 0.0;         ///< in the units of the drawing
  double y = 0.0;
  double size = 1.0; ///< em
  bool bold = false;
  double width = 0.0;  ///< that it is set to; 0: as wide as the face makes it
  double before = 0.0; ///< share of the width that lies left of x: 0 start, 0.5 middle, 1 end
};

/// Draws texts in one face. What the face has is set glyph by glyph, each gap wider or narrower alike so
/// that the text is as wide as it was measured; what it has not, and what is not written from left to
/// right, is left to pango.
class TextPainter {
public:
  explicit TextPainter(std::string face);
  ~TextPainter();
  TextPainter(const TextPainter&) = delete;
  TextPainter& operator=(const TextPainter&) = delete;

  void paint(cairo_t* context, const PaintedText& text);

private:
  struct Glyphs;
  /// The face in this weight and size; kept.
  Glyphs& glyphs(bool bold, double size);
  void paint_with_pango(cairo_t* context, const PaintedText& text) const;

  std::string face_;
  std::map<std::pair<bool, double>, std::unique_ptr<Glyphs>> sizes_;
};

} // namespace sheerpole
