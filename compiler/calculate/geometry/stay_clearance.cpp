#include "calculate/geometry/stay_clearance.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/near_lines.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

namespace sheerpole {

namespace {

Length distance_between(const SpacePoint& a, const SpacePoint& b) {
  return Length::metres(magnitude(vector_between(a, b)));
}

/// An eye of a stack of eyes: its point is named after the stack and the stay.
bool is_eye(const Point& point) {
  return point.name.find('/') != std::string::npos;
}

/// Eyes that sit one above the other, and the ends of two stays that are one place.
bool meet(const Rig& rig, PointId a, PointId b, Length near) {
  if (a == b)
    return true;
  constexpr double tallest_gang_metres = 1.0;
  const Length apart = distance_between(place_of(rig, a), place_of(rig, b));
  return apart < near || ((is_eye(rig[a]) || is_eye(rig[b])) && rig[a].side == rig[b].side &&
                          rig[a].spar == rig[b].spar && apart.metres() < tallest_gang_metres);
}

bool stays_meet(const Rig& rig, const Stay& a, const Stay& b, Length near) {
  for (const PathStop& of_a : a.path)
    for (const PathStop& of_b : b.path)
      if (meet(rig, of_a.point, of_b.point, near))
        return true;
  return false;
}

/// The number of the place where a line begins, the same for all within a millimetre or so.
class Groups {
public:
  std::size_t of(const SpacePoint& place) {
    const auto rounded = [](Length value) { return std::round(value.millimetres()); };
    return numbers_.try_emplace({rounded(place.x), rounded(place.y), rounded(place.z)}, numbers_.size())
        .first->second;
  }

private:
  std::map<std::array<double, 3>, std::size_t> numbers_;
};

struct StayPieces {
  std::vector<LinePiece> pieces;
  std::vector<std::size_t> segment; ///< of each piece in its stay's path
};

StayPieces pieces_of_stays(const Rig& rig, Groups& groups) {
  StayPieces result;
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    const std::vector<SpaceSegment> segments = segments_of(rig, rig.stays[i]);
    for (std::size_t k = 0; k < segments.size(); ++k) {
      result.pieces.push_back({segments[k], i, groups.of(segments.front().from)});
      result.segment.push_back(k);
    }
  }
  return result;
}

/// Keeps the nearest of each two.
class Nearest {
public:
  void add(const NearMiss& miss) {
    const auto [place, fresh] = at_.try_emplace({miss.stay.index(), miss.other}, miss);
    if (!fresh && miss.clear < place->second.clear)
      place->second = miss;
  }
  std::vector<NearMiss> all() const {
    std::vector<NearMiss> result;
    for (const auto& [key, miss] : at_)
      result.push_back(miss);
    return result;
  }

private:
  std::map<std::pair<std::size_t, std::size_t>, NearMiss> at_;
};

StayId stay_id(std::size_t index) {
  return StayId{static_cast<std::uint32_t>(index)};
}

} // namespace

std::vector<SpaceSegment> segments_of(const Rig& rig, const Stay& stay) {
  std::vector<SpaceSegment> result;
  for (std::size_t i = 1; i < stay.path.size(); ++i)
    result.push_back({place_of(rig, stay.path[i - 1].point), place_of(rig, stay.path[i].point)});
  return result;
}

namespace {

/// What the two lines take up themselves between their middles.
Length half_of_both(const Rig& rig, const Stay& a, const Stay& b) {
  return (rig[a.material].diameter.value + rig[b.material].diameter.value) / 2.0;
}

NearMisses stays_within(const Rig& rig, const StayPieces& stays, Length reach, Length limit) {
  Length thickest;
  for (const LineMaterial& material : rig.materials)
    thickest = std::max(thickest, material.diameter.value);
  const PiecePairs pairs = near_pieces(stays.pieces, reach + thickest);
  Nearest nearest;
  for (const PiecePair& pair : pairs.pairs) {
    const LinePiece& first = stays.pieces[pair.first];
    const LinePiece& second = stays.pieces[pair.second];
    const NearestPlaces at = nearest_places(first.segment, second.segment);
    const Stay& a = rig.stays[first.line];
    const Stay& b = rig.stays[second.line];
    const Length thick = half_of_both(rig, a, b);
    if (at.distance - thick < reach && !stays_meet(rig, a, b, limit + thick))
      nearest.add({.stay = stay_id(first.line),
                   .other = second.line,
                   .segment = stays.segment[pair.first],
                   .clear = at.distance - thick,
                   .place = place_along(first.segment, at.first)});
  }
  return {nearest.all(), pairs.complete};
}

} // namespace

