#include "rules/geometry/point_rows.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <string>

// What is found at once for all points is to be what is found for each by going through all the others.

namespace sheerpole::point_rows_test {
namespace {

/// Numbers that look like chance, the same in every run.
class Chance {
public:
  unsigned below(unsigned sides) {
    state_ = state_ * 6364136223846793005U + 1442695040888963407U;
    return static_cast<unsigned>(state_ >> 33U) % sides;
  }

private:
  std::uint64_t state_ = 1;
};

/// Points of a few rows, some with one number twice, on both sides, many of them at the same place.
Rig some_points(Chance& chance, unsigned count) {
  Rig rig;
  for (unsigned i = 0; i < count; ++i) {
    Point point;
    point.base = (chance.below(2) == 0 ? "plate-" : "tang-") + std::to_string(chance.below(count));
    if (chance.below(8) == 0)
      point.base = "stem";
    point.name = point.base;
    point.side = chance.below(2) == 0 ? Side::port : Side::starboard;
    const auto metres = [&] { return Length::metres(0.25 * chance.below(12)); };
    point.position = {metres(), metres(), metres()};
    rig.points.push_back(point);
  }
  return rig;
}

/// The rows by their definition: each number once, the first of it; without the point itself.
std::optional<PointRows::Gaps> gaps_one_by_one(const Rig& rig, const Point& point) {
  const auto stem_of = [](const Point& of) { return of.base.substr(0, of.base.rfind('-')); };
  const auto number_of = [](const Point& of) { return std::stoi(of.base.substr(of.base.rfind('-') + 1)); };
  const auto has_number = [](const Point& of) { return of.base.find('-') != std::string::npos; };
  if (!has_number(point))
    return std::nullopt;
  std::map<int, const Point*> row;
  for (const Point& other : rig.points)
    if (has_number(other) && stem_of(other) == stem_of(point) && other.side == point.side)
      row.emplace(number_of(other), &other);
  if (row.size() < 3)
    return std::nullopt;
  PointRows::Gaps gaps;
  std::pair<int, const Point*> before{0, nullptr};
  for (const auto& [number, other] : row) {
    if (other == &point)
      continue;
    const double apart = metres_apart(point.position, other->position);
    if (std::abs(number - number_of(point)) == 1 && (!gaps.next || apart < *gaps.next)) {
      gaps.next = apart;
      gaps.beside = other;
    }
    if (before.second != nullptr)
      gaps.others =
          std::max(gaps.others.value_or(0.0),
                   metres_apart(before.second->position, other->position) / (number - before.first));
    before = {number, other};
  }
  return gaps;
}

TEST(PointRows, AreWhatGoingThroughAllPointsFinds) {
  Chance chance;
  int rows = 0;
  for (int round = 0; round < 200; ++round) {
    const Rig rig = some_points(chance, 3 + chance.below(20));
    const PointRows found(rig);
    for (const Point& point : rig.points) {
      const auto one = found.gaps_of(point);
      const auto other = gaps_one_by_one(rig, point);
      ASSERT_EQ(one.has_value(), other.has_value()) << point.base;
      if (!one)
        continue;
      ++rows;
      EXPECT_EQ(one->next, other->next) << point.base;
      EXPECT_EQ(one->others, other->others) << point.base;
      EXPECT_EQ(one->beside, other->beside) << point.base;
    }
  }
  EXPECT_GT(rows, 500);
}

TEST(PointsBeside, AreWhatGoingThroughAllPointsFinds) {
  Chance chance;
  std::size_t most = 0;
  for (int round = 0; round < 200; ++round) {
    Rig rig = some_points(chance, 2 + chance.below(20));
    std::vector<std::size_t> some;
    for (std::size_t i = 0; i < rig.points.size(); ++i) {
      rig.points[i].base += "-" + std::to_string(i); // on one side no base stands twice
      if (chance.below(3) > 0)
        some.push_back(i);
    }
    constexpr double reach = 1.0;
    const PointsBeside found(rig, some, reach);
    for (const std::size_t i : some) {
      PointsBeside::Beside one;
      for (const std::size_t k : some) {
        const Point& other = rig.points[k];
        if (k == i || std::abs((other.position.x - rig.points[i].position.x).metres()) >= reach)
          continue;
        ++one.count;
        if (one.low == nullptr || other.position.z < one.low->position.z)
          one.low = &other;
        if (one.high == nullptr || other.position.z > one.high->position.z)
          one.high = &other;
      }
      const PointsBeside::Beside beside = found.of(i);
      ASSERT_EQ(beside.count, one.count);
      most = std::max(most, one.count);
      EXPECT_EQ(beside.low, one.low);
      if (one.high != nullptr) {
        EXPECT_EQ(beside.high->position.z, one.high->position.z);
      }
    }
  }
  EXPECT_GT(most, 5u);
}

} // namespace
} // namespace sheerpole::point_rows_test
