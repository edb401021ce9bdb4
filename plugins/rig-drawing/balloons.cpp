#include "plugins/rig-drawing/balloons.hpp"

#include "plugins/rig-drawing/iso_style.hpp"
#include "wording/papers/rig_drawing_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <utility>

namespace sheerpole::rig_drawing {

namespace {

double away_from(PaperPoint place, const std::pair<PaperPoint, PaperPoint>& line) {
  return distance_to_line(place, line.first, line.second);
}

double turn(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/// Whether the two turns, in mm2, go to different sides. One of next to nothing goes to none: what begins
/// on a line does not cross it, and how the last digit was rounded decides nothing.
bool to_both_sides(double one, double other) {
  constexpr double nothing = 1e-6;
  return std::abs(one) > nothing && std::abs(other) > nothing && (one < 0.0) != (other < 0.0);
}

bool cross(PaperPoint a, PaperPoint b, const std::pair<PaperPoint, PaperPoint>& line) {
  return to_both_sides(turn(a, b, line.first), turn(a, b, line.second)) &&
         to_both_sides(turn(line.first, line.second, a), turn(line.first, line.second, b));
}

PaperBox box_round(PaperPoint centre, double room) {
  const double half = balloon_radius + room;
  return {centre.x - half, centre.y - half, centre.x + half, centre.y + half};
}

bool within(const PaperBox& box, const PaperBox& area) {
  return box.left >= area.left && box.right <= area.right && box.top >= area.top &&
         box.bottom <= area.bottom;
}

/// How well a place on the line is told from other lines: the distance to the nearest of them, up to 4 mm.
double clearness(PaperPoint site, const NumberedPath& path, const Obstacles& obstacles) {
  double least = 4.0;
  for (const auto& line : obstacles.lines)
    if (const double away = away_from(site, line);
        away > 0.3 || !std::any_of(path.path.begin(), path.path.end(), [&](PaperPoint p) {
          return distance(p, line.first) < 0.01 || distance(p, line.second) < 0.01;
        }))
      least = std::min(least, away);
  return least;
}

struct Chosen {
  PaperPoint site, centre;
};

std::optional<Chosen> best_place(const NumberedPath& path, const Obstacles& obstacles) {
  constexpr std::array shares{0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82};
  constexpr int directions = 16;
  double best = std::numeric_limits<double>::infinity();
  std::optional<Chosen> result;
  for (std::size_t s = 0; s < shares.size(); ++s) {
    const PaperPoint site = place_on_path(path.path, shares[s]);
    const double unclear = (4.0 - clearness(site, path, obstacles)) * 4.0;
    for (const double reach : {8.0, 11.0, 15.0, 20.0, 26.0})
      for (int k = 0; k < directions; ++k) {
        // No place that stands farther off or less clear can be better than the best one.
        if (unclear + 0.6 * reach + 0.5 * static_cast<double>(s) >= best)
          break;
        const double angle = 2.0 * std::numbers::pi * k / directions;
        const PaperPoint centre{site.x + reach * std::cos(angle), site.y + reach * std::sin(angle)};
        const PaperBox box = box_round(centre, 0.8);
        if (!within(box, obstacles.area) ||
            std::any_of(obstacles.boxes.begin(), obstacles.boxes.end(),
                        [&](const PaperBox& other) { return box.overlaps(other); }))
          continue;
        double price = unclear + 0.6 * reach + 0.5 * static_cast<double>(s);
        for (const auto& line : obstacles.lines) {
          if (away_from(centre, line) < balloon_radius + 0.6)
            price += 12.0; // a line through the circle
          if (cross(site, centre, line))
            price += 5.0;
        }
        if (price < best) {
          best = price;
          result = Chosen{site, centre};
        }
      }
  }
  return result;
}

} // namespace

std::vector<std::size_t> draw_balloons(const std::vector<NumberedPath>& paths, Obstacles obstacles,
                                       ShapeGroup& into) {
  std::vector<std::size_t> left_out;
  for (const NumberedPath& path : paths) {
    const auto place = best_place(path, obstacles);
    if (!place) {
      left_out.push_back(path.number);
      continue;
    }
    const double reach = distance(place->site, place->centre);
    const PaperPoint edge{place->centre.x + (place->site.x - place->centre.x) * balloon_radius / reach,
                          place->centre.y + (place->site.y - place->centre.y) * balloon_radius / reach};
    ShapeGroup group{path.id, say(RigDrawingPhrase::number, path.number), {}, {}};
    group.add(LineShape{place->site, edge, leader_style(), {}});
    group.add(CircleShape{place->site, 0.5, {0.0, 0.0, {}, 0.0}, {}});
    group.add(CircleShape{place->centre, balloon_radius, {0.25, 0.0, {}, 1.0}, {}});
    group.add(TextShape{{place->centre.x, place->centre.y + 0.36 * plain_size},
                        std::to_string(path.number),
                        plain_size,
                        TextAnchor::middle,
                        true,
                        {}});
    into.add(std::move(group));
    obstacles.boxes.push_back(box_round(place->centre, 0.8));
    obstacles.lines.emplace_back(place->site, edge);
  }
  return left_out;
}

} // namespace sheerpole::rig_drawing
