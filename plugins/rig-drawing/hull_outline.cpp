#include "plugins/rig-drawing/hull_outline.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/deck_outline.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"
#include "wording/papers/rig_drawing_words.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerpole::rig_drawing {

namespace {

struct Place {
  double x = 0.0;
  double z = 0.0;
  /// How far ahead of its upper end a stay comes down there; of a stay from a bowsprit, as far as can be.
  double ahead = 0.0;
};

std::optional<double> metres_of(const Rig& rig, std::string_view fact) {
  const auto stated = fact_length(rig.boat.particulars, fact);
  return stated ? std::optional(stated->value.metres()) : std::nullopt;
}

Vector3 place(double x, double y, double z) {
  return {Length::metres(x), Length::metres(y), Length::metres(z)};
}

/// The lower ends of stays that stand on the hull, not on a spar.
std::vector<Place> feet(const Rig& rig) {
  std::vector<Place> result;
  for (const Stay& stay : rig.stays) {
    if (stay.path.size() < 2)
      continue;
    const Point& foot = rig[stay.path.back().point];
    const Point& head = rig[stay.path.front().point];
    const bool at_junction = !stay.stack.empty() && stay.stack.back().kind == StackItem::Kind::part &&
                             rig[stay.stack.back().part].kind == PartKind::junction;
    if (foot.spar.empty() && !at_junction && !mast_of(rig, foot) && foot.position.z < head.position.z)
      result.push_back({foot.position.x.metres(), foot.position.z.metres(),
                        !head.spar.empty() && !mast_of(rig, head)
                            ? std::numeric_limits<double>::infinity()
                            : foot.position.x.metres() - head.position.x.metres()});
  }
  std::sort(result.begin(), result.end(), [](const Place& a, const Place& b) { return a.x > b.x; });
  return result;
}

/// Height of the sheer where a foot stands within a tenth of the length from there, as high as its foot.
std::optional<double> height_near(const std::vector<Place>& feet, double x, double length) {
  std::optional<double> result;
  double nearest = 0.1 * length;
  for (const Place& foot : feet)
    if (const double away = std::abs(foot.x - x); away <= nearest && foot.z > 0.0) {
      nearest = away;
      result = foot.z;
    }
  return result;
}

/// The parabola through three places; straight where two of them stand above each other.
double parabola(const Place (&through)[3], double x) {
  double z = 0.0;
  for (std::size_t i = 0; i < 3; ++i) {
    double share = 1.0;
    for (std::size_t k = 0; k < 3; ++k)
      if (k != i)
        share *= (x - through[k].x) / (through[i].x - through[k].x);
    z += share * through[i].z;
  }
  return z;
}

constexpr int steps = 16;
/// Broader than this share of her length she has more than one hull.
constexpr double of_one_hull = 0.5;

void add_deck(HullOutline& hull) {
  const double middle = hull.stern + 0.45 * (hull.bow - hull.stern);
  constexpr double transom = 0.45; // less than the greatest beam at the stern, for the eye alone
  for (int i = 0; i <= steps; ++i) {
    const double x = hull.bow + (hull.stern - hull.bow) * i / steps;
    const double share =
        x > middle ? (x - middle) / (hull.bow - middle) : (middle - x) / (middle - hull.stern);
    const double less = (x > middle ? 1.0 : transom) * share * share;
    hull.deck.push_back(place(x, *hull.half_beam * (1.0 - less), 0.0));
  }
}

void add_waterline(const Rig& rig, HullOutline& hull) {
  const auto length = metres_of(rig, fact_names.waterline_length);
  const double over = hull.bow - hull.stern;
  if (!length || *length > over)
    return;
  const double overhang = (over - *length) / 2.0;
  hull.waterline = {place(hull.bow - overhang, 0, 0), place(hull.stern + overhang, 0, 0)};
}

std::optional<HullOutline> of_deck_edge(const Rig& rig, const DeckOutline& edge) {
  HullOutline hull;
  hull.deck_as_stated = true;
  hull.bow = edge.front().x_metres;
  hull.stern = edge.back().x_metres;
  if (!(hull.bow > hull.stern))
    return std::nullopt;
  double widest = 0.0;
  for (const DeckStation& station : edge) {
    hull.sheer.push_back(place(station.x_metres, 0, station.z_metres));
    hull.deck.push_back(place(station.x_metres, station.half_beam_metres, 0));
    widest = std::max(widest, station.half_beam_metres);
  }
  hull.half_beam = widest;
  add_waterline(rig, hull);
  return hull;
}

} // namespace

std::optional<HullOutline> hull_outline(const Rig& rig) {
  if (const auto edge = deck_outline(rig))
    if (auto hull = of_deck_edge(rig, *edge))
      return hull;
  const auto length = metres_of(rig, fact_names.length_overall);
  const std::vector<Place> at = feet(rig);
  // Shrouds alone do not say where the stem is.
  constexpr double of_a_forestay = 0.05;
  if (!length || at.empty() || at.front().ahead < of_a_forestay * *length)
    return std::nullopt;
  HullOutline hull;
  const double spare = *length - (at.front().x - at.back().x);
  // The foremost foot stands at the stem; what the boat is longer than her stays reach is mostly aft of
  // them.
  constexpr double stem_before_foot = 0.02;
  hull.bow = at.front().x + std::min(std::max(spare, 0.0) / 2.0, stem_before_foot * *length);
  hull.stern = hull.bow - std::max(*length, at.front().x - at.back().x);
  const auto sheer = metres_of(rig, fact_names.sheer_at_mast);
  const double middle = hull.stern + 0.55 * (hull.bow - hull.stern);
  const auto abreast = sheer ? sheer : height_near(at, middle, *length);
  const auto bow = height_near(at, hull.bow, *length);
  const auto stern = height_near(at, hull.stern, *length);
  const auto known = abreast ? abreast : bow ? bow : stern;
  if (known) {
    const Place through[3] = {{hull.bow, bow.value_or(*known)},
                              {middle, abreast.value_or(*known)},
                              {hull.stern, stern.value_or(*known)}};
    for (int i = 0; i <= steps; ++i) {
      const double x = hull.bow + (hull.stern - hull.bow) * i / steps;
      hull.sheer.push_back(place(x, 0, parabola(through, x)));
    }
  }
  add_waterline(rig, hull);
  if (const auto beam = metres_of(rig, fact_names.beam)) {
    hull.half_beam = *beam / 2.0;
    if (*beam < of_one_hull * *length)
      add_deck(hull);
  }
  return hull;
}

std::vector<std::string> undrawn_of_hull(const Rig& rig, const std::optional<HullOutline>& hull) {
  std::vector<std::string> result;
  if (!hull) {
    result.push_back(metres_of(rig, fact_names.length_overall)
                         ? say(RigDrawingPhrase::hull_not_drawn_no_stay)
                         : say(RigDrawingPhrase::hull_not_drawn_neither_length));
    return result;
  }
  if (hull->sheer.empty())
    result.push_back(say(RigDrawingPhrase::sheer_not_drawn_no_height));
  if (hull->deck.empty())
    result.push_back(hull->half_beam ? say(RigDrawingPhrase::hulls_not_drawn_plan_their)
                                     : say(RigDrawingPhrase::hull_not_drawn_plan_beam));
  else if (!hull->deck_as_stated)
    result.push_back(say(RigDrawingPhrase::hull_outline_only_length_beam));
  return result;
}

} // namespace sheerpole::rig_drawing
