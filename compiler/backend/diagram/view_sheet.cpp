#include "backend/diagram/view_sheet.hpp"

#include "backend/boat_title.hpp"
#include "backend/diagram/views/drawn_stay.hpp"
#include "backend/diagram/views/usual_scales.hpp"
#include "backend/diagram/views/view_block.hpp"
#include "backend/diagram/views/view_caption.hpp"
#include "backend/drawing/element_id.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <optional>

namespace sheerpole {

namespace {

double needed_height(const ViewBlock& block) {
  return heading_height + block.column_height + caption_height;
}

/// The view at the largest usual scale at which it fits.
std::optional<ViewBlock> fitting_view(const Rig& rig, ViewKind kind, double width, double height) {
  const ViewExtent extent = extent_of(rig, kind);
  const double largest = std::max({extent.right - extent.left, extent.bottom - extent.top, 0.1}); // metres
  for (const double scale : usual_denominators()) {
    if (largest * 1000.0 / scale > std::max(width, height))
      continue; // spares finding the labels of a view that is too large anyway
    for (const bool both_sides : {true, false}) {
      const auto measured = [&](LabelSites sites) {
        return measure_view(rig, kind, 1000.0 / scale, both_sides, sites);
      };
      const ViewBlock block = measured(LabelSites::rough);
      if (block.width() <= width && needed_height(block) <= height)
        return measured(LabelSites::exact);
      if (kind != ViewKind::deck)
        break;
    }
    // Where the names of a small view do not fit they fit no smaller one.
    if (largest * 1000.0 / scale < 40.0)
      break;
  }
  return std::nullopt;
}

/// Gives the lines and the names of the stays their links.
void link_stays(ShapeGroup& group, const std::map<std::string, const Stay*>& stays, const StayLink& link) {
  if (const auto found = stays.find(group.id); found != stays.end()) {
    group.link = link(*found->second);
    if (group.title.empty())
      group.title = shown_name(*found->second);
  }
  for (DrawnNode& child : group.children)
    if (auto* inner = std::get_if<ShapeGroup>(&child.content))
      link_stays(*inner, stays, link);
}

} // namespace

Drawing view_sheet(const CheckedRig& checked, ViewKind kind, double width, double height,
                   const StayLink& link) {
  const Rig& rig = checked.rig();
  Drawing drawing;
  std::optional<ViewBlock> block = fitting_view(rig, kind, width, height);
  if (!block) {
    const ViewExtent extent = extent_of(rig, kind);
    const double largest = std::max({extent.right - extent.left, extent.bottom - extent.top, 0.1});
    block = measure_view(rig, kind, 0.5 * std::min(width, height) / largest, true, LabelSites::exact);
  }
  drawing.width = std::max(width, block->width());
  drawing.height = std::max(needed_height(*block), 1.0);
  drawing.title = view_caption(rig, *block).front() + " of " + boat_title(checked);
  drawing.description = fmt::format("To the scale 1:{} when printed at full size.",
                                    format_fixed(1000.0 / block->millimetres_per_metre, 0));
  draw_view(rig, *block, {(drawing.width - block->width()) / 2.0, 0.0}, drawing.content);

  std::map<std::string, const Stay*> stays;
  for (const Stay& stay : rig.stays)
    for (const char* what : {"stay", "label-stay"})
      stays[fmt::format("{}-{}-{}", name_of(kind), what, element_id(stay.name))] = &stay;
  link_stays(drawing.content, stays, link);
  return drawing;
}

} // namespace sheerpole
