#include "calculate/geometry/near_lines.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <tuple>
#include <utility>

namespace sheerpole {

namespace {

SpaceVector at(const SpacePoint& from, SpaceVector way, double share) {
  return SpaceVector{from.x.metres(), from.y.metres(), from.z.metres()} + share * way;
}

} // namespace

NearestPlaces nearest_places(const SpaceSegment& a, const SpaceSegment& b) {
  const SpaceVector along_a = vector_between(a.from, a.to);
  const SpaceVector along_b = vector_between(b.from, b.to);
  const SpaceVector between = vector_between(b.from, a.from);
  const double aa = dot_product(along_a, along_a);
  const double bb = dot_product(along_b, along_b);
  const double ab = dot_product(along_a, along_b);
  const double a_between = dot_product(along_a, between);
  const double b_between = dot_product(along_b, between);
  const double cross = aa * bb - ab * ab;
  NearestPlaces result;
  // The nearest place of the endless lines, then each one kept within its piece in turn.
  if (aa > 0.0 && bb > 0.0 && cross > 1e-12 * aa * bb)
    result.first = std::clamp((ab * b_between - a_between * bb) / cross, 0.0, 1.0);
  result.second = bb > 0.0 ? (ab * result.first + b_between) / bb : 0.0;
  if (result.second < 0.0 || result.second > 1.0) {
    result.second = std::clamp(result.second, 0.0, 1.0);
    result.first = aa > 0.0 ? std::clamp((ab * result.second - a_between) / aa, 0.0, 1.0) : 0.0;
  } else if (!(bb > 0.0)) {
    result.first = aa > 0.0 ? std::clamp(-a_between / aa, 0.0, 1.0) : 0.0;
  }
  result.distance =
      Length::metres(magnitude(at(a.from, along_a, result.first) - at(b.from, along_b, result.second)));
  return result;
}

SpacePoint place_along(const SpaceSegment& segment, double share) {
  const SpaceVector place = at(segment.from, vector_between(segment.from, segment.to), share);
  return {Length::metres(place.x), Length::metres(place.y), Length::metres(place.z)};
}

Length length_of(const SpaceSegment& segment) {
  return Length::metres(magnitude(vector_between(segment.from, segment.to)));
}

namespace {

constexpr double cell_metres = 1.0;
constexpr double longest_metres = 1000.0;

using Cell = std::array<std::int32_t, 3>;

/// A piece in a cell. There are some for each metre of each line, so both halves are one number that sorts
/// as its parts do.
struct Entry {
  std::uint64_t cell = 0;    ///< number_of()
  std::uint64_t of_cell = 0; ///< the group in the upper half, the piece in the lower

  std::size_t group() const { return of_cell >> 32U; }
  std::size_t piece() const { return of_cell & 0xffffffffU; }

