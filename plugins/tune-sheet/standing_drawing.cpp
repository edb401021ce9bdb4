#include "plugins/tune-sheet/standing_drawing.hpp"

#include "backend/table/tune_words.hpp"
#include "wording/papers/tune_sheet_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace sheerpole {

namespace {

using statics::Vector;

constexpr double sheet_width = 180.0, sheet_height = 128.0, gap = 4.0, head_room = 8.0, edge = 2.0;
/// For the labels, left and right of each view.
constexpr double label_column = 17.0, label_row = 3.6;
/// How far the greatest movement is on paper, at the most.
constexpr double most_shown_mm = 9.0;
constexpr std::array exaggerations{500.0, 200.0, 100.0, 50.0, 20.0, 10.0, 5.0, 2.0, 1.0};
constexpr double label_size = 2.5;

/// From starboard x to the right, from astern y to the right; z up in both.
struct View {
  bool from_astern = false;
  double left = 0.0, top = 0.0, scale = 1.0; ///< mm of paper a mm of boat
  double least_across = 0.0, most_up = 0.0;

  double across(Vector place) const { return from_astern ? place.y : place.x; }
  PaperPoint on_paper(Vector place) const {
    return {left + scale * (across(place) - least_across), top + scale * (most_up - place.z)};
  }
};

class Drawer {
public:
  Drawer(const CheckedRig& checked, const TunedRig& tuned) : checked_(checked), tuned_(tuned) {}

  StandingDrawing draw() {
    const double scale = scale_of_views();
    choose_exaggeration(scale);
    Drawing drawing;
    drawing.width = sheet_width;
    drawing.height = sheet_height;
    drawing.title = say(TuneSheetPhrase::how_rig_stands);
    drawing.description = say(TuneSheetPhrase::rig_from_starboard_and_from);
    double left = edge;
    for (const bool from_astern : {false, true}) {
      View view = extent(from_astern);
      view.scale = scale;
      view.left = left + label_column;
      view.top = head_room;
      draw_view(view, drawing.content);
      left += scale * width(from_astern) + 2.0 * label_column + gap;
    }
    return {std::move(drawing), exaggeration_};
  }

private:
  Vector drawn(statics::NodeId node) const { return tuned_.model.structure.nodes[node.index()].place_mm; }
  Vector now(statics::NodeId node) const {
    return drawn(node) + exaggeration_ * tuned_.state.moved_mm[node.index()];
  }

  View extent(bool from_astern) const {
    View view;
    view.from_astern = from_astern;
    view.least_across = 1e18;
    view.most_up = -1e18;
    for (const statics::Node& node : tuned_.model.structure.nodes) {
      view.least_across = std::min(view.least_across, view.across(node.place_mm));
      view.most_up = std::max(view.most_up, node.place_mm.z);
    }
    return view;
  }

  double width(bool from_astern) const {
    const View view = extent(from_astern);
    double most = 1.0;
    for (const statics::Node& node : tuned_.model.structure.nodes)
      most = std::max(most, view.across(node.place_mm) - view.least_across);
    return most;
  }

  double scale_of_views() const {
    double low = 1e18;
    for (const statics::Node& node : tuned_.model.structure.nodes)
      low = std::min(low, node.place_mm.z);
    const double height = std::max(extent(false).most_up - low, 1.0);
    return std::min((sheet_height - head_room - edge) / height,
                    (sheet_width - 2.0 * edge - gap - 4.0 * label_column) / (width(false) + width(true)));
  }

  void choose_exaggeration(double scale) {
    double most = 0.0;
    for (const Vector moved : tuned_.state.moved_mm)
      most = std::max(most, statics::length(moved));
    exaggeration_ = 1.0;
    for (const double times : exaggerations)
      if (times * most * scale <= most_shown_mm) {
        exaggeration_ = times;
        return;
      }
  }

  void draw_view(const View& view, ShapeGroup& group) const {
    group.add(TextShape{.at = {view.left, head_room - 3.5},
                        .text = view.from_astern ? say(TuneSheetPhrase::from_astern)
                                                 : say(TuneSheetPhrase::from_starboard),
                        .size = 3.0,
                        .anchor = TextAnchor::start,
                        .bold = true,
                        .id = {}});
    const ShapeStyle as_drawn{
        .stroke_width = 0.15, .stroke_grey = 0.5, .dashes = {1.2, 0.8}, .fill_grey = {}};
    for (const statics::Spar& spar : tuned_.model.structure.spars)
      add_line(view, spar.nodes, false, as_drawn, group);
    for (std::size_t i = 0; i < tuned_.model.structure.spars.size(); ++i)
      draw_spar(view, i, group);
    std::array<std::vector<Label>, 2> labels;
    for (std::size_t i = 0; i < tuned_.model.stays.size(); ++i)
      draw_stay(view, i, labels, group);
    for (const bool right : {false, true})
      draw_labels(view, right, std::move(labels[right ? 1 : 0]), group);
  }

