#pragma once

#include "backend/drawing/drawing.hpp"

#include <string>
#include <vector>

namespace sheerpole {

// What cards are drawn with: black on white, nothing depends on a grey.

/// An outline this wide, millimetres.
ShapeStyle ink(double width, std::vector<double> dashes = {});
/// An outline of 0.35 mm round a face; 0 is black.
ShapeStyle filled_ink(double grey);

void write(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold = false,
           TextAnchor anchor = TextAnchor::start);
/// White, for a black cell.
void write_white(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold = false,
                 TextAnchor anchor = TextAnchor::start);

/// A text in the largest of some sizes at which it is one line, else broken at the smallest.
struct SetLines {
  std::vector<std::string> lines;
  double size = 3.0; ///< em, millimetres

  double height() const;
};
SetLines set_lines(const std::string& text, double room, bool bold, const std::vector<double>& sizes);
/// Draws them below each other; `top` is above the first. Returns the y below the last.
double write_lines(ShapeGroup& into, const SetLines& set, PaperPoint top, bool bold,
                   TextAnchor anchor = TextAnchor::start);

/// Black, without an outline.
void black_box(ShapeGroup& into, PaperBox box);

/// A frame filled from above; close() draws it and returns the y below it.
class SideBox {
public:
  SideBox(ShapeGroup& into, PaperPoint at, double width) : into_(into), at_(at), width_(width), y_(at.y) {}

  /// White on black: what to read before going on.
  void head(const std::string& words);
  /// A name and its amount to the right.
  void row(const std::string& name, const std::string& amount);
  /// Two small names, each with its amount, on one line.
  void two_amounts(const std::string& first, const std::string& of_first, const std::string& second,
                   const std::string& of_second);
  /// A name and a line to write on.
  void blank(const std::string& name, bool bold);
  /// Two lines to write on beside each other, each with its word.
  void two_blanks(const std::string& first, const std::string& second);
  void words(const std::string& text, bool bold);
  double close();

private:
  static constexpr double pad = 2.0;
  ShapeGroup& into_;
  PaperPoint at_;
  double width_;
  double y_;
  bool headed_ = false;
};

} // namespace sheerpole
