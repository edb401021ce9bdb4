#include "backend/diagram/strip_drawings.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/strips/strip_layout.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::string_view not_to_scale = "Its parts from aloft, left, to deck, right. Not to scale. "
                                          "Millimetres; the numbers under the ticks are "
                                          "distances from the upper pin.";

} // namespace

Drawing strip_drawing(const Strip& strip, double width, const std::string& word) {
  const StripLayout layout = lay_out_strip(strip, width);
  Drawing drawing;
  drawing.width = width;
  drawing.title = "Strip of " + strip.name + (word.empty() ? "" : ", " + word);
  drawing.description = not_to_scale;
  double y = 0.0;
  ShapeGroup group;
  if (!word.empty()) {
    // Ids are those of the strip, which may be drawn a second time as it is now.
    group.id = "when-" + word;
    y = draw_text_block({word}, {0.0, 0.0}, plain_text_size, true, group);
  }
  draw_strip(strip, layout, {0.0, y}, width, group);
  if (!word.empty())
    if (auto* drawn = std::get_if<ShapeGroup>(&group.children.back().content))
      drawn->id += "-" + word;
  drawing.content = std::move(group);
  drawing.height = y + layout.height;
  return drawing;
}

const Strip* find_strip(const std::vector<Strip>& strips, const Stay& stay) {
  const auto of = [&](const std::string& name) {
    return std::find_if(strips.begin(), strips.end(), [&](const Strip& one) { return one.name == name; });
  };
  auto found = of(stay.name);
  if (found == strips.end())
    found = of(stay.base);
  return found == strips.end() ? nullptr : &*found;
}

} // namespace sheerpole
