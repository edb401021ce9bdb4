#include "calculate/geometry/spar_lines.hpp"

#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

SpaceVector axis(const Spar& spar, std::size_t which) {
  return {spar.axes[which][0], spar.axes[which][1], spar.axes[which][2]};
}

bool near(const FromSpar& place) {
  return place.off.metres() <= fitting_from_mast_metres &&
         place.along.metres() >= -fitting_from_mast_metres;
}

} // namespace

SparLine spar_line(const Spar& spar) {
  // In the frame of a spar a mast goes up, a bowsprit forward, and what reaches aft lies at negative x.
  const SpaceVector along = stands(spar)                      ? axis(spar, 2)
                            : spar.sort == SparSort::bowsprit ? axis(spar, 0)
                                                              : -1.0 * axis(spar, 0);
  return {space_point(spar.heel), along};
}

FromSpar from_spar(const SparLine& line, const SpacePoint& place) {
  const SpaceVector way = vector_between(line.heel, place);
  const double along = dot_product(way, line.along);
  return {Length::metres(along), Length::metres(magnitude(way - along * line.along))};
}

bool stands(const Spar& spar) {
  return is_standing(spar.sort);
}

const Spar* find_spar(const Rig& rig, std::string_view name) {
  for (const Spar& spar : rig.spars)
    if (spar.name == name)
      return &spar;
  return nullptr;
}

std::optional<MastOfPoint> mast_of(const Rig& rig, const Point& point) {
  const SpacePoint place = space_point(point.position);
  if (!point.spar.empty()) {
    const Spar* spar = find_spar(rig, point.spar);
    if (spar == nullptr || !stands(*spar) || !near(from_spar(spar_line(*spar), place)))
      return std::nullopt;
    return MastOfPoint{spar, OnMast::stated};
  }
  std::optional<MastOfPoint> result;
  Length least;
  for (const Spar& spar : rig.spars) {
    if (!stands(spar))
      continue;
    const FromSpar seen = from_spar(spar_line(spar), place);
    if (!near(seen) || (result && !(seen.off < least)))
      continue;
    result = MastOfPoint{&spar, OnMast::near};
    least = seen.off;
  }
  return result;
}

bool ends_in_plate(const Rig& rig, const Stay& stay, WhichEnd where) {
  if (stay.stack.empty())
    return false;
  const StackItem& item = where == WhichEnd::upper ? stay.stack.front() : stay.stack.back();
  return item.kind == StackItem::Kind::part && rig[item.part].kind == PartKind::junction;
}

bool is_plate_in_air(const Rig& rig, const Point& point) {
  return std::any_of(rig.stays.begin(), rig.stays.end(), [&](const Stay& stay) {
    return stay.path.size() >= 2 &&
           ((rig[stay.path.front().point].name == point.name &&
             ends_in_plate(rig, stay, WhichEnd::upper)) ||
            (rig[stay.path.back().point].name == point.name && ends_in_plate(rig, stay, WhichEnd::lower)));
  });
}

const Spar& carrier_of(const Rig& rig, const Spar& spar) {
  if (spar.sort != SparSort::topmast)
    return spar;
  const Spar* nearest = nullptr;
  Length least;
  for (const Spar& other : rig.spars) {
    if (!stands(other) || other.sort == SparSort::topmast)
      continue;
    const Length off = from_spar(spar_line(other), space_point(spar.heel)).off;
    if (nearest == nullptr || off < least) {
      nearest = &other;
      least = off;
    }
  }
  return nearest == nullptr ? spar : *nearest;
}

std::vector<const Spar*> masts_of(const Rig& rig) {
  std::vector<const Spar*> result;
  for (const Spar& spar : rig.spars)
    if (stands(spar) && &carrier_of(rig, spar) == &spar)
      result.push_back(&spar);
  return result;
}

const Spar* mast_at(const Rig& rig, const Stay& stay, WhichEnd where) {
  if (stay.path.size() < 2)
    return nullptr;
  const PointId upper = stay.path.front().point;
  const PointId lower = stay.path.back().point;
  const auto on = [&](const Stay& of, WhichEnd end) -> const Spar* {
    const auto found =
        mast_of(rig, rig[end == WhichEnd::upper ? of.path.front().point : of.path.back().point]);
    // A plate in the air hangs beside a mast at most.
    return found && !(found->how == OnMast::near && ends_in_plate(rig, of, end))
               ? &carrier_of(rig, *found->mast)
               : nullptr;
  };
  for (const WhichEnd end : {where, where == WhichEnd::upper ? WhichEnd::lower : WhichEnd::upper})
    if (const Spar* mast = on(stay, end))
      return mast;
  for (const Stay& other : rig.stays)
    if (&other != &stay && other.path.size() >= 2 &&
        (other.path.back().point == upper || other.path.back().point == lower))
      if (const Spar* mast = on(other, WhichEnd::upper))
        return mast;
  return nullptr;
}

