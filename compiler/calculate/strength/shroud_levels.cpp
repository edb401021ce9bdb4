#include "calculate/strength/shroud_levels.hpp"

#include "calculate/strength/strength_phrases.hpp"
#include "units/si_factors.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

constexpr double most_out_of_plane = 3.0 * degree;
constexpr double nearness = 0.02;

double out(const Point& point) {
  return std::abs(point.position.y.metres());
}

double up(const Point& point) {
  return point.position.z.metres();
}

/// How far a line leads fore or aft of the plane across the boat.
double out_of_plane(const Point& from, const Point& to) {
  return std::atan2(std::abs(from.position.x.metres() - to.position.x.metres()),
                    std::hypot(from.position.y.metres() - to.position.y.metres(), up(from) - up(to)));
}

class Reader {
public:
  Reader(const Rig& rig, const Stay& cap) : rig_(rig), cap_(cap) {}

  ShroudLevels run() {
    if (cap_.side == Side::centre)
      misses(StrengthPhrase::on_centreline);
    else if (cap_.path.size() < 2)
      misses(StrengthPhrase::no_path);
    else
      read();
    return std::move(result_);
  }

private:
  void misses(Remark why) {
    if (std::find(result_.misses.begin(), result_.misses.end(), why) == result_.misses.end())
      result_.misses.push_back(std::move(why));
  }

  const Point& point(const PathStop& stop) const { return rig_[stop.point]; }
  const Point& top() const { return point(cap_.path.front()); }
  const Point& plate() const { return point(cap_.path.back()); }

  void read() {
    axis_ = out(top());
    beam_ = out(plate()) - axis_;
    if (!(beam_ > 0.0)) {
      misses(StrengthPhrase::chainplate_not_outboard);
      return;
    }
    result_.chainplate = plate().base;
    result_.chainplate_from_axis = Length::metres(beam_);
    result_.off_middle = Length::metres(axis_);
    for (std::size_t i = 1; i < cap_.path.size(); ++i)
      in_plane(point(cap_.path[i - 1]), point(cap_.path[i]));
    for (std::size_t i = cap_.path.size() - 1; i-- > 1;)
      add_spreader(cap_.path[i]);
    add_top();
    for (std::size_t k = 0; k + 1 < result_.levels.size(); ++k)
      find_diagonal(k);
    look_above();
  }

  void in_plane(const Point& from, const Point& to) {
    if (const double angle = out_of_plane(from, to); angle > most_out_of_plane)
      misses({StrengthPhrase::leads_fore_or_aft, {Words{from.base}, Words{to.base}, Angle{angle}}});
  }

  const Spreader* spreader_at(PointId tip) const {
    const auto found = std::find_if(rig_.spreaders.begin(), rig_.spreaders.end(),
                                    [&](const Spreader& one) { return one.tip == tip; });
    return found == rig_.spreaders.end() ? nullptr : &*found;
  }

  void add_spreader(const PathStop& stop) {
    const Point& tip = point(stop);
    const Spreader* spreader = spreader_at(stop.point);
    if (spreader == nullptr) {
      misses({StrengthPhrase::not_a_tip, {Words{tip.base}}});
      return;
    }
    const Point& root = rig_[spreader->root];
    const std::string name = spreader->name.substr(0, spreader->name.find('.'));
    const double sweep =
        std::atan2(std::abs(tip.position.x.metres() - root.position.x.metres()), out(tip) - out(root));
    if (sweep > most_out_of_plane)
      misses({StrengthPhrase::spreader_swept, {Words{name}, Angle{sweep}}});
    on_axis(root);
    ShroudLevel level;
    level.level = {.height = Length::metres(up(root) - up(plate())),
                   .side_force = {},
                   .spreader_tip = Length::metres(out(tip) - axis_),
                   .tip_rise = Length::metres(up(tip) - up(root))};
    level.place = root.base;
    level.tip = tip.base;
    level.spreader = name;
    level.point = spreader->root;
    tips_.push_back(stop.point);
    result_.levels.push_back(std::move(level));
  }

  void add_top() {
    ShroudLevel level;
    level.level.height = Length::metres(up(top()) - up(plate()));
    level.place = top().base;
    level.diagonals = {cap_.base};
    level.point = cap_.path.front().point;
    result_.levels.push_back(std::move(level));
  }

  void on_axis(const Point& place) {
    if (std::abs(out(place) - axis_) > nearness * beam_)
      misses({StrengthPhrase::off_the_line,
              {Words{place.base}, Length::metres(out(place)), Words{top().base}, Length::metres(axis_)}});
  }

  /// Whether a shroud is made fast at about this height of the mast.
  bool begins_near(const Stay& stay, const ShroudLevel& level) const {
    const Point& begin = point(stay.path.front());
    const double height = level.level.height.metres();
    return std::abs(up(begin) - up(plate()) - height) <= nearness * height &&
           out(begin) - axis_ <= nearness * beam_;
  }

  void find_diagonal(std::size_t k) {
    ShroudLevel& level = result_.levels[k];
    for (const Stay& stay : rig_.stays) {
      if (stay.side != cap_.side || stay.base == cap_.base || stay.path.size() < 2 ||
          !begins_near(stay, level) || is_led_aft(stay))
        continue;
      check_diagonal(stay, k);
      level.diagonals.push_back(stay.base);
    }
    if (level.diagonals.empty())
      misses({StrengthPhrase::no_diagonal,
              {Words{level.place}, Words{k == 0 ? result_.chainplate : result_.levels[k - 1].tip}}});
  }

  /// A runner or a backstay is no shroud, wherever it begins.
  bool is_led_aft(const Stay& stay) const {
    constexpr double no_shroud = 30.0 * degree;
    return out_of_plane(point(stay.path[0]), point(stay.path[1])) > no_shroud;
  }

  void check_diagonal(const Stay& stay, std::size_t k) {
    const Point& begin = point(stay.path[0]);
    const Point& next = point(stay.path[1]);
    on_axis(begin);
    if (const double angle = out_of_plane(begin, next); angle > most_out_of_plane)
      misses({StrengthPhrase::diagonal_fore_or_aft, {Words{stay.base}, Angle{angle}}});
    if (k > 0) {
      if (stay.path[1].point != tips_[k - 1])
        misses({StrengthPhrase::diagonal_to_other_tip,
                {Words{stay.base}, Words{next.base}, Words{result_.levels[k - 1].tip}}});
      return;
    }
    const double height = result_.levels[k].level.height.metres();
    if (std::abs(out(next) - out(plate())) > nearness * beam_ ||
        std::abs(up(next) - up(plate())) > nearness * height)
      misses({StrengthPhrase::diagonal_to_other_plate,
              {Words{stay.base}, Words{next.base}, Words{result_.chainplate}}});
  }

  /// The side force acts at the top of the uppermost shroud.
  void look_above() {
    for (const Stay& stay : rig_.stays)
      if (stay.side == cap_.side && stay.path.size() >= 2 && up(point(stay.path.front())) > up(top()) &&
          out(point(stay.path.back())) > axis_ &&
          out_of_plane(point(stay.path[0]), point(stay.path[1])) <= most_out_of_plane)
        misses({StrengthPhrase::begins_higher, {Words{stay.base}}});
  }

  const Rig& rig_;
  const Stay& cap_;
  double axis_ = 0.0;
  double beam_ = 0.0;
  std::vector<PointId> tips_; ///< the lowest first
  ShroudLevels result_;
};

} // namespace

ShroudLevels shroud_levels(const Rig& rig, const Stay& cap) {
  return Reader(rig, cap).run();
}

} // namespace sheerpole
