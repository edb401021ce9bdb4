#include "backend/diagram/strips/adjuster_bar.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/drawing/label_box.hpp"
#include "backend/drawing/wrap_label.hpp"

namespace sheerpole {

namespace {

constexpr double side_room = 2.0;
constexpr double mark_height = 1.4; // of the mark that stands on the bar
constexpr double bar_height = 2.0;
constexpr double end_text_height = 3.4; // the ends of the range stand below it

std::vector<std::string> ways_left(const StripAdjuster& adjuster, double width) {
  std::vector<std::string> lines = wrap_label(adjuster.tighten, small_text_size, width - 2 * side_room);
  for (std::string& line : wrap_label(adjuster.slacken, small_text_size, width - 2 * side_room))
    lines.push_back(std::move(line));
  return lines;
}

} // namespace

double adjuster_bar_height(const StripAdjuster& adjuster, double width) {
  return mark_height + bar_height + end_text_height +
         line_spacing * small_text_size * static_cast<double>(ways_left(adjuster, width).size());
}

void draw_adjuster_bar(const StripAdjuster& adjuster, PaperPoint at, double width, ShapeGroup& into) {
  const double left = at.x + side_room;
  const double right = at.x + width - side_room;
  const double top = at.y + mark_height;
  const double set = left + adjuster.share * (right - left);
  into.add(RectangleShape{{left, top, right, top + bar_height}, {0.2, 0.0, {}, 1.0}, {}});
  into.add(RectangleShape{{left, top, set, top + bar_height}, {0.2, 0.0, {}, 0.8}, {}});
  into.add(PolygonShape{
      {{set, top + bar_height}, {set - 0.9, top - 1.1}, {set + 0.9, top - 1.1}}, {0.0, 0.0, {}, 0.0}, {}});
  const double base = top + bar_height + 0.3 + 0.95 * small_text_size;
  into.add(TextShape{{left, base}, adjuster.shortest, small_text_size, TextAnchor::start, false, {}});
  into.add(TextShape{{right, base}, adjuster.longest, small_text_size, TextAnchor::end, false, {}});
  draw_text_block(ways_left(adjuster, width), {left, top + bar_height + end_text_height}, small_text_size,
                  false, into);
}

} // namespace sheerpole
