#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/point_rows.hpp"
#include "rules/geometry/point_uses.hpp"
#include "wording/checks/geometry_phrases.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <string_view>

/// Whether a point agrees with the points beside it: the others of a numbered row, the same fitting on the
/// other side, the plates next to it, the spreader above it, the stem. A bound of the boat as a whole is
/// too wide for a slip of half a metre; what sits together shows it. The bounds are common practice, no
/// source.
namespace sheerpole::neighbouring_points {

namespace {

using P = GeometryCheckPhrase;

constexpr double row_unevenness = 2.4;       // times as far as the others of a row from each other
constexpr double row_metres = 0.25;          // and so much more than they
constexpr double pair_metres = 0.1;          // a hull is not alike to a few centimetres
constexpr double beside_metres = 1.0;        // fore and aft, of plates that sit beside each other
constexpr double height_metres = 0.15;       // of plates beside each other, that agree
constexpr double least_height_metres = 0.08; // off them
constexpr double height_spreads = 2.0;       // the same, over how far these lie apart
constexpr double below_sheer_metres = 0.2;
constexpr double below_deck_metres =
    0.25;                                // of a fitting on the fore deck, under the line from sheer to stem
constexpr double stem_over_sheer = 0.95; // the stem is seldom lower than the sheer at the mast
constexpr double told_below = 0.5;       // of the sheer: lower is told by point-unlikely
constexpr double low_over_sheer = 0.25;  // of a pair in the topsides
constexpr double over_heel = 0.6; // a bobstay goes down to the stem, of the height of the bowsprit's heel
constexpr double sweep_share = 0.14; // 8 degrees of a spreader
constexpr double of_fitting_times =
    3.0; // off the other points of one fitting, over how far these lie apart
constexpr double of_fitting_metres = 0.15;
constexpr double two_of_fitting_metres = 0.8;
constexpr std::size_t most_of_fitting = 64; // to port and to starboard; more are no one fitting
constexpr double of_mast_thickness = 0.25;  // a tang before or behind a mast, of half its thickness
constexpr double between_masts_share = 0.5; // of the mast, the least height of a stay from another one
constexpr double below_step_metres = 0.4;   // a mast that is stepped on deck, below the sheer
constexpr double alone_above_metres = 0.25; // a plate above its one neighbour and the sheer
constexpr double tang_times = 5.0;          // of tangs on the fore side of one mast, before its line
constexpr double tang_metres = 0.04;
constexpr double hull_metres = 0.1;

Vector3 mirrored(const Vector3& place) {
  return {place.x, -place.y, place.z};
}

Vector3 middle(const std::vector<const Point*>& points) {
  Vector3 sum;
  for (const Point* point : points)
    sum = {sum.x + point->position.x, sum.y + point->position.y, sum.z + point->position.z};
  const auto n = static_cast<double>(points.size());
  return {(1.0 / n) * sum.x, (1.0 / n) * sum.y, (1.0 / n) * sum.z};
}

class Neighbours {
public:
  Neighbours(const Rig& rig, CheckReport& report)
      : rig_(rig), report_(report), uses_(point_uses(rig)), rows_(rig) {
    overall_ = fact_length(rig.boat.particulars, fact_names.length_overall);
    beam_ = fact_length(rig.boat.particulars, fact_names.beam);
    sheer_ = fact_length(rig.boat.particulars, fact_names.sheer_at_mast);
    for (std::size_t i = 0; i < rig.points.size(); ++i) {
      const Point& point = rig.points[i];
      if (point.side == Side::centre && on_deck(i) &&
          (stem_ == nullptr || point.position.x > stem_->position.x))
        stem_ = &point;
    }
    gather();
  }

  void look() {
    for (std::size_t i = 0; i < rig_.points.size(); ++i) {
      const Point& point = rig_.points[i];
      const PointUses& use = uses_[i];
      const bool alone = point.overridden || !point.twin || rig_[*point.twin].overridden;
      if ((!alone && point.side == Side::port) ||
          (use.begins.empty() && use.ends.empty() && use.passes.empty() && use.root_of == nullptr))
        continue;
      seen_ = {&point, alone ? point.name : point.base};
      look_at_row(point);
      look_at_twin(point);
      look_at_fitting(point);
      if (on_deck(i)) {
        look_at_hull(point);
        look_at_heights(point, use);
        look_at_spreader(point, use);
      } else {
        look_at_tangs(point, use);
      }
      tell();
    }
    for (const Spar& spar : rig_.spars)
      if (stands(spar) && sheer_ && fact_text(spar.particulars, fact_names.step) == "deck")
        look_at_step(spar);
  }

private:
  struct Seen {
    const Point* point = nullptr;
    std::string name;
    bool looked = false;
    Remark words = {}; ///< of the first thing that is odd
    std::optional<Span> other = {};
    Remark label = {};
  };

