
#include "backend/drawing/label_text.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace sheerpole::label_column_test {
namespace {

std::vector<double> numbers(int low, int high, std::size_t count) {
  std::vector<double> result;
  for (std::size_t i = 0; i < count; ++i)
    result.push_back(*rc::gen::inRange(low, high) / 10.0);
  return result;
}

TEST(SpreadApart, LeavesAloneWhatHasRoom) {
  const std::vector<double> wanted{10, 30, 70};
  EXPECT_EQ(spread_apart(wanted, {4, 4, 4}, 0, 100), wanted);
}

// Two that want one place: each gives way by half, which is the least square sum by symmetry.
TEST(SpreadApart, SharesThePushEqually) {
  EXPECT_EQ(spread_apart({50, 50}, {4, 4}, 0, 100), (std::vector<double>{48, 52}));
  EXPECT_EQ(spread_apart({50, 50, 50}, {4, 4, 4}, 0, 100), (std::vector<double>{46, 50, 54}));
}

TEST(SpreadApart, StaysInsideItsBounds) {
  EXPECT_EQ(spread_apart({0, 0}, {4, 6}, 0, 100), (std::vector<double>{2, 7}));
  EXPECT_EQ(spread_apart({100, 100}, {4, 6}, 0, 100), (std::vector<double>{92, 97}));
}

RC_GTEST_PROP(SpreadApart, BandsNeverOverlap, ()) {
  const auto count = *rc::gen::inRange<std::size_t>(1, 30);
  std::vector<double> wanted = numbers(-500, 3000, count);
  std::sort(wanted.begin(), wanted.end());
  const std::vector<double> heights = numbers(20, 90, count);
  double sum = 0;
  for (const double height : heights)
    sum += height;
  const std::vector<double> placed = spread_apart(wanted, heights, 10, 10 + sum + 20);
  RC_ASSERT(placed.size() == count);
  RC_ASSERT(placed.front() - heights.front() / 2 >= 10 - 1e-9);
  RC_ASSERT(placed.back() + heights.back() / 2 <= 10 + sum + 20 + 1e-9);
  for (std::size_t i = 0; i + 1 < count; ++i)
    RC_ASSERT(placed[i] + heights[i] / 2 <= placed[i + 1] - heights[i + 1] / 2 + 1e-9);
}

/// On which side of the line from a to b the point c lies.
double side_of(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
  return side_of(a, b, c) * side_of(a, b, d) < -1e-9 && side_of(c, d, a) * side_of(c, d, b) < -1e-9;
}

RC_GTEST_PROP(JoinWithoutCrossing, NoTwoLinesCross, ()) {
  const auto count = *rc::gen::inRange<std::size_t>(1, 25);
  const std::vector<double> x = numbers(0, 1000, count);
  const std::vector<double> y = numbers(0, 2000, count);
  std::vector<PaperPoint> sites;
  std::vector<PaperPoint> ports;
  for (std::size_t i = 0; i < count; ++i) {
    sites.push_back({x[i], y[i]});
    ports.push_back({110.0, 4.0 * static_cast<double>(i)});
  }
  const std::vector<std::size_t> port_of = join_without_crossing(sites, ports);
  std::vector<std::size_t> used = port_of;
  std::sort(used.begin(), used.end());
  for (std::size_t i = 0; i < count; ++i)
    RC_ASSERT(used[i] == i);
  for (std::size_t i = 0; i < count; ++i)
    for (std::size_t j = i + 1; j < count; ++j)
      RC_ASSERT(!cross(sites[i], ports[port_of[i]], sites[j], ports[port_of[j]]));
}

RC_GTEST_PROP(PlaceLabels, BoxesNeverOverlapAndStayOutsideTheView, ()) {
  const auto count = *rc::gen::inRange<std::size_t>(1, 25);
  const std::vector<double> x = numbers(300, 1000, count);
  const std::vector<double> y = numbers(0, 2000, count);
  std::vector<LabelRequest> requests;
  for (std::size_t i = 0; i < count; ++i) {
    std::vector<std::string> lines{"cap-shroud"};
    if (i % 3 == 0)
      lines.emplace_back("upper leg");
    requests.push_back({lines, {x[i], y[i]}, i % 2 == 0 ? 2.3 : 2.8, i % 2 == 1, i % 2 == 1, {}});
  }
  const bool left = *rc::gen::arbitrary<bool>();
  const double edge = left ? 25.0 : 105.0;
  Drawing drawing;
  place_labels(requests, {edge, left, 0, std::max(200.0, column_height(requests))}, drawing.content);
  const std::vector<LabelBox> boxes = label_boxes(drawing);
  RC_ASSERT(boxes.size() == count + (count + 2) / 3);
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    RC_ASSERT((left ? boxes[i].box.right <= edge : boxes[i].box.left >= edge));
    RC_ASSERT(boxes[i].box.width() <= column_width(requests) + 1e-9);
    for (std::size_t j = i + 1; j < boxes.size(); ++j)
      RC_ASSERT(!boxes[i].box.overlaps(boxes[j].box));
  }
}

} // namespace
} // namespace sheerpole::label_column_test
