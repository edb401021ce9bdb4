#include "backend/drawing/label_text.hpp"
#include "backend/page/foot.hpp"
#include "plugins/rig-drawing/iso_style.hpp"
#include "plugins/rig-drawing/rig_drawing.hpp"
#include "wording/papers/rig_drawing_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>

namespace sheerpole {

namespace {

using namespace rig_drawing;

/// What two neighbours both show, so that paper may be glued on paper.
constexpr double shared = 10.0;
/// Below the piece: what it is, and a length to measure.
constexpr double piece_foot = 14.0;

/// How the sheet is cut.
struct Cut {
  double page_width, page_height;
  double width, height; ///< of the sheet that one page shows
  int across, down;

  int pages() const { return across * down; }
};

int pieces(double whole, double one) {
  return std::max(1, static_cast<int>(std::ceil((whole - shared) / (one - shared) - 1e-9)));
}

Cut cut_on(const Drawing& sheet, double width, double height) {
  Cut cut{width, height, width - 2.0 * page_margin, height - 2.0 * page_margin - piece_foot, 1, 1};
  cut.across = pieces(sheet.width, cut.width);
  cut.down = pieces(sheet.height, cut.height);
  return cut;
}

/// Whether anything of the node may lie in the box. Text is taken with the room of a wide face.
bool reaches(const DrawnNode& node, const PaperBox& box) {
  const auto meets = [&](double left, double top, double right, double bottom) {
    return left <= box.right && box.left <= right && top <= box.bottom && box.top <= bottom;
  };
  const auto points = [&](const std::vector<PaperPoint>& all) {
    PaperBox of{1e9, 1e9, -1e9, -1e9};
    for (const PaperPoint& one : all)
      of = {std::min(of.left, one.x), std::min(of.top, one.y), std::max(of.right, one.x),
            std::max(of.bottom, one.y)};
    return meets(of.left, of.top, of.right, of.bottom);
  };
  if (const auto* line = std::get_if<LineShape>(&node.content()))
    return points({line->from, line->to});
  if (const auto* polyline = std::get_if<PolylineShape>(&node.content()))
    return points(polyline->points);
  if (const auto* polygon = std::get_if<PolygonShape>(&node.content()))
    return points(polygon->points);
  if (const auto* circle = std::get_if<CircleShape>(&node.content()))
    return meets(circle->centre.x - circle->radius, circle->centre.y - circle->radius,
                 circle->centre.x + circle->radius, circle->centre.y + circle->radius);
  if (const auto* rectangle = std::get_if<RectangleShape>(&node.content()))
    return meets(rectangle->box.left, rectangle->box.top, rectangle->box.right, rectangle->box.bottom);
  if (const auto* text = std::get_if<TextShape>(&node.content())) {
    const PaperBox of = label_box(*text);
    return meets(of.left, of.top, of.right, of.bottom);
  }
  return true;
}

/// What of a group lies in the box; ids are left out, since a page shows a piece of the thing and not it.
ShapeGroup kept_in(const ShapeGroup& group, const PaperBox& box) {
  ShapeGroup kept;
  kept.title = group.title;
  for (const DrawnNode& node : group.children) {
    if (const auto* inner = std::get_if<ShapeGroup>(&node.content())) {
      if (ShapeGroup some = kept_in(*inner, box); !some.children.empty())
        kept.add(std::move(some));
    } else if (reaches(node, box)) {
      kept.children.push_back(node);
    }
  }
  return kept;
}

/// White over what of the sheet lies beyond the piece.
void cover_margins(const Cut& cut, ShapeGroup& into) {
  const ShapeStyle white{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 1.0};
  const double right = page_margin + cut.width;
  const double bottom = page_margin + cut.height;
  const double beyond = 4000.0; // strokes of what lies outside the page
  for (const PaperBox& box :
       {PaperBox{-beyond, -beyond, page_margin, beyond}, PaperBox{right, -beyond, beyond, beyond},
        PaperBox{-beyond, -beyond, beyond, page_margin}, PaperBox{-beyond, bottom, beyond, beyond}})
    into.add(RectangleShape{{std::max(box.left, 0.0), std::max(box.top, 0.0),
                             std::min(box.right, cut.page_width), std::min(box.bottom, cut.page_height)},
                            white,
                            ""});
}

/// A cross on the middle of the strip that two pieces share, with the letter that both have.
void join_mark(PaperPoint at, const std::string& letter, bool upright, ShapeGroup& into) {
  constexpr double arm = 4.5;
  into.add(LineShape{{at.x - arm, at.y}, {at.x + arm, at.y}, solid(0.25), ""});
  into.add(LineShape{{at.x, at.y - arm}, {at.x, at.y + arm}, solid(0.25), ""});
  into.add(CircleShape{at, 2.0, solid(0.25), ""});
  const PaperPoint words =
      upright ? PaperPoint{at.x + 2.2, at.y - 2.6} : PaperPoint{at.x + 2.6, at.y - 1.0};
  into.add(TextShape{words, letter, plain_size, TextAnchor::start, true, ""});
}

/// "A", "B" to "Z", then "A2": of a seam.
std::string seam_name(int number) {
  const int round = number / 26;
  return std::string(1, static_cast<char>('A' + number % 26)) +
         (round == 0 ? "" : std::to_string(round + 1));
}

/// Where a piece is: its column and row from the upper left corner.
struct SheetPiece {
  int column, row;
};

constexpr std::array<double, 2> along{0.25, 0.75}; ///< where on a seam its marks stand

/// The marks of the seams round a piece. A seam has one name on both sides of it: those between columns
/// come first.
void draw_marks(const Cut& cut, SheetPiece piece, ShapeGroup& into) {
  const double right = page_margin + cut.width - shared / 2.0;
  const double left = page_margin + shared / 2.0;
  const double top = page_margin + shared / 2.0;
  const double bottom = page_margin + cut.height - shared / 2.0;
  const auto beside = [&](int column, int row) { return seam_name(row * (cut.across - 1) + column); };
  const auto below = [&](int column, int row) {
    return seam_name(cut.down * (cut.across - 1) + row * cut.across + column);
  };
  for (const double share : along) {
    const double y = page_margin + share * cut.height;
    const double x = page_margin + share * cut.width;
    if (piece.column > 0)
      join_mark({left, y}, beside(piece.column - 1, piece.row), true, into);
    if (piece.column + 1 < cut.across)
      join_mark({right, y}, beside(piece.column, piece.row), true, into);
    if (piece.row > 0)
      join_mark({x, top}, below(piece.column, piece.row - 1), false, into);
    if (piece.row + 1 < cut.down)
      join_mark({x, bottom}, below(piece.column, piece.row), false, into);
  }
}

void draw_foot(const Drawing& sheet, const Cut& cut, SheetPiece piece, ShapeGroup& into) {
  const double base = cut.page_height - page_margin - 9.5;
  const int number = piece.row * cut.across + piece.column + 1;
  into.add(TextShape{{page_margin, base},
                     say(RigDrawingPhrase::piece_row_column_print_full, sheet.title, number, cut.pages(),
                         piece.row + 1, cut.down, piece.column + 1, cut.across),
                     2.6,
                     TextAnchor::start,
                     false,
                     ""});
  // A length by which whoever prints it sees that nothing was made smaller.
  constexpr double length = 50.0;
  const double end = cut.page_width - page_margin;
  for (const double x : {end - length, end})
    into.add(LineShape{{x, base - 2.0}, {x, base + 1.0}, solid(0.25), ""});
  into.add(LineShape{{end - length, base - 0.5}, {end, base - 0.5}, solid(0.25), ""});
  into.add(TextShape{{end - length / 2.0, base - 1.2}, "50 mm", 2.6, TextAnchor::middle, false, ""});
}

} // namespace

std::vector<Drawing> tiles_of(const Drawing& sheet, const CheckedRig& checked, PaperSize paper) {
  const PaperExtent extent = paper_of(paper);
  const Cut standing = cut_on(sheet, extent.width, extent.height);
  const Cut lying = cut_on(sheet, extent.height, extent.width);
  const Cut& cut = lying.pages() < standing.pages() ? lying : standing;
  std::vector<Drawing> tiles;
  for (int row = 0; row < cut.down && cut.pages() > 1; ++row)
    for (int column = 0; column < cut.across; ++column) {
      const double left = column * (cut.width - shared);
      const double top = row * (cut.height - shared);
      Drawing tile;
      tile.width = cut.page_width;
      tile.height = cut.page_height;
      tile.title = say(RigDrawingPhrase::row_column, sheet.title, row + 1, column + 1);
      tile.description = say(RigDrawingPhrase::piece_sheet_full_size_with);
      tile.content.add(placed(kept_in(sheet.content, {left, top, left + cut.width, top + cut.height}),
                              {page_margin - left, page_margin - top}, 1.0));
      cover_margins(cut, tile.content);
      tile.content.add(RectangleShape{
          {page_margin, page_margin, page_margin + cut.width, page_margin + cut.height}, solid(0.1), ""});
      draw_marks(cut, {column, row}, tile.content);
      draw_foot(sheet, cut, {column, row}, tile.content);
      const std::string whose = say(RigDrawingPhrase::rig_drawing_begins, identity_words(checked));
      add_foot(foot_lines(whose, cut.page_width - 2.0 * page_margin), page_margin, tile);
      tiles.push_back(std::move(tile));
    }
  number_pages(tiles);
  return tiles;
}

} // namespace sheerpole
