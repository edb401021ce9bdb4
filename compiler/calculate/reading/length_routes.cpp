#include "calculate/reading/length_routes.hpp"

#include "calculate/length/length_sum.hpp"
#include "calculate/length/path_length.hpp"
#include "calculate/reading/reading_length.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace sheerpole {

namespace {

constexpr Length near_enough = Length::millimetres(3.0);
constexpr Length next_hole = Length::millimetres(150.0); // holes of one fitting lie no further apart

/// Collects slips that come near the difference.
class Suspicion {
public:
  explicit Suspicion(Length difference) : difference_(difference) {}

  /// `effect` is what the slip would add to the way taken less the other.
  void consider(Remark words, Length effect) {
    if (magnitude(effect) <= near_enough)
      return; // explains nothing
    const Length left = magnitude(difference_ - effect);
    if (left <= near_enough)
      slips_.push_back({std::move(words), left});
  }
  /// A slip by whole feet or metres is told where it comes near, as well; of a tape one that fits is told
  /// by the tape.
  void consider_near(Remark words, Length effect, Length within, bool of_tape) {
    const Length left = magnitude(magnitude(difference_) - effect);
    if (left <= within && !(of_tape && left <= near_enough))
      slips_.push_back({std::move(words), left});
  }
  /// The first of two lengths is near so many times the other, or the other of the first.
  void consider_factor(Remark words, double ratio, double factor) {
    constexpr double within =
        0.03; // two ways to one length agree far better, two factors lie further apart
    if (std::fabs(ratio / factor - 1.0) <= within || std::fabs(ratio * factor - 1.0) <= within)
      slips_.push_back({std::move(words), Length{}});
  }
  /// The same the other way round as well.
  void consider_both(Remark longer, Remark shorter, Length effect) {
    consider(std::move(longer), effect);
    consider(std::move(shorter), -effect);
  }
  std::vector<LikelySlip> likeliest() {
    std::stable_sort(slips_.begin(), slips_.end(), [](const LikelySlip& a, const LikelySlip& b) {
      return a.unexplained < b.unexplained;
    });
    if (slips_.size() > 2)
      slips_.resize(2);
    return std::move(slips_);
  }

private:
  Length difference_;
  std::vector<LikelySlip> slips_;
};

void parts(const Rig& rig, const Stay& stay, Suspicion& suspicion) {
  std::set<std::size_t> seen;
  for (const StackItem& item : stay.stack) {
    if (item.kind != StackItem::Kind::part || !seen.insert(item.part.index()).second)
      continue;
    const Part& part = rig[item.part];
    if (part.role != Part::Role::fixed || !part.length)
      continue;
    suspicion.consider_both({ReadingPhrase::part_counted_twice, {item.part, part.length->value}},
                            {ReadingPhrase::part_left_out, {item.part, part.length->value}},
                            part.length->value);
  }
}

void tape(const Reading& reading, Suspicion& suspicion) {
  if (reading.offset) {
    const Length offset = reading.offset->value;
    suspicion.consider({ReadingPhrase::offset_at_both_ends, {offset}}, offset);
    suspicion.consider({ReadingPhrase::offset_already_off, {offset}}, -offset);
  }
  const LengthUnit unit = reading.lengths().front().provenance.written_in;
  if (unit == LengthUnit::feet || unit == LengthUnit::inches) {
    suspicion.consider_both(ReadingPhrase::foot_too_many, ReadingPhrase::foot_too_few,
                            Length::millimetres(304.8));
    suspicion.consider(ReadingPhrase::held_at_inch, Length::millimetres(25.4));
  } else {
    suspicion.consider(ReadingPhrase::held_at_decimetre, Length::millimetres(100.0));
    suspicion.consider_both(ReadingPhrase::metre_too_many, ReadingPhrase::metre_too_few,
                            Length::millimetres(1000.0));
  }
}

/// 38.11 ft that were 38 ft 11 in, and 38 ft 5 in that were 38.5 ft.
void decimal_feet(const Reading& reading, Suspicion& suspicion) {
  const double feet = reading.lengths().front().value.metres() / 0.3048;
  const double whole = std::floor(feet + 1e-9);
  const double rest = feet - whole;
  const bool decimal = reading.lengths().front().provenance.written_in == LengthUnit::feet;
  for (const double scale : {10.0, 100.0}) {
    const double inches = std::round(rest * scale);
    if (decimal && inches >= 1.0 && inches < 12.0 && std::fabs(rest * scale - inches) < 1e-6)
      suspicion.consider(ReadingPhrase::written_as_decimal_feet,
                         Length::metres((rest - inches / 12.0) * 0.3048));
  }
  const double tenths = std::round(rest * 12.0);
  if (tenths >= 1.0 && tenths < 10.0 && std::fabs(rest * 12.0 - tenths) < 1e-6)
    suspicion.consider(ReadingPhrase::written_as_feet_and_inches,
                       Length::metres((rest - tenths / 10.0) * 0.3048));
}

/// The path with its first or last point somewhere near by, less the path: the other way would be so much
/// longer.
void next_holes(const Rig& rig, const Stay& stay, Suspicion& suspicion) {
  const auto as_stated = path_length(rig, stay);
  if (!as_stated)
    return;
  for (const bool upper : {true, false}) {
    Stay moved = stay;
    PathStop& end = upper ? moved.path.front() : moved.path.back();
    const PointId usual = end.point;
    for (std::size_t i = 0; i < rig.points.size(); ++i) {
      const Point& point = rig.points[i];
      end.point = PointId{static_cast<std::uint32_t>(i)};
      const bool near = end.point != usual && point.side == rig[usual].side &&
                        distance(point.position, rig[usual].position) <= next_hole;
      const auto other = near ? path_length(rig, moved) : std::nullopt;
      if (other)
        suspicion.consider({ReadingPhrase::next_hole, {Words{point.base}, Words{rig[usual].base}}},
                           other->known() - as_stated->known());
    }
  }
}

void other_side(const Rig& rig, const Stay& stay, Suspicion& suspicion) {
  const auto mine = path_length(rig, stay);
  if (!mine || stay.side == Side::centre)
    return;
  Stay mirrored = stay;
  for (PathStop& stop : mirrored.path)
    stop.point = rig[stop.point].twin.value_or(stop.point);
  if (const auto other = path_length(rig, mirrored))
    suspicion.consider(ReadingPhrase::other_side, other->known() - mine->known());
}

} // namespace