  void look_at_step(const Spar& spar) {
    Point heel;
    heel.provenance.place = spar.place;
    seen_ = {&heel, spar.name};
    const double z = spar.heel.z.metres();
    judge(z < sheer_->value.metres() - below_step_metres,
          {P::step_below_sheer, {Fixed{z, 3}, Fixed{sheer_->value.metres(), 3}}}, sheer_->provenance.place,
          P::the_sheer);
    tell();
  }

  /// Where stays end on the hull, or on the deck.
  bool on_deck(std::size_t index) const {
    const PointUses& use = uses_[index];
    return rig_.points[index].spar.empty() && !use.ends.empty() && use.begins.empty() &&
           use.tip_of == nullptr && use.root_of == nullptr;
  }

  void judge(bool odd, const Remark& words, const std::optional<Span>& other, P label) {
    seen_.looked = true;
    if (!odd || !seen_.words.empty())
      return;
    seen_.words = words;
    seen_.other = other;
    seen_.label = Remark(label);
  }

  void tell() {
    if (!seen_.looked)
      report_.not_checked(seen_.name, {P::nothing_beside});
    else if (seen_.words.empty())
      report_.pass(seen_.name, {P::agrees_with_neighbours});
    else {
      auto finding = diagnose(report_.check(), {{"point", seen_.name}, {"words", say(rig_, seen_.words)}});
      if (seen_.point->provenance.place)
        finding = std::move(finding).at(*seen_.point->provenance.place);
      if (seen_.other)
        finding = std::move(finding).and_at(*seen_.other, say(rig_, seen_.label));
      report_.find(std::move(finding).about(seen_.name));
    }
  }

  bool same_side(const Point& a, const Point& b) const { return a.side == b.side && a.spar == b.spar; }

  /// What is looked for beside many points is found once.
  void gather() {
    std::array<std::vector<std::size_t>, 2> plates;
    for (std::size_t i = 0; i < rig_.points.size(); ++i) {
      const Point& point = rig_.points[i];
      if (point.side != Side::centre && on_deck(i) && held_from_aloft(uses_[i]))
        plates[point.side == Side::port ? 0 : 1].push_back(i);
      if (const auto fitting = fitting_of(point))
        fittings_[{point.spar, *fitting}].push_back(&point);
      if (const Spar* mast = find_spar(rig_, point.spar))
        add_to_mast(*mast, point, uses_[i]);
    }
    for (const std::vector<std::size_t>& side : plates)
      plates_.emplace_back(rig_, side, beside_metres);
    spreaders_at_.resize(rig_.points.size());
    for (const Spreader& spreader : rig_.spreaders)
      spreaders_at_[spreader.tip.index()].push_back(&spreader);
  }

  /// What is known of the points of one mast.
  struct OnMast {
    const Point* farthest = nullptr;          ///< before it, of those on its centreline that lead forward
    const Point* side = nullptr;              ///< the nearest tang to starboard
    std::array<const Point*, 2> highest = {}; ///< and the next below
  };
  void add_to_mast(const Spar& mast, const Point& point, const PointUses& use) {
    OnMast& known = masts_[&mast];
    if (point.side == Side::centre && leads_forward(use, point) &&
        (known.farthest == nullptr || before_mast(mast, point) > before_mast(mast, *known.farthest)))
      known.farthest = &point;
    if (point.side == Side::starboard && !use.begins.empty() && use.tip_of == nullptr &&
        (known.side == nullptr || point.position.y < known.side->position.y))
      known.side = &point;
    const auto above = [&](const Point* other) {
      return other == nullptr || height_on(mast, point) > height_on(mast, *other);
    };
    if (above(known.highest[0]))
      known.highest = {&point, known.highest[0]};
    else if (above(known.highest[1]))
      known.highest[1] = &point;
  }
  static double height_on(const Spar& mast, const Point& point) {
    return (point.position.z - mast.heel.z).metres();
  }