  /// What stands beside a view, with a leader to its stay.
  struct Label {
    PaperPoint on_stay;
    std::string text;
  };

  /// A column of labels, each as near the height of its stay as the others let it be.
  void draw_labels(const View& view, bool right, std::vector<Label> labels, ShapeGroup& group) const {
    std::stable_sort(labels.begin(), labels.end(),
                     [](const Label& a, const Label& b) { return a.on_stay.y < b.on_stay.y; });
    std::vector<double> heights;
    for (const Label& label : labels)
      heights.push_back(
          std::max(label.on_stay.y, heights.empty() ? head_room + label_row : heights.back() + label_row));
    double floor = sheet_height - 2.0;
    for (auto height = heights.rbegin(); height != heights.rend(); ++height) {
      *height = std::min(*height, floor);
      floor = *height - label_row;
    }
    const double x = right ? view.left + view.scale * width(view.from_astern) + 4.0 : view.left - 4.0;
    const ShapeStyle leader{.stroke_width = 0.18, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
    const ShapeStyle dot{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
    for (std::size_t i = 0; i < labels.size(); ++i) {
      const PaperPoint at{x, heights[i]};
      group.add(LineShape{labels[i].on_stay, at, leader, {}});
      group.add(CircleShape{labels[i].on_stay, 0.4, dot, {}});
      group.add(TextShape{.at = {x + (right ? 0.6 : -0.6), at.y + 0.35 * label_size},
                          .text = std::move(labels[i].text),
                          .size = label_size,
                          .anchor = right ? TextAnchor::start : TextAnchor::end,
                          .bold = false,
                          .id = {}});
    }
  }

  void draw_spar(const View& view, std::size_t number, ShapeGroup& group) const {
    const statics::Spar& spar = tuned_.model.structure.spars[number];
    const Vector from = drawn(spar.nodes.front());
    const Vector way = drawn(spar.nodes.back()) - from;
    PolylineShape line{.points = {},
                       .style = {.stroke_width = 0.5, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}},
                       .id = {}};
    for (const statics::SparPlace& place : tuned_.state.spars[number].places)
      line.points.push_back(view.on_paper(from + (place.at_mm / statics::length(way)) * way +
                                          exaggeration_ * place.moved_mm));
    group.add(std::move(line));
  }

  void draw_stay(const View& view, std::size_t number, std::array<std::vector<Label>, 2>& labels,
                 ShapeGroup& group) const {
    const TuneStay& stay = tuned_.model.stays[number];
    const Side side = checked_.rig()[stay.stay].side;
    // From starboard the stays of the port side lie behind the others.
    // From astern those of the centreline lie on the mast.
    const bool labelled = view.from_astern ? side != Side::centre : side != Side::port;
    for (const statics::StayId leg : stay.legs) {
      const std::vector<statics::NodeId>& path = tuned_.model.structure.stays[leg.index()].path;
      const double newtons = tuned_.state.stays[leg.index()].tension_newtons;
      ShapeStyle style{.stroke_width = 0.25, .stroke_grey = 0.25, .dashes = {}, .fill_grey = {}};
      if (!(newtons > 0.0))
        style.dashes = {0.4, 0.8};
      add_line(view, path, true, style, group);
      if (!labelled || leg != stay.at_deck())
        continue;
      const PaperPoint a = view.on_paper(now(path[path.size() - 2]));
      const PaperPoint b = view.on_paper(now(path.back()));
      // Stays that run close to each other are pointed at in different heights.
      const double share = 0.45 + 0.11 * static_cast<double>(number % 5);
      const PaperPoint at{a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
      const double middle = view.left + view.scale * width(view.from_astern) / 2.0;
      const bool right = view.from_astern ? side == Side::starboard : at.x > middle;
      labels[right ? 1 : 0].push_back(
          {at, std::to_string(number + 1) + ": " +
                   (newtons > 0.0 ? format_kilonewtons(newtons) : say(TuneSheetPhrase::slack))});
    }
  }

  void add_line(const View& view, const std::vector<statics::NodeId>& path, bool standing,
                const ShapeStyle& style, ShapeGroup& group) const {
    PolylineShape line{.points = {}, .style = style, .id = {}};
    for (const statics::NodeId node : path)
      line.points.push_back(view.on_paper(standing ? now(node) : drawn(node)));
    group.add(std::move(line));
  }

  const CheckedRig& checked_;
  const TunedRig& tuned_;
  double exaggeration_ = 1.0;
};

} // namespace

StandingDrawing standing_drawing(const CheckedRig& checked, const TunedRig& tuned) {
  return Drawer(checked, tuned).draw();
}

} // namespace sheerpole