bool between_masts(const Rig& rig, const Stay& stay) {
  if (stay.path.size() < 2)
    return false;
  const auto upper = mast_of(rig, rig[stay.path.front().point]);
  const auto lower = mast_of(rig, rig[stay.path.back().point]);
  return upper && lower && upper->mast != lower->mast;
}

namespace {

/// The directions by which a spreader is judged.
struct TipFrame {
  SpaceVector up;  ///< from which its rise is counted square to
  SpaceVector out; ///< square to `up`, in the plane of it and the spreader
  double rise = 0.0;
};

std::optional<TipFrame> frame(SpaceVector spreader, SpaceVector up) {
  const double rise = dot_product(spreader, up);
  const SpaceVector level = spreader - rise * up;
  const double run = magnitude(level);
  if (!(run > 1e-9))
    return std::nullopt;
  return TipFrame{up, (1.0 / run) * level, std::atan2(rise, run)};
}

/// How far a part of the line leans outwards on its way along -up.
double lean(const TipFrame& frame, SpaceVector way) {
  return std::atan2(dot_product(way, frame.out), -dot_product(way, frame.up));
}

std::optional<double> halving(const TipFrame& frame, SpaceVector from_above, SpaceVector to_below) {
  return bisecting_elevation(lean(frame, from_above), lean(frame, to_below));
}

bool is_steep(SpaceVector spreader) {
  return std::abs(spreader.z) > std::hypot(spreader.x, spreader.y);
}

LineOverTip line_over(const Rig& rig, StayId id, std::size_t stop, const Spreader& spreader) {
  const Stay& stay = rig[id];
  LineOverTip line{.stay = id,
                   .stop = stop,
                   .clamped = stay.path[stop].passage == Passage::clamped,
                   .bend = {},
                   .rise_radians = 0.0,
                   .halving_radians = {}};
  const SpacePoint tip = place_of(rig, spreader.tip);
  const SpacePoint root = place_of(rig, spreader.root);
  SpacePoint above = place_of(rig, stay.path[stop - 1].point);
  SpacePoint below = place_of(rig, stay.path[stop + 1].point);
  line.bend = tip_bend(above, tip, below, root);
  const auto direction = direction_between(root, tip);
  if (!direction || !line.bend)
    return line;
  SpaceVector up{0.0, 0.0, 1.0};
  if (is_steep(*direction)) {
    const SpaceVector run = vector_between(below, above);
    const double level = std::hypot(run.x, run.y);
    if (!(level > 1e-9))
      return line;
    up = {run.x / level, run.y / level, 0.0};
  } else if (above.z < below.z) {
    std::swap(above, below);
  }
  if (const auto seen = frame(*direction, up)) {
    line.rise_radians = seen->rise;
    line.halving_radians = halving(*seen, vector_between(above, tip), vector_between(tip, below));
  }
  return line;
}

} // namespace

std::vector<SpreaderTip> spreader_tips(const Rig& rig) {
  std::vector<SpreaderTip> result(rig.spreaders.size());
  constexpr std::size_t none = static_cast<std::size_t>(-1);
  std::vector<std::size_t> spreader_of(rig.points.size(), none);
  for (std::size_t i = 0; i < rig.spreaders.size(); ++i) {
    result[i].spreader = i;
    std::size_t& held_by = spreader_of[rig.spreaders[i].tip.index()];
    if (held_by == none) // two struts to one tip: it is judged by the first
      held_by = i;
  }
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    const StayId id{static_cast<std::uint32_t>(i)};
    const std::vector<PathStop>& path = rig[id].path;
    for (std::size_t stop = 0; stop < path.size(); ++stop) {
      const std::size_t spreader = spreader_of[path[stop].point.index()];
      if (spreader == none)
        continue;
      if (stop == 0 || stop + 1 == path.size())
        result[spreader].ending.push_back(id);
      else
        result[spreader].lines.push_back(line_over(rig, id, stop, rig.spreaders[spreader]));
    }
  }
  return result;
}

const LineOverTip* line_that_sets(const SpreaderTip& tip) {
  const LineOverTip* best = nullptr;
  for (const LineOverTip& line : tip.lines) {
    if (!line.halving_radians)
      continue;
    const bool better =
        best == nullptr || (line.clamped && !best->clamped) ||
        (line.clamped == best->clamped && std::abs(line.off_bisector()) < std::abs(best->off_bisector()));
    if (better)
      best = &line;
  }
  return best;
}

} // namespace sheerpole