  /// Of three or more with one name and numbers: how far from the next, held against the others.
  void look_at_row(const Point& point) {
    const auto gaps = rows_.gaps_of(point);
    if (gaps && gaps->next && gaps->others)
      judge(*gaps->next > row_unevenness * *gaps->others && *gaps->next > *gaps->others + row_metres,
            {P::row_uneven, {Fixed{*gaps->next, 3}, Words{gaps->beside->base}, Fixed{*gaps->others, 3}}},
            gaps->beside->provenance.place, P::the_next_one);
  }

  void look_at_twin(const Point& point) {
    // Of a mirrored place and one that is stated apart the latter is told.
    if (!point.twin || !point.overridden || (point.side == Side::port && rig_[*point.twin].overridden))
      return;
    const Point& twin = rig_[*point.twin];
    const double apart = metres_apart(point.position, mirrored(twin.position));
    judge(apart > pair_metres, {P::sides_unlike, {Fixed{apart, 3}, Words{twin.name}}},
          twin.provenance.place, P::the_other_side);
  }

  /// Points whose titles are the same up to a comma belong to one fitting.
  static std::optional<std::string_view> fitting_of(const Point& point) {
    const std::string_view title = point.title;
    const std::size_t comma = title.find(',');
    return comma == std::string_view::npos ? std::nullopt : std::optional(title.substr(0, comma));
  }
  void look_at_fitting(const Point& point) {
    const auto fitting = fitting_of(point);
    if (!fitting)
      return;
    const std::vector<const Point*>& all = fittings_.at({point.spar, *fitting});
    if (all.size() > most_of_fitting)
      return; // these words are said of more than one
    std::vector<const Point*> others;
    for (const Point* other : all)
      if (other != &point && other->base != point.base &&
          (other->side == point.side || other->side == Side::centre || other->side == Side::starboard))
        others.push_back(other);
    // Of two alone on a spar the later one is told, and only when they are far apart; on the hull the words
    // mean a row of plates.
    if (others.empty() || (others.size() == 1 && (others.front() > &point || point.spar.empty())))
      return;
    const Vector3 centre = middle(others);
    double spread = 0.0;
    for (const Point* a : others)
      for (const Point* b : others)
        spread = std::max(spread, metres_apart(a->position, b->position));
    const double off = metres_apart(point.position, centre);
    judge(off > of_fitting_times * spread &&
              off > (others.size() == 1 ? two_of_fitting_metres : of_fitting_metres),
          {P::off_its_fitting, {Fixed{off, 3}, Words{std::string(*fitting)}, Fixed{spread, 3}}},
          others.front()->provenance.place, P::another_of_them);
  }

  /// Between the stem and the stern, as the length overall gives it.
  void look_at_hull(const Point& point) {
    if (!overall_ || stem_ == nullptr || &point == stem_)
      return;
    const double ahead = (point.position.x - stem_->position.x).metres();
    const double length = overall_->value.metres();
    const bool two_hulls = beam_ && beam_->value.metres() > multihull_beam * length;
    if (point.side != Side::centre && !two_hulls)
      judge(ahead > hull_metres, {P::ahead_of_stem, {Fixed{ahead, 3}, Words{stem_->base}}},
            stem_->provenance.place, P::the_stem);
    judge(-ahead > length + hull_metres,
          {P::behind_stern, {Fixed{-ahead, 3}, Words{stem_->base}, Fixed{length, 3}}},
          overall_->provenance.place, P::the_length_overall);
  }

  void look_at_heights(const Point& point, const PointUses& use) {
    const double z = point.position.z.metres();
    if (point.side != Side::centre) {
      look_at_plates(point, use, z);
      return;
    }
    if (!held_from_aloft(use)) {
      look_at_bobstay(use, z);
      return;
    }
    const Spar* mast = nearest_mast(point.position.x);
    if (!sheer_ || stem_ == nullptr || mast == nullptr)
      return;
    const double sheer = sheer_->value.metres();
    const double stem = stem_->position.z.metres();
    if (&point == stem_) {
      judge(z < stem_over_sheer * sheer && z >= told_below * sheer,
            {P::height_and_sheer, {Fixed{z, 3}, Fixed{sheer, 3}}}, sheer_->provenance.place, P::the_sheer);
      return;
    }
    const double share = (point.position.x - mast->heel.x).metres() /
                         std::max((stem_->position.x - mast->heel.x).metres(), 0.1);
    if (share < 0.1 || share > 1.0)
      return;
    const double deck = sheer + share * (std::max(stem, sheer) - sheer);
    judge(z < deck - below_deck_metres,
          {P::below_deck_line, {Fixed{z, 3}, Words{stem_->base}, Fixed{deck, 3}}}, stem_->provenance.place,
          P::the_stem);
  }

