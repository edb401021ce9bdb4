#include "backend/diagram/views/view_block.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/views/view_drawing.hpp"
#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "units/format_length.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/diagram_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double fan_room = 6.5;        // between the rig and a column
constexpr double narrowest_view = 40.0; // the word above the centreline must fit between the headings

/// Tells a program where a place of the boat lies on the sheet.
std::string place_text(const ViewFrame& frame) {
  return say(DiagramPhrase::one_metre_of_boat_is, format_fixed(frame.millimetres_per_metre, 4),
             format_fixed(frame.origin.x, 3), format_fixed(frame.origin.y, 3));
}

std::vector<LabelRequest> shifted(std::vector<LabelRequest> requests, PaperPoint by) {
  for (LabelRequest& request : requests) {
    request.site.x += by.x;
    request.site.y += by.y;
  }
  return requests;
}

/// What the side view does with pairs.
std::string pairs_text(const Rig& rig, const ViewBlock& block) {
  const ViewFrame frame{block.kind, block.millimetres_per_metre, {}};
  bool pairs = false;
  bool apart = false;
  for (const Point& point : rig.points)
    if (point.twin) {
      pairs = true;
      apart = apart ||
              !near_each_other(frame.at(point.position), frame.at(rig[*point.twin].position), coincident);
    }
  return !pairs  ? ""
         : apart ? say(DiagramPhrase::where_port_starboard_differ_both)
                 : say(DiagramPhrase::port_starboard_coincide_one_line);
}

} // namespace

ViewBlock measure_view(const Rig& rig, ViewKind kind, double millimetres_per_metre, bool both_sides,
                       LabelSites sites, const Spar* mast) {
  ViewBlock block;
  if (mast != nullptr) {
    block.mast = element_id(mast->name);
    block.mast_words = spar_words(*mast);
  }
  block.kind = kind;
  block.millimetres_per_metre = millimetres_per_metre;
  block.extent = extent_of(rig, kind);
  block.labels =
      view_labels(rig, {kind, millimetres_per_metre, {}, block.mast}, block.extent, both_sides, sites);
  const ViewHeadings headings = view_headings(kind);
  const auto width_of = [](const std::vector<LabelRequest>& requests, const std::string& heading) {
    return std::max(column_width(requests),
                    column_width({{{heading}, {}, small_text_size, true, false, {}}}));
  };
  block.left_width = width_of(block.labels.left, headings.left);
  block.right_width = width_of(block.labels.right, headings.right);
  block.view_width = std::max(
      (block.extent.right - block.extent.left) * millimetres_per_metre + 2 * fan_room, narrowest_view);
  block.view_height = (block.extent.bottom - block.extent.top) * millimetres_per_metre;
  block.column_height =
      std::max({block.view_height, column_height(block.labels.left), column_height(block.labels.right)});
  return block;
}

void draw_view(const Rig& rig, const ViewBlock& block, PaperPoint at, ShapeGroup& into) {
  const double scale = block.millimetres_per_metre;
  const double view_left = at.x + block.left_width;
  const double view_right = view_left + block.view_width;
  const double top = at.y + heading_height;
  const ViewFrame frame{
      block.kind,
      scale,
      {(view_left + view_right) / 2 - (block.extent.left + block.extent.right) / 2 * scale,
       top - block.extent.top * scale},
      block.mast};
  const std::string name = id_of(frame);

  ShapeGroup view{name + "-view", view_caption(rig, block).front(), place_text(frame), {}};
  // Leaders lie over the stays that they cross and end under the point marks.
  draw_view_lines(rig, frame, block.extent, view);
  ShapeGroup labels{name + "-labels", {}, {}, {}};
  const double bottom = top + block.column_height;
  // A label beside the uppermost or lowest point may stand level with it.
  const double overhang = stay_text_size / 2;
  place_labels(shifted(block.labels.left, frame.origin),
               {view_left, true, top - overhang, bottom + overhang}, labels);
  place_labels(shifted(block.labels.right, frame.origin),
               {view_right, false, top - overhang, bottom + overhang}, labels);
  view.add(std::move(labels));
  draw_view_points(rig, frame, view);

  const ViewHeadings headings = view_headings(block.kind);
  const double heading_base = top - reference_line_overrun - 1.6;
  const auto heading = [&](const std::string& text, double x, TextAnchor anchor, bool bold) {
    if (!text.empty())
      view.add(TextShape{{x, heading_base}, text, small_text_size, anchor, bold, {}});
  };
  heading(headings.left, view_left, TextAnchor::end, true);
  heading(headings.middle, frame.origin.x, TextAnchor::middle, false);
  heading(headings.right, view_right, TextAnchor::start, true);

  double y = bottom + reference_line_overrun + 1.5;
  bool bold = true;
  for (const std::string& sentence : view_caption(rig, block)) {
    const double size = bold ? stay_text_size : plain_text_size;
    y = draw_text_block(wrap_label(sentence, size, block.width(), bold), {at.x, y}, size, bold, view);
    bold = false;
  }
  into.add(std::move(view));
}

ViewHeadings view_headings(ViewKind kind) {
  switch (kind) {
  case ViewKind::side:
    return {say(DiagramPhrase::aft), "", say(DiagramPhrase::forward)};
  case ViewKind::front:
    return {say(DiagramPhrase::port), say(DiagramPhrase::centreline), say(DiagramPhrase::starboard)};
  case ViewKind::deck:
    return {say(DiagramPhrase::port), say(DiagramPhrase::centreline_bow), say(DiagramPhrase::starboard)};
  }
  return {};
}

std::vector<std::string> view_caption(const Rig& rig, const ViewBlock& block) {
  std::vector<std::string> caption;
  switch (block.kind) {
  case ViewKind::side:
    caption = {say(DiagramPhrase::side_view_seen_from_starboard), pairs_text(rig, block)};
    break;
  case ViewKind::front:
    caption = {block.mast.empty() ? say(DiagramPhrase::seen_from_astern_looking_forward)
                                  : say(DiagramPhrase::seen_from_astern, block.mast_words)};
    break;
  case ViewKind::deck:
    caption = {say(DiagramPhrase::deck_view_seen_from_above)};
    break;
  }
  if (block.labels.port_left_out)
    caption.emplace_back(say(DiagramPhrase::labels_starboard_hold_for_port));
  if (block.labels.too_many)
    caption.emplace_back(say(DiagramPhrase::too_many_stays_points_name));
  if (block.labels.crowded)
    caption.emplace_back(say(DiagramPhrase::points_too_close_together_here));
  caption.erase(std::remove(caption.begin(), caption.end(), std::string()), caption.end());
  return caption;
}

} // namespace sheerpole