NearMisses neighbouring_stays(const Rig& rig, Length reach, Length limit) {
  Groups groups;
  const StayPieces stays = pieces_of_stays(rig, groups);
  NearMisses result = stays_within(rig, stays, std::max(reach, limit), limit);
  return result.complete ? result : stays_within(rig, stays, limit, limit);
}

NearMisses stays_on_spreaders(const Rig& rig, Length limit) {
  Groups groups;
  StayPieces all = pieces_of_stays(rig, groups);
  const std::size_t of_stays = all.pieces.size();
  // All spreaders are one group, so that they are not held against each other.
  const std::size_t group = of_stays + 1;
  for (std::size_t i = 0; i < rig.spreaders.size(); ++i)
    all.pieces.push_back({{place_of(rig, rig.spreaders[i].root), place_of(rig, rig.spreaders[i].tip)},
                          rig.stays.size() + i,
                          group});
  // Stays are one group as well: only a stay and a spreader are wanted.
  for (std::size_t i = 0; i < of_stays; ++i)
    all.pieces[i].group = 0;
  const PiecePairs pairs = near_pieces(all.pieces, limit);
  Nearest nearest;
  for (const PiecePair& pair : pairs.pairs) {
    const LinePiece& stay_piece = all.pieces[pair.first];
    const std::size_t spreader_index = all.pieces[pair.second].line - rig.stays.size();
    const Spreader& spreader = rig.spreaders[spreader_index];
    const Stay& stay = rig.stays[stay_piece.line];
    const NearestPlaces at = nearest_places(stay_piece.segment, all.pieces[pair.second].segment);
    const bool own = std::any_of(stay.path.begin(), stay.path.end(), [&](const PathStop& stop) {
      return meet(rig, stop.point, spreader.tip, limit) || meet(rig, stop.point, spreader.root, limit);
    });
    const Length clear = at.distance - rig[stay.material].diameter.value / 2.0;
    if (clear < limit && !own)
      nearest.add({.stay = stay_id(stay_piece.line),
                   .other = spreader_index,
                   .segment = all.segment[pair.first],
                   .clear = clear,
                   .place = place_along(stay_piece.segment, at.first)});
  }
  return {nearest.all(), pairs.complete};
}

std::optional<SparBody> spar_body(const Spar& spar) {
  const auto girth = fact_length(spar.particulars, fact_names.girth);
  const auto length = fact_length(spar.particulars, fact_names.length);
  if (!girth || !length)
    return std::nullopt;
  const SparLine line = spar_line(spar);
  const double metres = length->value.metres();
  return SparBody{{line.heel,
                   {line.heel.x + Length::metres(metres * line.along.x),
                    line.heel.y + Length::metres(metres * line.along.y),
                    line.heel.z + Length::metres(metres * line.along.z)}},
                  girth->value / (2.0 * std::numbers::pi)};
}

SparClearance spar_clearance(const Rig& rig, const Stay& stay, const Spar& spar, const SparBody& body,
                             Length limit) {
  // A fitting is not drawn to the millimetre.
  constexpr Length grain = Length::millimetres(1.0);
  SparClearance result;
  Length most_lacking;
  const std::vector<SpaceSegment> segments = segments_of(rig, stay);
  for (std::size_t i = 0; i < segments.size(); ++i) {
    const NearestPlaces at = nearest_places(segments[i], body.axis);
    Length allowed = body.radius + limit;
    for (const std::size_t stop : {i, i + 1}) {
      const Point& point = rig[stay.path[stop].point];
      const SpacePoint end = space_point(point.position);
      const Length from_axis = nearest_places({end, end}, body.axis).distance;
      if (point.spar == spar.name || from_axis < body.radius + limit)
        allowed = std::min(allowed, std::min(body.radius, from_axis) - grain);
    }
    const Length lacking = allowed - at.distance;
    if (i == 0 || lacking > most_lacking) {
      most_lacking = lacking;
      result = {.segment = i,
                .clear = at.distance - body.radius,
                .hit = lacking > Length{},
                .place = place_along(segments[i], at.first)};
    }
  }
  return result;
}

} // namespace sheerpole
