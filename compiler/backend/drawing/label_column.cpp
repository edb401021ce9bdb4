#include "backend/drawing/label_column.hpp"

#include "backend/drawing/label_text.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>
#include <utility>

namespace sheerpole {

namespace {

double turn(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

/// Each block of positions that push each other away stands at the mean of what its members want.
struct PushedBlock {
  double sum = 0.0;
  std::size_t count = 0;
  double mean() const { return sum / static_cast<double>(count); }
};

/// Labels from top to bottom, and the places on paper where their leaders end.
struct OrderedColumn {
  std::vector<const LabelRequest*> labels;
  std::vector<PaperPoint> ports;
};

std::vector<PaperPoint> ports_of(const std::vector<const LabelRequest*>& labels,
                                 const LabelColumn& column) {
  std::vector<double> wanted;
  std::vector<double> heights;
  for (const LabelRequest* label : labels) {
    wanted.push_back(label->site.y);
    heights.push_back(label_height(*label));
  }
  const double outward = column.to_left ? -1.0 : 1.0;
  std::vector<PaperPoint> ports;
  for (const double middle : spread_apart(wanted, heights, column.top, column.bottom))
    ports.push_back({column.edge - outward * (leader_gap + leader_stub), middle});
  return ports;
}

/// Brings the labels into the order that join_without_crossing() finds; false when it was that order
/// already.
bool uncross(OrderedColumn& column) {
  std::vector<PaperPoint> sites;
  for (const LabelRequest* label : column.labels)
    sites.push_back(label->site);
  const std::vector<std::size_t> port_of = join_without_crossing(sites, column.ports);
  std::vector<const LabelRequest*> reordered(column.labels.size());
  for (std::size_t i = 0; i < port_of.size(); ++i)
    reordered[port_of[i]] = column.labels[i];
  const bool changed = reordered != column.labels;
  column.labels = std::move(reordered);
  return changed;
}

OrderedColumn order_column(const std::vector<LabelRequest>& requests, const LabelColumn& column) {
  std::vector<const LabelRequest*> by_site;
  for (const LabelRequest& request : requests)
    by_site.push_back(&request);
  std::stable_sort(by_site.begin(), by_site.end(),
                   [](const LabelRequest* a, const LabelRequest* b) { return a->site.y < b->site.y; });
  // A new order moves labels of different heights, and new places may cross again. Labels of one height
  // settle at the first attempt. Should others not settle, the order of the sites is kept: leaders may
  // cross, labels never overlap.
  OrderedColumn ordered{by_site, {}};
  constexpr int attempts = 50;
  for (int i = 0; i < attempts; ++i) {
    ordered.ports = ports_of(ordered.labels, column);
    if (!uncross(ordered))
      return ordered;
  }
  ordered.labels = by_site;
  ordered.ports = ports_of(ordered.labels, column);
  return ordered;
}

} // namespace

std::vector<std::size_t> join_without_crossing(const std::vector<PaperPoint>& sites,
                                               const std::vector<PaperPoint>& ports) {
  std::vector<std::size_t> port_of(sites.size());
  std::iota(port_of.begin(), port_of.end(), std::size_t{0});
  for (bool changed = true; changed;) {
    changed = false;
    for (std::size_t i = 0; i < sites.size(); ++i)
      for (std::size_t j = i + 1; j < sites.size(); ++j) {
        const PaperPoint a = ports[port_of[i]];
        const PaperPoint b = ports[port_of[j]];
        if (!cross(sites[i], a, sites[j], b))
          continue;
        const double now = distance(sites[i], a) + distance(sites[j], b);
        const double exchanged = distance(sites[i], b) + distance(sites[j], a);
        if (exchanged >= now - 1e-9) // rounding only: lines that cross are always longer
          continue;
        std::swap(port_of[i], port_of[j]);
        changed = true;
      }
  }
  return port_of;
}

std::vector<double> spread_apart(const std::vector<double>& wanted, const std::vector<double>& heights,
                                 double top, double bottom) {
  // With the distance that the bands above take taken off, "at least this far apart" becomes "not falling":
  // isotonic regression, solved exactly by pooling adjacent violators (from memory of Barlow et al.,
  // Statistical Inference under Order Restrictions).
  std::vector<PushedBlock> blocks;
  std::vector<double> offsets; // of each middle from the middle of the first band
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    offsets.push_back(i == 0 ? 0.0 : offsets.back() + (heights[i - 1] + heights[i]) / 2);
    blocks.push_back({wanted[i] - offsets[i], 1});
    while (blocks.size() > 1 && blocks[blocks.size() - 2].mean() >= blocks.back().mean()) {
      const PushedBlock last = blocks.back();
      blocks.pop_back();
      blocks.back().sum += last.sum;
      blocks.back().count += last.count;
    }
  }
  std::vector<double> placed;
  if (wanted.empty())
    return placed;
  const double highest = top + heights.front() / 2;
  const double lowest = bottom - heights.back() / 2 - offsets.back();
  for (const PushedBlock& block : blocks)
    for (std::size_t i = 0; i < block.count; ++i)
      placed.push_back(std::max(highest, std::min(block.mean(), lowest)) + offsets[placed.size()]);
  return placed;
}

double label_height(const LabelRequest& request) {
  // More room around labels of several lines, so that they do not read as one.
  const double clearance = request.lines.size() > 1 ? 0.9 : 0.2;
  return line_spacing * request.size * static_cast<double>(request.lines.size()) + clearance;
}

double column_height(const std::vector<LabelRequest>& requests) {
  double height = 0.0;
  for (const LabelRequest& request : requests)
    height += label_height(request);
  return height;
}

double column_width(const std::vector<LabelRequest>& requests) {
  double width = 0.0;
  for (const LabelRequest& request : requests)
    for (const std::string& line : request.lines)
      width =
          std::max(width, label_box({{}, line, request.size, TextAnchor::start, request.bold, {}}).width());
  return width;
}

void place_labels(const std::vector<LabelRequest>& requests, const LabelColumn& column, ShapeGroup& into) {
  if (requests.empty())
    return;
  const double outward = column.to_left ? -1.0 : 1.0;
  const OrderedColumn ordered = order_column(requests, column);
  for (std::size_t i = 0; i < ordered.labels.size(); ++i) {
    const LabelRequest& request = *ordered.labels[i];
    const PaperPoint port = ordered.ports[i];
    ShapeGroup label;
    label.id = request.id;
    label.add(PolylineShape{
        {request.site, port, {column.edge - outward * leader_gap, port.y}}, {0.13, 0.35, {}, {}}, {}});
    if (request.ringed)
      label.add(CircleShape{request.site, 0.5, {0.13, 0.0, {}, 1.0}, {}});
    // Capitals and small letters together look centred when the base line is 0.35 em below the middle.
    const double step = line_spacing * request.size;
    double base = port.y + 0.35 * request.size - step * static_cast<double>(request.lines.size() - 1) / 2;
    for (const std::string& line : request.lines) {
      label.add(TextShape{{column.edge, base},
                          line,
                          request.size,
                          column.to_left ? TextAnchor::end : TextAnchor::start,
                          request.bold,
                          {}});
      base += step;
    }
    into.add(std::move(label));
  }
}

} // namespace sheerpole