  friend bool operator<(const Entry& a, const Entry& b) {
    return a.cell != b.cell ? a.cell < b.cell : a.of_cell < b.of_cell;
  }
  friend bool operator==(const Entry& a, const Entry& b) = default;
};

/// Of each coordinate 21 bits: cells lie within a thousand kilometres, see fits().
std::uint64_t number_of(const Cell& cell) {
  constexpr std::int32_t middle = 1 << 20;
  std::uint64_t number = 0;
  for (const std::int32_t coordinate : cell)
    number = number << 21U | static_cast<std::uint64_t>(coordinate + middle);
  return number;
}

bool fits(const SpacePoint& place) {
  const double far = 1e6;
  return std::abs(place.x.metres()) < far && std::abs(place.y.metres()) < far &&
         std::abs(place.z.metres()) < far;
}

/// Whether a piece is looked at: a longer one would lie in too many cells.
bool fits(const SpaceSegment& segment) {
  return fits(segment.from) && fits(segment.to) && length_of(segment).metres() <= longest_metres;
}

/// The cells that a ball of `reach` round some place of the part from one place to another can touch.
void add_part(std::vector<Entry>& entries, const SpacePoint& from, const SpacePoint& to, double reach,
              std::size_t group, std::size_t piece) {
  Cell least{};
  Cell most{};
  const std::array<std::array<double, 2>, 3> sides{{{from.x.metres(), to.x.metres()},
                                                    {from.y.metres(), to.y.metres()},
                                                    {from.z.metres(), to.z.metres()}}};
  for (std::size_t i = 0; i < 3; ++i) {
    const auto [low, high] = std::minmax(sides[i][0], sides[i][1]);
    least[i] = static_cast<std::int32_t>(std::floor((low - reach) / cell_metres));
    most[i] = static_cast<std::int32_t>(std::floor((high + reach) / cell_metres));
  }
  for (std::int32_t x = least[0]; x <= most[0]; ++x)
    for (std::int32_t y = least[1]; y <= most[1]; ++y)
      for (std::int32_t z = least[2]; z <= most[2]; ++z)
        entries.push_back({number_of({x, y, z}), std::uint64_t{group} << 32U | piece});
}

std::vector<Entry> entries_of(const std::vector<LinePiece>& pieces, double reach) {
  std::vector<Entry> entries;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const SpaceSegment& segment = pieces[i].segment;
    if (!fits(segment))
      continue;
    const double length = length_of(segment).metres();
    const int steps = std::max(1, static_cast<int>(std::ceil(length / cell_metres)));
    for (int step = 0; step < steps; ++step)
      add_part(entries, place_along(segment, static_cast<double>(step) / steps),
               place_along(segment, static_cast<double>(step + 1) / steps), reach, pieces[i].group, i);
  }
  std::sort(entries.begin(), entries.end());
  entries.erase(std::unique(entries.begin(), entries.end()), entries.end());
  return entries;
}

/// What lies between two places along each axis, metres.
struct Box {
  std::array<double, 3> least;
  std::array<double, 3> most;
};

Box box_of(const SpaceSegment& segment) {
  Box box{{segment.from.x.metres(), segment.from.y.metres(), segment.from.z.metres()},
          {segment.to.x.metres(), segment.to.y.metres(), segment.to.z.metres()}};
  for (std::size_t i = 0; i < 3; ++i)
    if (box.least[i] > box.most[i])
      std::swap(box.least[i], box.most[i]);
  return box;
}

bool within(const Box& a, const Box& b, double reach) {
  for (std::size_t i = 0; i < 3; ++i)
    if (a.least[i] - b.most[i] > reach || b.least[i] - a.most[i] > reach)
      return false;
  return true;
}

/// Of a boat as she is, each two pieces are looked at sooner than the cells that they lie in.
std::vector<PiecePair> pairs_of_few(const std::vector<LinePiece>& pieces, double reach) {
  std::vector<PiecePair> pairs;
  std::vector<Box> boxes;
  std::vector<std::size_t> looked_at;
  boxes.reserve(pieces.size());
  looked_at.reserve(pieces.size());
  for (std::size_t i = 0; i < pieces.size(); ++i)
    if (fits(pieces[i].segment)) {
      looked_at.push_back(i);
      boxes.push_back(box_of(pieces[i].segment));
    }
  for (std::size_t a = 0; a < looked_at.size(); ++a)
    for (std::size_t b = a + 1; b < looked_at.size(); ++b) {
      const LinePiece& first = pieces[looked_at[a]];
      const LinePiece& second = pieces[looked_at[b]];
      if (first.line != second.line && first.group != second.group && within(boxes[a], boxes[b], reach))
        pairs.push_back({looked_at[a], looked_at[b]});
    }
  return pairs;
}

} // namespace

PiecePairs near_pieces(const std::vector<LinePiece>& pieces, Length reach, std::size_t most_pairs_a_piece) {
  PiecePairs result;
  if (pieces.size() <= most_pairs_a_piece) { // then no piece has more pairs than may be taken
    result.pairs = pairs_of_few(pieces, reach.metres());
    return result;
  }
  // Half the reach on either side of both: what comes nearer than the reach shares a cell.
  const std::vector<Entry> entries = entries_of(pieces, reach.metres() / 2.0);
  const std::size_t most = most_pairs_a_piece * (pieces.size() + 1);
  for (std::size_t begin = 0; begin < entries.size();) {
    std::size_t end = begin;
    while (end < entries.size() && entries[end].cell == entries[begin].cell)
      ++end;
    // Within a cell entries stand group by group: a piece is held against all behind its own group.
    for (std::size_t i = begin, next_group = begin; i < end; ++i) {
      while (next_group < end && entries[next_group].group() <= entries[i].group())
        ++next_group;
      for (std::size_t k = next_group; k < end; ++k) {
        if (result.pairs.size() >= most) {
          result.complete = false;
          break;
        }
        const std::size_t a = entries[i].piece();
        const std::size_t b = entries[k].piece();
        if (pieces[a].line != pieces[b].line)
          result.pairs.push_back({std::min(a, b), std::max(a, b)});
      }
    }
    begin = end;
  }
  const auto key = [](const PiecePair& pair) { return std::tie(pair.first, pair.second); };
  std::sort(result.pairs.begin(), result.pairs.end(),
            [&](const PiecePair& a, const PiecePair& b) { return key(a) < key(b); });
  result.pairs.erase(std::unique(result.pairs.begin(), result.pairs.end(),
                                 [&](const PiecePair& a, const PiecePair& b) { return key(a) == key(b); }),
                     result.pairs.end());
  return result;
}

} // namespace sheerpole
