#pragma once

#include <concepts>
#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace sheerpole {

/// A place on the sheet in millimetres of paper: x to the right, y down, from the upper left corner.
struct PaperPoint {
  double x = 0.0;
  double y = 0.0;
};

/// Millimetres.
double distance(PaperPoint a, PaperPoint b);

/// Millimetres, to the nearest place of a straight line from a to b.
double distance_to_line(PaperPoint place, PaperPoint a, PaperPoint b);

/// The place at a share of the length of a path of straight lines, 0 to 1; it has at least one place.
PaperPoint place_on_path(const std::vector<PaperPoint>& path, double share);

/// An upright rectangle on the sheet, millimetres.
struct PaperBox {
  double left = 0.0;
  double top = 0.0;
  double right = 0.0;
  double bottom = 0.0;

  double width() const { return right - left; }
  double height() const { return bottom - top; }
  /// True when the two share more than an edge.
  bool overlaps(const PaperBox& other) const {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }
};

/// How a shape is drawn. Greys run from 0, black, to 1, white; widths and dashes are millimetres.
struct ShapeStyle {
  double stroke_width = 0.25; ///< 0: no outline
  double stroke_grey = 0.0;
  std::vector<double> dashes; ///< ink, gap, ink, gap …; empty: solid
  std::optional<double> fill_grey;

  friend bool operator==(const ShapeStyle& a, const ShapeStyle& b) = default;
};

struct LineShape {
  PaperPoint from;
  PaperPoint to;
  ShapeStyle style;
  std::string id; ///< empty, or unique in the drawing
};

struct PolylineShape {
  std::vector<PaperPoint> points;
  ShapeStyle style;
  std::string id;
};

/// A closed outline.
struct PolygonShape {
  std::vector<PaperPoint> points;
  ShapeStyle style;
  std::string id;
};

struct CircleShape {
  PaperPoint centre;
  double radius = 1.0;
  ShapeStyle style;
  std::string id;
};

struct RectangleShape {
  PaperBox box;
  ShapeStyle style;
  std::string id;
};

/// Black squares on a grid, as a code for readers has them: one shape, since there are hundreds of them.
struct ModulesShape {
  PaperPoint corner;
  double module = 1.0;     ///< side of a square, millimetres
  int across = 0;          ///< squares of a row
  std::vector<bool> black; ///< row by row from the top

  bool is_black(int row, int column) const {
    return black[static_cast<std::size_t>(row * across + column)];
  }
};

/// A picture, drawn as wide and high as its box.
struct PictureShape {
  PaperBox box;
  std::shared_ptr<const std::string> bytes; ///< of a JPEG or a PNG; not null
  bool jpeg = true;
};

enum class TextAnchor { start, middle, end };

/// One line of upright text.
struct TextShape {
  PaperPoint at; ///< on the base line
  std::string text;
  double size = 2.5; ///< em, millimetres
  TextAnchor anchor = TextAnchor::start;
  bool bold = false;
  std::string id;
  bool fixed_pitch = false; ///< in a face whose signs are all as wide
  double grey = 0.0;        ///< 1: white, on black
};

class DrawnNode;

/// Shapes that belong together, with words for whoever can not see them.
struct ShapeGroup {
  std::string id;          ///< empty, or unique in the drawing
  std::string title;       ///< short; shown by viewers when the pointer rests there; may be empty
  std::string description; ///< longer; may be empty
  std::vector<DrawnNode> children;
  /// Where a reader gets to who follows the group: "#stay-forestay". Written in pages only; empty: nowhere.
  std::string link = {};
  /// What the group is to whoever has a PDF read aloud: an element of its structure by its standard name
  /// (ISO 32000-1, 14.8.4), "H2", "P", "Table", "TR", "TH", "TD", "Figure". Written for PDFs only; empty:
  /// nothing.
  std::string tag = {};

  template <class Shape>
  void add(Shape&& shape);
};

using DrawnContent = std::variant<LineShape, PolylineShape, PolygonShape, CircleShape, RectangleShape,
                                  ModulesShape, PictureShape, TextShape, ShapeGroup>;

/// A shape or a group of them. It lies where it was made, since shapes are moved a dozen times until a page
/// is done: into a growing list, into the element of a structure, into that of the table round it. A copy
/// is whole; nothing may be asked of one that was moved away.
class DrawnNode {
public:
  template <class Shape>
  requires(!std::same_as<std::remove_cvref_t<Shape>, DrawnNode>) explicit DrawnNode(Shape&& shape)
      : content_(std::make_unique<DrawnContent>(std::in_place_type<std::remove_cvref_t<Shape>>,
                                                std::forward<Shape>(shape))) {}
  DrawnNode(const DrawnNode& other) : content_(std::make_unique<DrawnContent>(*other.content_)) {}
  DrawnNode(DrawnNode&&) noexcept = default;
  DrawnNode& operator=(const DrawnNode& other) { return *this = DrawnNode(other); }
  DrawnNode& operator=(DrawnNode&&) noexcept = default;
  ~DrawnNode() = default;

  const DrawnContent& content() const { return *content_; }
  DrawnContent& content() { return *content_; }

private:
  std::unique_ptr<DrawnContent> content_;
};

template <class Shape>
void ShapeGroup::add(Shape&& shape) {
  children.emplace_back(std::forward<Shape>(shape));
}

struct Reflow;

/// One sheet.
struct Drawing {
  double width = 420.0;  ///< millimetres
  double height = 297.0; ///< millimetres
  std::string title;
  std::string description;
  ShapeGroup content;
  /// What a narrow screen shows in place of this sheet and of those behind it without one of their own
  /// (page/reflow.hpp); null: nothing else than the sheet.
  std::shared_ptr<const Reflow> reflow = {};
};

/// The shapes drawn `scale` times as large, with what was the corner of their sheet at `at`. Widths of
/// lines, dashes and texts are scaled too. Links and ids are kept.
ShapeGroup placed(const ShapeGroup& group, PaperPoint at, double scale);

} // namespace sheerpole
