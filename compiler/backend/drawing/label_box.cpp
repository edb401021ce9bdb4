#include "backend/drawing/label_box.hpp"

#include "backend/drawing/text_width.hpp"
#include "base/code_point.hpp"

namespace sheerpole {

namespace {

void collect(const ShapeGroup& group, std::vector<LabelBox>& found) {
  for (const DrawnNode& node : group.children) {
    if (const auto* text = std::get_if<TextShape>(&node.content))
      found.push_back({text->text, text->size, label_box(*text)});
    else if (const auto* inner = std::get_if<ShapeGroup>(&node.content))
      collect(*inner, found);
  }
}

} // namespace

double set_width(const TextShape& text) {
  return (text.fixed_pitch ? fixed_pitch_in_ems * static_cast<double>(screen_columns(text.text))
                           : text_width_in_ems(text.text, text.bold)) *
         text.size;
}

PaperBox label_box(const TextShape& text) {
  // The common faces of fixed pitch are as wide as this one (from memory), and a text keeps its set width.
  const double width = set_width(text) * (text.fixed_pitch ? 1.0 : wide_face_allowance);
  const double before = text.anchor == TextAnchor::start    ? 0.0
                        : text.anchor == TextAnchor::middle ? width / 2
                                                            : width;
  return {text.at.x - before, text.at.y - 0.95 * text.size, text.at.x - before + width,
          text.at.y + 0.25 * text.size};
}

std::vector<LabelBox> label_boxes(const Drawing& drawing) {
  std::vector<LabelBox> found;
  collect(drawing.content, found);
  return found;
}

} // namespace sheerpole