  void look_at_bobstay(const PointUses& use, double z) {
    for (const Stay* stay : use.ends) {
      const Spar* sprit = find_spar(rig_, rig_[stay->path.front().point].spar);
      if (sprit == nullptr || sprit->sort != SparSort::bowsprit)
        continue;
      const double heel = sprit->heel.z.metres();
      judge(z > over_heel * heel, {P::bobstay_high, {Fixed{z, 3}, Words{sprit->name}, Fixed{heel, 3}}},
            sprit->place, P::the_spar);
    }
  }

  void look_at_plates(const Point& point, const PointUses& use, double z) {
    if (!held_from_aloft(use)) {
      if (sheer_)
        judge(z < low_over_sheer * sheer_->value.metres(),
              {P::height_and_sheer, {Fixed{z, 3}, Fixed{sheer_->value.metres(), 3}}},
              sheer_->provenance.place, P::the_sheer);
      return;
    }
    const PointsBeside::Beside beside =
        plates_[point.side == Side::port ? 0 : 1].of(static_cast<std::size_t>(&point - rig_.points.data()));
    // A pivot in line with the hinge of a mast stands as high as that.
    const bool at_heel = std::any_of(rig_.spars.begin(), rig_.spars.end(), [&](const Spar& spar) {
      return stands(spar) && std::abs((spar.heel.z - point.position.z).metres()) < 0.05;
    });
    if (beside.count > 1 && !at_heel) {
      const double between = (beside.low->position.z + beside.high->position.z).metres() / 2.0;
      const double spread = (beside.high->position.z - beside.low->position.z).metres();
      judge(spread < height_metres &&
                std::abs(z - between) > std::max(least_height_metres, height_spreads * spread),
            {P::height_unlike, {Fixed{z, 3}, Words{beside.low->base}, Fixed{between, 3}}},
            beside.low->provenance.place, P::another_of_them);
    }
    if (beside.count == 1 && !at_heel && sheer_) {
      const double other = beside.low->position.z.metres();
      judge(z > std::max(other, sheer_->value.metres()) + alone_above_metres,
            {P::height_unlike_one, {Fixed{z, 3}, Words{beside.low->base}, Fixed{other, 3}}},
            beside.low->provenance.place, P::the_next_one);
    }
    const Spar* mast = nearest_mast(point.position.x);
    if (sheer_ && mast != nullptr && std::abs((point.position.x - mast->heel.x).metres()) < beside_metres)
      judge(z < sheer_->value.metres() - below_sheer_metres && z >= told_below * sheer_->value.metres(),
            {P::height_and_sheer, {Fixed{z, 3}, Fixed{sheer_->value.metres(), 3}}},
            sheer_->provenance.place, P::the_sheer);
  }

  /// In the order of the file, each once.
  std::vector<const Spreader*> spreaders_under(const Stay& stay) const {
    std::vector<const Spreader*> found;
    for (const PathStop& stop : stay.path)
      found.insert(found.end(), spreaders_at_[stop.point.index()].begin(),
                   spreaders_at_[stop.point.index()].end());
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
  }

  /// A shroud over a spreader that sweeps aft ends behind the mast.
  void look_at_spreader(const Point& point, const PointUses& use) {
    for (const Stay* stay : use.ends)
      for (const Spreader* over : spreaders_under(*stay)) {
        const Spreader& spreader = *over;
        if (spreader.side != point.side || spreader.side == Side::centre)
          continue;
        const Point& tip = rig_[spreader.tip];
        const Point& root = rig_[spreader.root];
        const Spar* mast = find_spar(rig_, root.spar);
        if (mast == nullptr || !stands(*mast))
          continue;
        const double out = std::abs((tip.position.y - root.position.y).metres());
        const double sweep = (tip.position.x - root.position.x).metres();
        const double off = (point.position.x - mast->heel.x).metres();
        judge(out > 0.0 && std::abs(sweep) > sweep_share * out && std::abs(off) > hull_metres &&
                  sweep * off < 0.0,
              {sweep < 0.0 ? P::swept_aft_plate_ahead : P::swept_forward_plate_behind,
               {Words{spreader.name}, Fixed{std::abs(off), 3}, Words{mast->name}}},
              tip.provenance.place, P::the_tip);
      }
  }

