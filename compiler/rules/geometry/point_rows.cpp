#include "rules/geometry/point_rows.hpp"

#include "calculate/geometry/spar_lines.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <set>

namespace sheerpole {

namespace {

/// `channel-2` without its number, and the number. Nothing of a name without one.
std::optional<std::pair<std::string_view, int>> numbered(std::string_view name) {
  const std::size_t dash = name.rfind('-');
  int number = 0;
  if (dash == std::string_view::npos ||
      std::from_chars(name.data() + dash + 1, name.data() + name.size(), number).ptr !=
          name.data() + name.size() ||
      dash + 1 == name.size())
    return std::nullopt;
  return std::pair(name.substr(0, dash), number);
}

} // namespace

double metres_apart(const Vector3& a, const Vector3& b) {
  return magnitude(vector_between(space_point(a), space_point(b)));
}

PointRows::PointRows(const Rig& rig) {
  for (const Point& point : rig.points)
    if (const auto name = numbered(point.base))
      rows_[{name->first, point.side, point.spar}].places.emplace_back(name->second, &point);
  constexpr std::size_t enough = 3; // one of them is left when the two beside a point are taken out
  for (auto& [key, row] : rows_) {
    // Of two with one number the first counts.
    std::stable_sort(row.places.begin(), row.places.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    row.places.erase(std::unique(row.places.begin(), row.places.end(),
                                 [](const auto& a, const auto& b) { return a.first == b.first; }),
                     row.places.end());
    for (std::size_t i = 0; i + 1 < row.places.size(); ++i)
      row.widest.emplace_back(gap(row, i, i + 1), i);
    std::sort(row.widest.rbegin(), row.widest.rend());
    row.widest.resize(std::min(row.widest.size(), enough));
  }
}

double PointRows::gap(const Row& row, std::size_t from, std::size_t to) {
  const auto& [before, a] = row.places[from];
  const auto& [number, b] = row.places[to];
  return metres_apart(a->position, b->position) / static_cast<double>(number - before);
}

std::optional<PointRows::Gaps> PointRows::gaps_of(const Point& point) const {
  const auto own = numbered(point.base);
  if (!own)
    return std::nullopt;
  const auto found = rows_.find({own->first, point.side, point.spar});
  if (found == rows_.end() || found->second.places.size() < 3)
    return std::nullopt;
  const Row& row = found->second;
  const auto at = static_cast<std::size_t>(
      std::lower_bound(row.places.begin(), row.places.end(), own->second,
                       [](const auto& place, int number) { return place.first < number; }) -
      row.places.begin());
  Gaps gaps;
  const auto look_beside = [&](std::size_t place) {
    const Point* other = row.places[place].second;
    const double apart = metres_apart(point.position, other->position);
    if (std::abs(row.places[place].first - own->second) == 1 && (!gaps.next || apart < *gaps.next)) {
      gaps.next = apart;
      gaps.beside = other;
    }
  };
  if (at > 0)
    look_beside(at - 1);
  if (at + 1 < row.places.size())
    look_beside(at + 1);
  // Another one with its number stands in the row for it, and is not taken out.
  const bool in_row = row.places[at].second == &point;
  for (const auto& [wide, behind] : row.widest)
    if (!in_row || (behind != at && behind + 1 != at)) {
      gaps.others = wide;
      break;
    }
  if (in_row && at > 0 && at + 1 < row.places.size())
    gaps.others = std::max(gaps.others.value_or(0.0), gap(row, at - 1, at + 1));
  return gaps;
}

PointsBeside::PointsBeside(const Rig& rig, const std::vector<std::size_t>& points, double reach)
    : beside_(rig.points.size()) {
  std::vector<std::size_t> by_x = points;
  const auto x_of = [&](std::size_t point) { return rig.points[point].position.x; };
  std::stable_sort(by_x.begin(), by_x.end(),
                   [&](std::size_t a, std::size_t b) { return x_of(a) < x_of(b); });
  const auto beside = [&](std::size_t a, std::size_t b) {
    return std::abs((x_of(a) - x_of(b)).metres()) < reach;
  };
  // Those within reach of one point, by height; they change little from it to the next.
  std::set<std::pair<double, std::size_t>> near;
  const auto height_of = [&](std::size_t point) {
    return std::pair(rig.points[point].position.z.metres(), point);
  };
  std::size_t first = 0;
  std::size_t end = 0;
  for (const std::size_t point : by_x) {
    for (; end < by_x.size() && (x_of(by_x[end]) <= x_of(point) || beside(by_x[end], point)); ++end)
      near.insert(height_of(by_x[end]));
    for (; !beside(by_x[first], point); ++first)
      near.erase(height_of(by_x[first]));
    const auto own = [&](const std::pair<double, std::size_t>& one) {
      return rig.points[one.second].base == rig.points[point].base;
    };
    // Of one base there are two or three.
    const auto low = std::find_if_not(near.begin(), near.end(), own);
    if (low == near.end())
      continue;
    const auto high = std::find_if_not(near.rbegin(), near.rend(), own);
    beside_[point] = {near.size() - 1, &rig.points[low->second], &rig.points[high->second]};
  }
}

} // namespace sheerpole
