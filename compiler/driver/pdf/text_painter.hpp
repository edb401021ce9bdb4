#pragma once

#include "driver/pdf/paper_fonts.hpp"

#include <cairo.h>

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

namespace sheerpole {

/// A stretch of one line that is set alike.
struct PaintedRun {
  std::string_view words; ///< UTF-8
  double size = 1.0;      ///< em
  double moved = 0.0;     ///< down from the base line
};

/// One line of text: where its base line begins, ends or has its middle, and how wide it is set.
struct PaintedText {
  std::vector<PaintedRun> runs; ///< behind each other
  double x = 0.0;               ///< in the units of the drawing
  double y = 0.0;
  double size = 1.0; ///< em
  bool bold = false;
  std::size_t face = 0; ///< of those of the painter
  double width = 0.0;   ///< that it is set to; 0: as wide as the face makes it
  double before = 0.0;  ///< share of the width that lies left of x: 0 start, 0.5 middle, 1 end
  bool goes_on = false; ///< a blank is put behind it, so that it does not run into what is read next
};

/// Draws texts in the faces that it is given. What the face has is set glyph by glyph, each gap wider or
/// narrower alike so that the text is as wide as it was measured; what it has not, and what is not written
/// from left to right, is left to pango and the other fonts of the papers. What none of those has is drawn
/// as `sign_for_missing`.
class TextPainter {
public:
  TextPainter(std::vector<std::string> faces, PaperFonts& fonts);
  ~TextPainter();
  TextPainter(const TextPainter&) = delete;
  TextPainter& operator=(const TextPainter&) = delete;

  /// Where the face of this name stands among its own; nothing when it is none of them.
  std::optional<std::size_t> face(std::string_view name) const;

  /// What went wrong, or nothing.
  std::optional<std::string> paint(cairo_t* context, const PaintedText& text);

  /// The signs that no font has, of the texts since the last call; each once.
  std::set<char32_t> take_missing() { return std::exchange(missing_, {}); }

private:
  struct Glyphs;
  struct SetRun;
  /// The face of a text in its weight and a size; kept.
  Glyphs& glyphs(const PaintedText& text, double size);
  std::optional<std::string> paint_with_pango(cairo_t* context, const PaintedText& text);
  /// The text with `sign_for_missing` where no font has its sign.
  std::string drawable(std::string_view words);

  std::vector<std::string> faces_;
  PaperFonts& fonts_;
  std::set<char32_t> missing_;
  std::map<std::tuple<std::size_t, bool, double>, std::unique_ptr<Glyphs>> sizes_;
};

} // namespace sheerpole