  /// Of two stays that lead forward from one mast, both are made fast on its fore side.
  void look_at_tangs(const Point& point, const PointUses& use) {
    const Spar* mast = find_spar(rig_, point.spar);
    if (mast == nullptr || !stands(*mast) || point.side != Side::centre)
      return;
    const double own = before_mast(*mast, point);
    look_at_thickness(*mast, use, own);
    look_between_masts(*mast, point, use);
    if (own < 0.0 || !leads_forward(use, point))
      return;
    const Point* farther = masts_.at(mast).farthest;
    if (farther == nullptr || farther == &point)
      return;
    const double others = before_mast(*mast, *farther);
    judge(own > 0.0 && others > tang_metres && tang_times * own < others,
          {P::tang_near_mast, {Fixed{own, 3}, Words{mast->name}, Words{farther->base}, Fixed{others, 3}}},
          farther->provenance.place, P::the_other_tang);
  }

  /// The tangs on the sides of a mast say how thick it is. What is stated on its line is not held against
  /// it.
  void look_at_thickness(const Spar& mast, const PointUses& use, double own) {
    if ((use.begins.empty() && use.ends.empty()) || own == 0.0)
      return;
    const Point* side = masts_.at(&mast).side;
    if (side == nullptr)
      return;
    const double half = side->position.y.metres();
    judge(std::abs(own) < of_mast_thickness * half,
          {P::tang_in_mast, {Fixed{std::abs(own), 3}, Words{mast.name}, Words{side->base}, Fixed{half, 3}}},
          side->provenance.place, P::the_other_tang);
  }

  /// A stay from one mast to another holds both near their heads.
  void look_between_masts(const Spar& mast, const Point& point, const PointUses& use) {
    const bool between = std::any_of(use.ends.begin(), use.ends.end(), [&](const Stay* stay) {
      const Spar* other = find_spar(rig_, rig_[stay->path.front().point].spar);
      return other != nullptr && other != &mast && stands(*other);
    });
    if (!between)
      return;
    const auto& two = masts_.at(&mast).highest;
    const Point* highest = two[0] == &point ? two[1] : two[0];
    if (highest != nullptr)
      judge(height_on(mast, point) < between_masts_share * height_on(mast, *highest),
            {P::between_masts_low,
             {Fixed{height_on(mast, point), 3}, Words{mast.name}, Words{highest->base},
              Fixed{height_on(mast, *highest), 3}}},
            highest->provenance.place, P::the_other_tang);
  }

  bool leads_forward(const PointUses& use, const Point& from) const {
    return std::any_of(use.begins.begin(), use.begins.end(), [&](const Stay* stay) {
      const Vector3& end = rig_[stay->path.back().point].position;
      return (end.x - from.position.x).metres() > 0.05 * (from.position.z - end.z).metres();
    });
  }
  double before_mast(const Spar& mast, const Point& point) const {
    return dot_product(vector_between(space_point(mast.heel), space_point(point.position)),
                       {mast.axes[0][0], mast.axes[0][1], mast.axes[0][2]});
  }
  const Spar* nearest_mast(Length x) const {
    const Spar* nearest = nullptr;
    for (const Spar& spar : rig_.spars)
      if (stands(spar) && (nearest == nullptr ||
                           std::abs((spar.heel.x - x).metres()) < std::abs((nearest->heel.x - x).metres())))
        nearest = &spar;
    return nearest;
  }
  /// Not from a bowsprit: its stays go down to the waterline and along the topsides.
  bool held_from_aloft(const PointUses& use) const {
    return std::any_of(use.ends.begin(), use.ends.end(), [&](const Stay* stay) {
      const Spar* spar = find_spar(rig_, rig_[stay->path.front().point].spar);
      return spar == nullptr || stands(*spar);
    });
  }

  const Rig& rig_;
  CheckReport& report_;
  std::vector<PointUses> uses_;
  const Point* stem_ = nullptr; ///< the foremost end of a stay on the centreline of the hull
  std::optional<Sourced<Length>> overall_, beam_, sheer_;
  PointRows rows_;
  std::vector<PointsBeside> plates_; ///< to port, to starboard
  std::map<std::pair<std::string_view, std::string_view>, std::vector<const Point*>> fittings_; ///< by spar
  std::map<const Spar*, OnMast> masts_;
  std::vector<std::vector<const Spreader*>> spreaders_at_; ///< by point
  Seen seen_;
};

void check_neighbours(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  Neighbours(rig, report).look();
}

} // namespace

const CheckTable checks{CheckRow{.slug = "point-out-of-place", .run = check_neighbours}};

} // namespace sheerpole::neighbouring_points
