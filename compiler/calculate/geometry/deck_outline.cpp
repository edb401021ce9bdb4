#include "calculate/geometry/deck_outline.hpp"

#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

const Point* find_point(const Rig& rig, const std::string& name) {
  for (const Point& point : rig.points)
    if (point.name == name || point.base == name)
      return &point;
  return nullptr;
}

/// A straight function of the share of the piece: value at 0, and how much it grows to 1.
struct Straight {
  double begin = 0.0;
  double slope = 0.0;
  double at(double share) const { return begin + slope * share; }
};

/// An interval of shares.
struct Interval {
  double from = 0.0, to = 1.0;
  bool empty() const { return !(from < to); }
};

/// Keeps of the interval what makes the function more than 0.
Interval where_positive(Interval interval, const Straight& function) {
  if (std::abs(function.slope) < 1e-15) {
    if (!(function.begin > 0.0))
      interval.to = interval.from;
    return interval;
  }
  const double zero = -function.begin / function.slope;
  if (function.slope > 0.0)
    interval.from = std::max(interval.from, zero);
  else
    interval.to = std::min(interval.to, zero);
  return interval;
}

/// What a piece does between two stations of the edge.
struct Bay {
  Interval inside;     ///< of the outline
  Straight above_edge; ///< metres above the edge of the deck
};

std::optional<Bay> bay(const SpaceSegment& piece, const DeckStation& fore, const DeckStation& aft) {
  const double length = fore.x_metres - aft.x_metres;
  if (!(length > 0.0))
    return std::nullopt;
  const SpaceVector way = vector_between(piece.from, piece.to);
  const Straight aft_of_fore{(fore.x_metres - piece.from.x.metres()) / length, -way.x / length};
  const Straight before_aft{1.0 - aft_of_fore.begin, -aft_of_fore.slope};
  const auto edge = [&](double at_fore, double at_aft) {
    return Straight{at_fore + aft_of_fore.begin * (at_aft - at_fore),
                    aft_of_fore.slope * (at_aft - at_fore)};
  };
  const Straight half_beam = edge(fore.half_beam_metres, aft.half_beam_metres);
  const Straight height = edge(fore.z_metres, aft.z_metres);
  Bay result;
  // A hair of slack at the stations, so that a piece along one is in a bay.
  result.inside = where_positive(result.inside, {aft_of_fore.begin + 1e-9, aft_of_fore.slope});
  result.inside = where_positive(result.inside, {before_aft.begin + 1e-9, before_aft.slope});
  result.inside =
      where_positive(result.inside, {half_beam.begin - piece.from.y.metres(), half_beam.slope - way.y});
  result.inside =
      where_positive(result.inside, {half_beam.begin + piece.from.y.metres(), half_beam.slope + way.y});
  if (result.inside.empty())
    return std::nullopt;
  result.above_edge = {piece.from.z.metres() - height.begin, way.z - height.slope};
  return result;
}

} // namespace

std::optional<DeckOutline> deck_outline(const Rig& rig) {
  const Particular* edge = find_fact(rig.boat.particulars, fact_names.deck_edge);
  if (edge == nullptr)
    return std::nullopt;
  DeckOutline outline;
  for (const std::string& name : edge->names)
    if (const Point* point = find_point(rig, name))
      outline.push_back(
          {point->position.x.metres(), std::abs(point->position.y.metres()), point->position.z.metres()});
  if (outline.size() < 2)
    return std::nullopt;
  if (outline.front().x_metres < outline.back().x_metres)
    std::reverse(outline.begin(), outline.end());
  return outline;
}

std::optional<ThroughDeck> through_deck(const SpaceSegment& piece, const DeckOutline& outline,
                                        Length spared) {
  const double length = length_of(piece).metres();
  if (!(length > 2.0 * spared.metres()))
    return std::nullopt;
  const Interval middle{spared.metres() / length, 1.0 - spared.metres() / length};
  bool above = false;
  std::optional<ThroughDeck> result;
  for (std::size_t i = 1; i < outline.size(); ++i) {
    const auto seen = bay(piece, outline[i - 1], outline[i]);
    if (!seen)
      continue;
    constexpr double grain_metres = 1e-6;
    above = above || std::max(seen->above_edge.at(seen->inside.from),
                              seen->above_edge.at(seen->inside.to)) > grain_metres;
    Interval below = where_positive(seen->inside, {-seen->above_edge.begin, -seen->above_edge.slope});
    below.from = std::max(below.from, middle.from);
    below.to = std::min(below.to, middle.to);
    if (below.empty())
      continue;
    const double deepest =
        seen->above_edge.at(below.from) < seen->above_edge.at(below.to) ? below.from : below.to;
    const Length depth = Length::metres(-seen->above_edge.at(deepest));
    if (depth.metres() > grain_metres && (!result || depth > result->below))
      result = ThroughDeck{depth, place_along(piece, deepest == below.from ? below.to : below.from)};
  }
  return above ? result : std::nullopt;
}

} // namespace sheerpole
