#include "plugins/rig-drawing/rig_drawing.hpp"

#include "backend/card/card_unit.hpp"
#include "backend/diagram/views/view_drawing.hpp"
#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "calculate/geometry/stay_leads.hpp"
#include "model/fact_name.hpp"
#include "plugins/rig-drawing/balloons.hpp"
#include "plugins/rig-drawing/dimensions.hpp"
#include "plugins/rig-drawing/iso_style.hpp"
#include "plugins/rig-drawing/rig_views.hpp"
#include "plugins/rig-drawing/sheet_frame.hpp"
#include "plugins/rig-drawing/stay_rows.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/rig_drawing_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <memory>
#include <optional>

namespace sheerpole {

namespace {

using namespace rig_drawing;

/// Denominators of ISO 5455:1979 for reduction, from memory, and beyond.
constexpr std::array denominators{10.0,   20.0,   50.0,     100.0,     200.0,       500.0,       1000.0,
                                  2000.0, 5000.0, 10'000.0, 100'000.0, 1'000'000.0, 10'000'000.0};
/// A rig that is drawn smaller than this is drawn on the next larger sheet.
constexpr double least_drawn = 100.0;
constexpr double column_gap = 4.0;
constexpr double heading_room = 12.0;
constexpr double dimension_row = 7.0;
constexpr double dimension_rows = 3.0 * dimension_row + 3.0;
constexpr double room_for_balloons = 7.0;
constexpr double before_ladder = 4.0;
constexpr double room_for_height = 7.0; ///< beside the profile, for the height of the foretriangle
constexpr double room_for_height_words = 21.0;
constexpr double legend_height = 30.0;
constexpr std::size_t most_numbered = 150;

/// A view from astern with what it shows.
struct AsternView {
  std::shared_ptr<const Rig> rig;
  RigView view;
  Extent extent;
  double ladder_width = 0.0, ladder_height = 0.0; ///< at any scale
  std::string title;
};

/// All that is drawn, before a scale is chosen.
struct Content {
  const CheckedRig* checked = nullptr;
  std::optional<HullOutline> hull;
  RigView profile, plan;
  Extent profile_extent, plan_extent;
  std::vector<AsternView> astern;
  DrawnTable stays;
  DrawnTable measures;
  std::vector<std::string> notes;
  std::map<std::string, std::size_t> numbers; ///< of the balloon of each stay, by its name without side
  double right_column = 0.0;                  ///< height of tables, notes and title block
};

std::vector<HeightMark> heights_of(const Rig& rig, const Projection& on) {
  std::vector<bool> used(rig.points.size());
  for (const Stay& stay : rig.stays)
    for (const PathStop& stop : stay.path)
      used[stop.point.index()] = true;
  for (const Spreader& spreader : rig.spreaders)
    used[spreader.root.index()] = used[spreader.tip.index()] = true;
  std::map<std::string, HeightMark> marks; // by name and number: both sides alike are one
  for (std::size_t i = 0; i < rig.points.size(); ++i) {
    if (!used[i])
      continue;
    const Point& point = rig.points[i];
    HeightMark mark{on.at(point.position).y, drawn_millimetres(point.position.z), point.base};
    marks.emplace(mark.name + " " + mark.number, mark);
  }
  std::vector<HeightMark> result;
  for (const auto& [key, mark] : marks)
    result.push_back(mark);
  result.push_back({on.at(0, 0, 0).y, "0", say(RigDrawingPhrase::waterline)});
  return result;
}

bool any_path(const Rig& rig) {
  return std::any_of(rig.stays.begin(), rig.stays.end(),
                     [](const Stay& stay) { return stay.path.size() > 1; });
}

std::vector<std::string> notes_of(const Content& content) {
  const Rig& rig = content.checked->rig();
  std::vector<std::string> notes{say(RigDrawingPhrase::millimetres_heights_from_waterline_take)};
  if (const CardUnit unit = card_unit(rig); unit.kind != CardUnit::Kind::millimetres)
    notes.push_back(say(RigDrawingPhrase::lengths_in_tables_in, unit_words(unit)));
  if (!any_path(rig))
    notes.push_back(say(RigDrawingPhrase::rig_file_gives_no_points));
  else if (sides_coincide(content.profile))
    notes.push_back(say(RigDrawingPhrase::port_starboard_lie_on_one));
  else
    notes.push_back(say(RigDrawingPhrase::port_starboard_do_not_lie));
  for (const std::string& words : undrawn_of_hull(rig, content.hull))
    notes.push_back(words);
  std::string undrawn;
  for (const Spar& spar : rig.spars)
    if (!end_of(rig, spar))
      add_words(undrawn, ", ", spar.name);
  if (!undrawn.empty())
    notes.push_back(say(RigDrawingPhrase::not_drawn_length_not_given, undrawn));
  if (rig.spars.empty())
    notes.push_back(say(RigDrawingPhrase::no_spar_given_so_none));
  else
    notes.push_back(say(RigDrawingPhrase::spars_as_thick_as_their));
  undrawn.clear();
  for (const Stay& stay : rig.stays)
    if (stay.path.size() < 2)
      add_words(undrawn, ", ", stay.name);
  if (!undrawn.empty())
    notes.push_back(say(RigDrawingPhrase::not_drawn_no_path_given, undrawn));
  if (std::any_of(content.stays.rows.begin(), content.stays.rows.end(),
                  [](const auto& cells) { return cells[3].find('X') != std::string::npos; }))
    notes.push_back(say(RigDrawingPhrase::x_pin_pin_length_stay));
  if (const auto triangle = foretriangle(rig); triangle && triangle->base)
    notes.push_back(say(RigDrawingPhrase::base_from_below_pin));
  for (const std::string& junction : junction_sentences(rig))
    notes.push_back(junction);
  if (const std::string waiting = waiting_words(*content.checked); !waiting.empty())
    notes.push_back(say(RigDrawingPhrase::draft_do_not_cut, waiting));
  if (const std::string states = states_of_pieces(*content.checked); !states.empty())
    notes.push_back(say(RigDrawingPhrase::pieces_of_line, states));
  notes.push_back(say(RigDrawingPhrase::nobody_has_judged_from_whether));
  return notes;
}

Content content_of(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Content content;
  content.checked = &checked;
  content.hull = hull_outline(rig);
  content.profile = {&rig, content.hull, {View::profile, 1.0, {}}, {}};
  content.plan = {&rig, content.hull, {View::plan, 1.0, {}}, {}};
  content.profile_extent = extent_of(content.profile);
  content.plan_extent = extent_of(content.plan);
  const std::vector<const Spar*> masts = masts_of(rig);
  const auto add = [&](std::shared_ptr<const Rig> of, const std::string& mast, std::string title) {
    AsternView astern;
    astern.rig = std::move(of);
    astern.view = {astern.rig.get(), content.hull, {View::astern, 1.0, {}}, mast};
    astern.extent = extent_of(astern.view);
    const auto heights = heights_of(*astern.rig, {View::astern, 1.0, {}});
    astern.ladder_width = ladder_width(heights);
    astern.ladder_height = ladder_height(heights);
    astern.title = std::move(title);
    content.astern.push_back(std::move(astern));
  };
  if (masts.size() < 2)
    add(std::make_shared<Rig>(rig), "", say(RigDrawingPhrase::from_astern));
  else
    for (const Spar* mast : masts)
      add(std::make_shared<Rig>(rig_of_mast(rig, *mast)), mast->name,
          say(RigDrawingPhrase::mast_from_astern, spar_words(*mast)));
  content.stays = {{say(RigDrawingPhrase::no), say(RigDrawingPhrase::stay), say(RigDrawingPhrase::line),
                    say(RigDrawingPhrase::pin_pin), say(RigDrawingPhrase::cut),
                    say(RigDrawingPhrase::adjuster)},
                   {8.5, 41.5, 28.0, 27.0, 33.0, 42.0},
                   {},
                   {true, false, false, false, true, false},
                   {false, false, false, true, true, false}};
  for (const StayRow& row : stay_rows(checked)) {
    content.numbers[row.base] = row.number;
    content.stays.rows.push_back(
        {std::to_string(row.number), row.title, row.line, row.pin_to_pin, row.cut, row.adjuster});
  }
  content.measures = {{}, {34.0, 44.0}, {}, {}, {false, true}};
  for (const rig_drawing::Measure& measure : measures(checked))
    content.measures.rows.push_back({measure.name, measure.value});
  content.notes = notes_of(content);
  return content;
}

constexpr double notes_width = 96.0;

double right_column_height(const Content& content) {
  return table_height(content.stays) + 5.0 +
         std::max(notes_height(content.notes, notes_width), table_height(content.measures) + 8.0) + 4.0 +
         title_block_height + revisions_height(*content.checked);
}

/// A sheet and a scale with the room that the views take on it.
struct Plan {
  SheetSize size;
  double scale = 100.0;
  double width = 0.0;  ///< of the views side by side
  double height = 0.0; ///< of the views one below the other, with all that stands between
  bool fits = false;
};

PaperBox area_of(const SheetSize& size) {
  const PaperBox frame = size.frame();
  return {frame.left + 3.0, frame.top + 4.0, frame.right - title_block_width - column_gap,
          frame.bottom - 4.0};
}

/// Whether there is room for the words between the upper end of the forestay and the dimension.
bool height_words_inside(const Content& content, double millimetres_per_metre) {
  const auto triangle = foretriangle(content.checked->rig());
  if (!triangle)
    return true;
  const Vector3& top =
      content.checked->rig()[content.checked->rig()[triangle->forestay].path.front().point].position;
  const double room = (content.profile_extent.right - top.x.metres()) * millimetres_per_metre;
  return 0.75 * room + 4.0 > room_for_height_words + 3.0;
}

double room_beside_profile(const Content& content, double millimetres_per_metre) {
  const bool inside = height_words_inside(content, millimetres_per_metre);
  return room_for_height + (inside ? 0.0 : room_for_height_words);
}

Plan plan_at(const Content& content, const SheetSize& size, double denominator) {
  const double s = 1000.0 / denominator;
  const PaperBox area = area_of(size);
  Plan plan{size, denominator};
  plan.width = room_for_balloons + content.profile_extent.width() * s + room_beside_profile(content, s);
  double views = content.profile_extent.height() * s;
  for (const AsternView& astern : content.astern) {
    plan.width += room_for_balloons + astern.extent.width() * s + before_ladder + astern.ladder_width;
    views = std::max(views, astern.ladder_height - content.profile_extent.bottom * s);
  }
  plan.height = heading_room + views + dimension_rows + heading_room + content.plan_extent.height() * s +
                4.0 + legend_height;
  plan.fits = plan.width <= area.width() && plan.height <= area.height() &&
              content.right_column <= size.frame().height();
  return plan;
}

Plan plan_sheet(const Content& content) {
  if (!any_path(content.checked->rig()) && content.right_column <= upright_sheet().frame().height())
    return {.size = upright_sheet(), .fits = true};
  const double largest = std::max({content.profile_extent.width(), content.profile_extent.height(), 0.1});
  std::optional<Plan> small;
  for (const SheetSize& size : sheet_sizes())
    for (const double denominator : denominators) {
      const Plan plan = plan_at(content, size, denominator);
      if (!plan.fits)
        continue;
      if (largest * 1000.0 / denominator >= least_drawn)
        return plan;
      if (!small)
        small = plan;
      break; // a smaller scale on this sheet is no better
    }
  if (small)
    return *small;
  // Nothing holds it all: as much sheet as it takes.
  const double denominator = 1000.0 * largest / 300.0;
  const auto nice =
      std::find_if(denominators.begin(), denominators.end(), [&](double d) { return d >= denominator; });
  Plan plan =
      plan_at(content, sheet_sizes().back(), nice == denominators.end() ? denominators.back() : *nice);
  plan.size.name = say(RigDrawingPhrase::no_size_of_paper);
  plan.size.width = std::max(plan.size.width, plan.width + title_block_width + 60.0);
  plan.size.height = std::max({plan.size.height, plan.height + 40.0, content.right_column + 40.0});
  return plan;
}

void head(ShapeGroup& into, PaperPoint at, const std::string& words) {
  into.add(TextShape{at, words, plain_size, TextAnchor::start, true, {}});
}

void add_segments(const std::vector<StayInView>& stays, Obstacles& obstacles) {
  for (const StayInView& stay : stays)
    for (std::size_t i = 0; i + 1 < stay.path.size(); ++i)
      obstacles.lines.emplace_back(stay.path[i], stay.path[i + 1]);
}

/// A balloon for each stay of the view, on the side that stands first.
std::vector<NumberedPath> numbered(const RigView& view, const std::vector<StayInView>& stays,
                                   const std::map<std::string, std::size_t>& numbers) {
  std::vector<NumberedPath> result;
  std::map<std::string, bool> done;
  for (const StayInView& stay : stays) {
    const auto number = numbers.find(stay.stay->base);
    if (number == numbers.end() ||
        (view.projection.view == View::plan && stay.stay->side != Side::centre) ||
        (view.projection.view == View::astern && stay.stay->side == Side::centre) || done[stay.stay->base])
      continue;
    done[stay.stay->base] = true;
    double length = 0.0;
    for (std::size_t i = 0; i + 1 < stay.path.size(); ++i)
      length += distance(stay.path[i], stay.path[i + 1]);
    if (length > 8.0)
      result.push_back({number->second, stay.path, view.id("balloon", stay.stay->base)});
  }
  return result;
}

void add_texts(const Drawing& sheet, Obstacles& obstacles) {
  for (const LabelBox& box : label_boxes(sheet)) {
    PaperBox clear = box.box;
    clear.right = clear.left + clear.width() / wide_face_allowance * 1.05;
    obstacles.boxes.push_back(clear);
  }
}

void draw_legend(const Content& content, const Plan& plan, PaperPoint at, ShapeGroup& into) {
  const Rig& rig = content.checked->rig();
  ShapeGroup group{"shown", say(RigDrawingPhrase::what_lines_mean), {}, {}};
  head(group, {at.x, at.y + 3.5}, say(RigDrawingPhrase::shown));
  double x = at.x;
  double y = at.y + 9.0;
  int rows = 0;
  const auto words = [&](const std::string& text) {
    group.add(TextShape{{x + 16.0, y + 0.36 * plain_size}, text, plain_size, TextAnchor::start, false, {}});
    y += 4.8;
    if (++rows % 4 == 0) {
      y = at.y + 9.0;
      x += 62.0;
    }
  };
  const auto line = [&](const ShapeStyle& style, const std::string& text) {
    group.add(LineShape{{x, y}, {x + 13.0, y}, style, {}});
    words(text);
  };
  for (const auto kind : {LineMaterial::Kind::rope, LineMaterial::Kind::wire, LineMaterial::Kind::rod,
                          LineMaterial::Kind::chain})
    if (std::any_of(rig.stays.begin(), rig.stays.end(),
                    [&](const Stay& stay) { return rig[stay.material].kind == kind; }))
      line(stay_style(kind), std::string(name_of(kind)));
  group.add(CircleShape{{x + 6.5, y}, 0.5, {0.25, 0.0, {}, 1.0}, {}});
  words(say(RigDrawingPhrase::pin));
  line(axis_style(), say(RigDrawingPhrase::waterline_centreline));
  if (content.hull && !(content.hull->sheer.empty() && content.hull->deck.empty()))
    line(outline_style(), say(RigDrawingPhrase::hull_no_part_rig));
  into.add(std::move(group));
  const double bars = at.x + 126.0;
  into.add(
      TextShape{{bars, at.y + 3.5},
                say(RigDrawingPhrase::to_scale_at_full_size_on, format_number(plan.scale), plan.size.name),
                plain_size,
                TextAnchor::start,
                false,
                {}});
  into.add(scale_bar(ScaleBarUnit::metres, 1000.0 / plan.scale, 60.0, {bars, at.y + 7.0}, plain_size));
  into.add(scale_bar(ScaleBarUnit::feet, 1000.0 / plan.scale, 60.0, {bars, at.y + 16.0}, plain_size));
}

void draw_dimensions(const Content& content, const Projection& on, double first_row, ShapeGroup& into) {
  const CheckedRig& checked = *content.checked;
  const Rig& rig = checked.rig();
  const auto stated = [&](std::string_view fact) { return fact_length(rig.boat.particulars, fact); };
  double y = first_row;
  std::vector<LevelDimension> level;
  const auto triangle = foretriangle(rig);
  if (triangle) {
    const Stay& forestay = rig[triangle->forestay];
    if (triangle->base) {
      const double right = on.at(triangle->foot.x.metres(), 0.0, 0.0).x;
      const double left = right - triangle->base->metres() * on.millimetres_per_metre;
      level.push_back(LevelDimension{
          left, right, on.origin.y + 1.0, y,
          say(RigDrawingPhrase::base_foretriangle, drawn_millimetres(*triangle->base)), "dimension-base"});
      y += dimension_row;
    }
    if (triangle->height) {
      const Vector3& top = rig[forestay.path.front().point].position;
      const double at = on.at(0, 0, top.z.metres()).y;
      const double x = on.origin.x + content.profile_extent.right * on.millimetres_per_metre + 4.0;
      draw(UprightDimension{at,
                            at + triangle->height->metres() * on.millimetres_per_metre,
                            on.at(top).x + 1.5,
                            x,
                            {say(RigDrawingPhrase::height), say(RigDrawingPhrase::foretriangle),
                             drawn_millimetres(*triangle->height)},
                            height_words_inside(content, on.millimetres_per_metre),
                            "dimension-height"},
           into);
    }
  }
  if (content.hull && content.hull->waterline.size() == 2) {
    if (const auto length = stated(fact_names.waterline_length)) {
      level.push_back(LevelDimension{
          on.at(content.hull->waterline[1]).x, on.at(content.hull->waterline[0]).x, on.origin.y + 1.0, y,
          say(RigDrawingPhrase::waterline_measured, drawn_millimetres(length->value)),
          "dimension-waterline"});
      y += dimension_row;
    }
  }
  if (content.hull)
    if (const auto length = stated(fact_names.length_overall);
        length && std::abs(length->value.metres() - (content.hull->bow - content.hull->stern)) < 0.005)
      level.push_back(LevelDimension{
          on.at(content.hull->stern, 0, 0).x, on.at(content.hull->bow, 0, 0).x, on.origin.y + 1.0, y,
          say(RigDrawingPhrase::length_overall, drawn_millimetres(length->value)), "dimension-length"});
  draw(std::move(level), into);
}

} // namespace

Drawing rig_drawing_sheet(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Content content = content_of(checked);
  content.right_column = right_column_height(content);
  const Plan plan = plan_sheet(content);
  const double s = 1000.0 / plan.scale;
  Drawing sheet;
  sheet.width = plan.size.width;
  sheet.height = plan.size.height;
  sheet.title = say(RigDrawingPhrase::rig_drawing, boat_title(checked));
  sheet.description = say(RigDrawingPhrase::profile_from_starboard_view_from);
  sheet.content.id = "sheet";
  draw_frame(plan.size, checked, sheet);
  draw_title_block(plan.size, checked, any_path(rig) ? plan.scale : 0.0, sheet.content);
  draw_revisions(plan.size, checked, sheet.content);

  const PaperBox frame = plan.size.frame();
  const double column = frame.right - title_block_width;
  double y = draw_table(content.stays, {column, frame.top}, "stays", sheet.content) + 5.0;
  const double clear = column > frame.left ? 0.0 : 2.0; // of the line of the frame
  draw_notes(content.notes, {column + clear, y}, notes_width, sheet.content);
  const double measures_x = column + notes_width + 6.0;
  if (!content.measures.rows.empty()) {
    sheet.content.add(TextShape{{measures_x, y + plain_size},
                                say(RigDrawingPhrase::measures),
                                plain_size,
                                TextAnchor::start,
                                true,
                                {}});
    sheet.content.add(LineShape{{measures_x, y + line_spacing * plain_size + 1.0},
                                {frame.right, y + line_spacing * plain_size + 1.0},
                                solid(0.5),
                                {}});
    draw_table(content.measures, {measures_x, y + line_spacing * plain_size + 1.0}, "measures",
               sheet.content);
  }

  const PaperBox area = area_of(plan.size);
  if (!any_path(rig))
    return sheet;
  double tallest = content.profile_extent.height() * s;
  for (AsternView& astern : content.astern)
    tallest = std::max(tallest, astern.ladder_height - content.profile_extent.bottom * s);
  const double waterline = area.top + heading_room + tallest - content.profile_extent.bottom * s;
  const double spare =
      std::max(0.0, area.width() - plan.width) / static_cast<double>(content.astern.size() + 1);
  Projection& profile = content.profile.projection;
  profile = {
      View::profile, s, {area.left + room_for_balloons - content.profile_extent.left * s, waterline}};
  head(sheet.content, {area.left, area.top + 6.5}, say(RigDrawingPhrase::profile_from_starboard));
  draw_view(content.profile, content.profile_extent, sheet.content);
  const double below = waterline + content.profile_extent.bottom * s;
  draw_dimensions(content, profile, below + dimension_row + 1.0, sheet.content);

  double x = area.left + room_for_balloons + content.profile_extent.width() * s +
             room_beside_profile(content, s) + spare;
  for (AsternView& astern : content.astern) {
    x += room_for_balloons;
    astern.view.projection = {View::astern, s, {x - astern.extent.left * s, waterline}};
    head(sheet.content, {x - room_for_balloons, area.top + 6.5}, astern.title);
    draw_view(astern.view, astern.extent, sheet.content);
    x += astern.extent.width() * s + before_ladder;
    draw_ladder(heights_of(*astern.rig, astern.view.projection), x, area.top + 9.0, below + 3.0,
                astern.view.id("heights", ""), sheet.content);
    x += astern.ladder_width + spare;
  }

  const double plan_top = below + dimension_rows + heading_room;
  content.plan.projection = {View::plan, s, {profile.origin.x, plan_top - content.plan_extent.top * s}};
  head(sheet.content, {area.left, plan_top - 5.0}, say(RigDrawingPhrase::deck_plan_from_above));
  draw_view(content.plan, content.plan_extent, sheet.content);
  draw_legend(content, plan, {area.left, area.bottom - legend_height + 4.0}, sheet.content);

  const auto& numbers = content.numbers;
  if (numbers.size() > most_numbered)
    return sheet;
  std::vector<const RigView*> views{&content.profile, &content.plan};
  for (const AsternView& astern : content.astern)
    views.push_back(&astern.view);
  for (const RigView* view : views) {
    Obstacles obstacles;
    obstacles.area = {area.left, area.top + 8.0, area.right, area.bottom};
    add_texts(sheet, obstacles);
    for (const RigView* other : views)
      add_segments(stays_in(*other), obstacles);
    draw_balloons(numbered(*view, stays_in(*view), numbers), std::move(obstacles), sheet.content);
  }
  return sheet;
}

BackendDescription RigDrawing::describe() const {
  return {.name = "rig-drawing",
          .summary = say(RigDrawingPhrase::rig_as_drawing_office_draws),
          .outputs = {"rig-drawing.svg"},
          .papers = {"rig-drawing.pdf", "rig-drawing-tiles.pdf"}};
}

OutputBundle RigDrawing::generate(const BackendRequest& request) const {
  OutputBundle bundle;
  Drawing sheet = rig_drawing_sheet(request.checked);
  bundle.files.push_back({"rig-drawing.svg", write_svg(sheet)});
  constexpr double longest_page = 5000.0; // of a PDF: 14 400 units of 1/72 in, with some to spare
  if (sheet.width <= longest_page && sheet.height <= longest_page) {
    const bool one_page = request.paper == PaperSize::a4 && sheet.width <= upright_sheet().width;
    std::vector<Drawing> tiles = request.printed && !one_page
                                     ? tiles_of(sheet, request.checked, request.paper)
                                     : std::vector<Drawing>{};
    const std::string title = sheet.title;
    bundle.papers.push_back({"rig-drawing.pdf", title, {std::move(sheet)}});
    if (!tiles.empty())
      bundle.papers.push_back(
          {"rig-drawing-tiles.pdf", say(RigDrawingPhrase::pieces, title), std::move(tiles)});
  }
  return bundle;
}

} // namespace sheerpole
