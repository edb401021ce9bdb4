#pragma once

#include "model/rig.hpp"

#include <array>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

namespace sheerpole {

/// Metres between two points.
double metres_apart(const Vector3& a, const Vector3& b);

/// Points of one name with numbers, on one side of one spar or of the hull: `channel-1`, `channel-2` and so
/// on. Put in order once, so that each point is held against its row without going through all of them.
class PointRows {
public:
  explicit PointRows(const Rig& rig);

  struct Gaps {
    std::optional<double> next;    ///< metres to the nearer of the two beside it
    std::optional<double> others;  ///< the widest gap of the row without it, for each step of the numbers
    const Point* beside = nullptr; ///< the nearer of the two
  };
  /// Nothing of a point without a number, and of rows of one or two.
  std::optional<Gaps> gaps_of(const Point& point) const;

private:
  using Key = std::tuple<std::string_view, Side, std::string_view>; ///< name, side, spar
  struct Row {
    std::vector<std::pair<int, const Point*>> places;
    /// The widest gaps, each with the place behind which it lies: taking a point out touches two.
    std::vector<std::pair<double, std::size_t>> widest;
  };
  static double gap(const Row& row, std::size_t from, std::size_t to);

  std::map<Key, Row> rows_;
};

/// Of some points the lowest and the highest of those that lie within a metre or so fore and aft.
class PointsBeside {
public:
  struct Beside {
    std::size_t count = 0;
    const Point* low = nullptr; ///< of several alike the first
    const Point* high = nullptr;
  };
  /// `points` are looked at and looked for; those of one base are not beside each other. `reach` in metres.
  PointsBeside(const Rig& rig, const std::vector<std::size_t>& points, double reach);
  Beside of(std::size_t point) const { return beside_[point]; }

private:
  std::vector<Beside> beside_; ///< by point of the rig
};

} // namespace sheerpole
