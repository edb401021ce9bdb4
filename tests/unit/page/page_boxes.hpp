#pragma once

#include "backend/drawing/label_text.hpp"
#include "backend/page/paper.hpp"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace sheerpole {

/// Every text of a page with the room that it takes in the face that the page names: its set width, 0.95 em
/// above the base line and 0.25 em below.
inline std::vector<LabelBox> set_boxes(const ShapeGroup& group) {
  std::vector<LabelBox> boxes;
  for (const DrawnNode& node : group.children) {
    if (const auto* inner = std::get_if<ShapeGroup>(&node.content())) {
      const auto more = set_boxes(*inner);
      boxes.insert(boxes.end(), more.begin(), more.end());
    } else if (const auto* text = std::get_if<TextShape>(&node.content())) {
      const double width = set_width(*text);
      const double left = text->anchor == TextAnchor::start    ? text->at.x
                          : text->anchor == TextAnchor::middle ? text->at.x - width / 2.0
                                                               : text->at.x - width;
      boxes.push_back(
          {text->text,
           text->size,
           {left, text->at.y - 0.95 * text->size, left + width, text->at.y + 0.25 * text->size}});
    }
  }
  return boxes;
}

/// Nothing cut off at the margins, no text on another.
inline void expect_well_set(const std::vector<Drawing>& pages) {
  for (const Drawing& page : pages) {
    const std::vector<LabelBox> boxes = set_boxes(page.content);
    EXPECT_FALSE(boxes.empty()) << page.title;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      const PaperBox& box = boxes[i].box;
      EXPECT_GE(box.left, page_margin - 0.01) << page.title << ": " << boxes[i].text;
      EXPECT_GE(box.top, page_margin - 0.01) << page.title << ": " << boxes[i].text;
      EXPECT_LE(box.right, page.width - page_margin + 0.01) << page.title << ": " << boxes[i].text;
      EXPECT_LE(box.bottom, page.height - page_margin + 0.01) << page.title << ": " << boxes[i].text;
      for (std::size_t other = 0; other < i; ++other)
        EXPECT_FALSE(box.overlaps(boxes[other].box))
            << page.title << ": `" << boxes[i].text << "` on `" << boxes[other].text << "`";
    }
  }
}

} // namespace sheerpole
