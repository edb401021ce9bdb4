#include "backend/diagram/rig_diagram.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/views/page_plan.hpp"
#include "backend/diagram/views/view_block.hpp"
#include "backend/diagram/views/view_drawing.hpp"
#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "backend/paper_words.hpp"
#include "units/format_length.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/diagram_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <optional>

namespace sheerpole {

namespace {

/// What the sheet must say of stays that the views can not show.
std::string undrawn_text(const Rig& rig) {
  if (rig.stays.empty())
    return say(DiagramPhrase::no_stays_stated_rig_file);
  std::string names;
  for (const Stay& stay : rig.stays)
    if (stay.path.size() < 2)
      add_words(names, ", ", stay.name);
  return names.empty() ? names : say(DiagramPhrase::not_drawn_because_no_path, names);
}

std::string description_of(const Rig& rig) {
  if (rig.stays.empty())
    return say(DiagramPhrase::side_view_view_from_astern);
  std::string words = say(DiagramPhrase::side_view_view_from_astern_begins);
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    const Stay& stay = rig.stays[i];
    words += (i == 0 ? "" : "; ") + (stay.title.empty() ? stay.name : stay.title);
    if (stay.side != Side::centre)
      words += fmt::format(", {}", name_of(stay.side));
    words += fmt::format(", {}", name_of(rig[stay.material].kind));
  }
  return words + ".";
}

Drawing sheet_without_views(const CheckedRig& checked) {
  Drawing drawing;
  drawing.title = say(DiagramPhrase::rig_diagram, boat_title(checked));
  drawing.description = say(DiagramPhrase::rig_file_states_no_points);
  drawing.content.id = "sheet";
  draw_sheet_head(checked,
                  checked.rig().stays.empty() ? say(DiagramPhrase::rig_diagram_rig_file_states)
                                              : say(DiagramPhrase::rig_diagram_rig_file_states_begins),
                  drawing.width, drawing.content);
  draw_sheet_foot(say(DiagramPhrase::rig_diagram_begins), checked, drawing);
  return drawing;
}

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
    if (auto* inner = std::get_if<ShapeGroup>(&child.content()))
      link_stays(*inner, stays, link);
}

} // namespace

Drawing rig_diagram(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  if (rig.points.empty())
    return sheet_without_views(checked);

  const auto subtitle = [&](const PagePlan& plan) {
    const std::string sheet = plan.paper.empty() ? plan.paper : say(DiagramPhrase::on_paper, plan.paper);
    std::string words = say(DiagramPhrase::rig_diagram_views_1_when,
                            plan.fronts.size() < 2    ? say(DiagramPhrase::three)
                            : plan.fronts.size() == 2 ? say(DiagramPhrase::four)
                                                      : std::to_string(plan.fronts.size() + 2),
                            format_number(plan.scale), sheet);
    for (const std::string& junction : junction_sentences(rig))
      words += " " + junction;
    if (const std::string undrawn = undrawn_text(rig); !undrawn.empty())
      words += " " + undrawn;
    return words;
  };
  // The head is measured on the narrowest sheet, so that on a wider one it takes no more.
  PageRoom room;
  room.key_height = view_key_height(checked.rig());
  room.key_width = view_key_width;
  room.foot = sheet_margin + sheet_foot_height;
  ShapeGroup measured;
  room.head = draw_sheet_head(checked, subtitle({}), PagePlan{}.width, measured) + 2.0;
  const PagePlan plan = plan_page(rig, room);

  Drawing drawing;
  drawing.width = plan.width;
  drawing.height = plan.height;
  drawing.title = say(DiagramPhrase::rig_diagram, boat_title(checked));
  drawing.description = description_of(rig);
  drawing.content.id = "sheet";
  draw_sheet_head(checked, subtitle(plan), plan.width, drawing.content);

  const double deck_width = std::max(plan.deck.width(), room.key_width);
  double spare = plan.width - 2 * sheet_margin - plan.side.width() - deck_width;
  for (const MastView& front : plan.fronts)
    spare -= front.block.width();
  const double gap = spare / static_cast<double>(plan.fronts.size() + 1);
  double x = sheet_margin;
  draw_view(rig, plan.side, {x, room.head}, drawing.content);
  x += plan.side.width() + gap;
  for (const MastView& front : plan.fronts) {
    draw_view(*front.rig, front.block, {x, room.head}, drawing.content);
    x += front.block.width() + gap;
  }
  draw_view(rig, plan.deck, {x, room.head}, drawing.content);
  drawing.content.add(view_key(checked.rig(), plan.scale, {x, plan.height - room.foot - room.key_height}));
  draw_sheet_foot(say(DiagramPhrase::rig_diagram_begins), checked, drawing);
  return drawing;
}

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
  drawing.title = say(DiagramPhrase::view_of, view_caption(rig, *block).front(), boat_title(checked));
  drawing.description =
      say(DiagramPhrase::scale_1_when_printed_full, format_fixed(1000.0 / block->millimetres_per_metre, 0));
  draw_view(rig, *block, {(drawing.width - block->width()) / 2.0, 0.0}, drawing.content);

  std::map<std::string, const Stay*> stays;
  for (const Stay& stay : rig.stays)
    for (const char* what : {"stay", "label-stay"})
      stays[fmt::format("{}-{}-{}", name_of(kind), what, element_id(stay.name))] = &stay;
  link_stays(drawing.content, stays, link);
  return drawing;
}

} // namespace sheerpole