bool ways_differ(const Rig& rig, const RouteComparison& other) {
  const auto allowed = rig.limits.length(Limit::routes_apart);
  return allowed && other.other != LengthRoute::reading && !other.expected_x && !other.is_assumed() &&
         magnitude(other.difference) > *allowed + rounding_of_sums;
}

bool far_apart(const Rig& rig, Length one, Length other) {
  const auto share = rig.limits.value(Limit::routes_far_apart);
  return share && magnitude(one - other) > std::max(magnitude(one), magnitude(other)) * *share;
}

std::vector<LikelySlip> likely_slips(const Rig& rig, const Stay& stay, const Reading* reading,
                                     LengthRoute other, Length length, Length difference) {
  Suspicion suspicion(difference);
  if (magnitude(difference) <= near_enough)
    return {};
  const Length by_other = length - difference;
  const bool of_tape = reading != nullptr;
  if (far_apart(rig, length, by_other)) {
    const double ratio = by_other > Length{} ? length.metres() / by_other.metres() : 0.0;
    if (ratio > 0.0) {
      suspicion.consider_factor(ReadingPhrase::factor_of_ten, ratio, 10.0);
      suspicion.consider_factor(ReadingPhrase::inches_and_millimetres, ratio, 25.4);
      suspicion.consider_factor(ReadingPhrase::inches_and_centimetres, ratio, 2.54);
      suspicion.consider_factor(ReadingPhrase::feet_and_metres, ratio, 1.0 / 0.3048);
      suspicion.consider_factor(ReadingPhrase::feet_and_inches, ratio, 12.0);
    }
    suspicion.consider_near(ReadingPhrase::about_a_metre, Length::metres(1.0), Length::millimetres(20.0),
                            of_tape);
    suspicion.consider_near(ReadingPhrase::about_a_foot, Length::metres(0.3048), Length::millimetres(20.0),
                            of_tape);
  }
  parts(rig, stay, suspicion);
  if (of_tape) {
    tape(*reading, suspicion);
    decimal_feet(*reading, suspicion);
  }
  if (other == LengthRoute::path) {
    next_holes(rig, stay, suspicion);
    other_side(rig, stay, suspicion);
  }
  return suspicion.likeliest();
}

} // namespace sheerpole
