#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/point_uses.hpp"
#include "wording/checks/geometry_phrases.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

/// Whether each point can stand where it is stated, by what else is stated of the boat: her length, her
/// beam, her sheer, her spars. A number with a slip of a digit or a sign stands out by far; these bounds
/// are wide, and ask for that only.
namespace sheerpole::boat_envelope {

namespace {

using P = GeometryCheckPhrase;

/// One bound: beyond `unlikely` is a warning, beyond `outside` an error. Of a least one, below.
struct Bound {
  double unlikely = 0.0;
  double outside = 0.0;
};

// Shares of what is stated. Common practice, no source, and wide: a sound boat is well inside.
constexpr Bound over_half_beam{1.15, 1.3}; // channels stand out a little
constexpr Bound pair_forward{0.55, 0.6};   // of length overall, before the nearest mast
constexpr Bound pair_aft{0.7, 0.75};       // the same, behind it
constexpr Bound centre_from_mast{0.85,
                                 1.0}; // of length overall; a bowsprit's end may be stated without a spar
constexpr Bound over_sheer{1.6, 3.0};  // height above the waterline
constexpr double over_sheer_metres = 0.25;     // and so much more, for a low boat
constexpr double least_sheer_metres = 0.2;     // below it no share of it says anything
constexpr Bound under_sheer{0.5, 0.2};         // the least height, of a stay from aloft
constexpr Bound over_sail_plan{1.15, 1.4};     // top of the sail plan as stated, above the waterline
constexpr Bound over_length_overall{1.9, 2.2}; // height aloft, where no sail plan is stated
constexpr Bound over_spar{1.03, 1.1};          // along a spar, of its length
constexpr Bound drop_to_deck{0.2, 0.1};        // of length overall, the least from aloft to deck
constexpr Bound off_mast{0.025, 0.06};         // of the height of the mast, fore and aft or across
constexpr Bound above_heel{0.03, -1.0};        // of the height of the mast, the least along it
constexpr double off_mast_metres = 0.15;       // and not less than this
constexpr Bound off_sprit{0.18, 0.4};          // of the length of the bowsprit
constexpr Bound inboard_on_sprit{0.2, 0.11};   // the least along it
constexpr Bound under_bowsprit{1.9, 4.0};      // a bobstay or whisker stay, of the length of the bowsprit
constexpr Bound spreader_share{0.1, 0.06};     // the least length of a spreader, of half the beam
constexpr Bound spreader_rise{0.5, 0.7};       // over its length outwards
constexpr Bound swept_aft{42.0, 68.0};         // degrees from athwartships
constexpr Bound swept_forward{55.0, 68.0};     // the same; jumpers look well ahead
constexpr double sweeps_apart_degrees = 15.0;  // of two spreaders of one mast
constexpr Bound along_mast_degrees{4.0, 0.3};  // the least angle of a stay from mast to deck
constexpr Bound off_mast_degrees{45.0, 70.0};  // the most
constexpr Bound pair_apart{0.1, 0.01};         // least distance from the centreline, of half the beam
constexpr Bound pair_on_hulls{0.12, 0.02};     // the same, ahead on a boat of several hulls
constexpr double pair_amidships = 0.3;         // the same near the mast
constexpr double one_height_metres = 0.25;     // of fittings that sit together
constexpr double upright = 0.5; // a mast that leans by more than 60 degrees is being raised or lowered
constexpr double face_metres = 0.02,
                 face_lead = 0.04; // how far off the mast's line, and how steep, says which face

constexpr double degrees(double radians) {
  return radians * 180.0 / std::numbers::pi;
}

struct Local {
  double x = 0.0, y = 0.0, along = 0.0;
};

Local local(const Spar& spar, const Vector3& place) {
  const SpaceVector way = vector_between(space_point(spar.heel), space_point(place));
  const auto on = [&](std::size_t axis) {
    return dot_product(way, {spar.axes[axis][0], spar.axes[axis][1], spar.axes[axis][2]});
  };
  return {on(0), on(1), on(2)};
}

class Envelope {
public:
  Envelope(const Rig& rig, CheckReport& report)
      : rig_(rig), report_(report), errors_(report.check() == "point-outside"), uses_(point_uses(rig)) {
    const auto& facts = rig.boat.particulars;
    overall_ = fact_length(facts, fact_names.length_overall);
    beam_ = fact_length(facts, fact_names.beam);
    sheer_ = fact_length(facts, fact_names.sheer_at_mast);
    triangle_ = fact_length(facts, fact_names.foretriangle_height);
    hoist_ = fact_length(facts, fact_names.mainsail_hoist);
    lowered_ = std::any_of(rig.spars.begin(), rig.spars.end(),
                           [](const Spar& spar) { return stands(spar) && spar.axes[2][2] < upright; });
  }

  void look() {
    for (std::size_t i = 0; i < rig_.points.size(); ++i)
      look_at(i);
    for (const Spar& spar : rig_.spars)
      if (spar.sort == SparSort::bowsprit && overall_) // a gaff or a boom stands on its mast
        look_at_heel(spar);
      else if (stands(spar) && spar.sort != SparSort::topmast)
        look_at_step(spar);
  }

private:
  enum class Stands { inside, unlikely, outside };
  struct Seen {
    const Point* point = nullptr;
    std::string name;
    bool looked = false;
    // What stands out most; of the same the first, since the rest follows from it.
    Stands how = Stands::inside;
    Remark words = {};
    std::optional<Span> other = {};
    Remark label = {};
  };

  /// A mirrored point is told once, by its own name where one side is stated apart.
  bool told_by_twin(const Point& point) const {
    return point.side == Side::port && point.twin && !point.overridden && !rig_[*point.twin].overridden;
  }

  const Spar* mast(const Point& point) const {
    const Spar* spar = find_spar(rig_, point.spar);
    return spar != nullptr && stands(*spar) ? spar : nullptr;
  }

  bool aloft(std::size_t index) const {
    const Point& point = rig_.points[index];
    const PointUses& use = uses_[index];
    return use.tip_of == nullptr && use.ends.empty() && !use.begins.empty() &&
           (point.spar.empty() || mast(point) != nullptr) &&
           std::none_of(use.begins.begin(), use.begins.end(),
                        [&](const Stay* stay) { return begins_at_junction(*stay); });
  }
  bool begins_at_junction(const Stay& stay) const {
    return !stay.stack.empty() && stay.stack.front().kind == StackItem::Kind::part &&
           rig_[stay.stack.front().part].kind == PartKind::junction;
  }
  /// On the hull or the deck: where stays end, and on no spar.
  bool on_deck(std::size_t index) const {
    const PointUses& use = uses_[index];
    return rig_.points[index].spar.empty() && !use.ends.empty() && use.begins.empty() &&
           use.tip_of == nullptr && use.root_of == nullptr &&
           (!mast_of(rig_, rig_.points[index]) || low_over_sheer(rig_.points[index]));
  }
  /// Whether a stay that ends here comes down from a mast, or over a spreader: a bobstay may end at the
  /// waterline.
  bool held_from_aloft(const PointUses& use) const {
    return std::any_of(use.ends.begin(), use.ends.end(), [&](const Stay* stay) {
      const PointId before = stay->path[stay->path.size() - 2].point;
      if (stay->path.size() > 2)
        return uses_[before.index()].tip_of != nullptr &&
               uses_[before.index()].tip_of->side != Side::centre;
      const Spar* spar = find_spar(rig_, rig_[before].spar);
      return uses_[before.index()].tip_of == nullptr && (spar == nullptr || stands(*spar));
    });
  }
  /// From the mast that is nearest, forward; nothing when no mast is stated and no point aloft tells where
  /// it is.
  std::optional<double> from_mast(double x) const {
    std::optional<double> nearest;
    const auto consider = [&](double mast_x) {
      if (!nearest || std::abs(x - mast_x) < std::abs(*nearest))
        nearest = x - mast_x;
    };
    for (const Spar& spar : rig_.spars)
      if (stands(spar))
        consider(spar.heel.x.metres());
    return nearest;
  }

  void judge(Seen& seen, double value, const Bound& bound, bool least, const Remark& words,
             std::optional<Span> other, const Remark& label) {
    if (lowered_)
      return; // as the boat is rigged nothing can be held against anything
    const auto beyond = [&](double edge) { return least ? is_below(value, edge) : is_below(edge, value); };
    const Stands how = beyond(bound.outside)    ? Stands::outside
                       : beyond(bound.unlikely) ? Stands::unlikely
                                                : Stands::inside;
    seen.looked = true;
    if (how > seen.how) {
      seen.how = how;
      seen.words = words;
      seen.other = other;
      seen.label = label;
    }
  }

  /// Each of the two checks tells its own.
  void tell(const Seen& seen) {
    if (!seen.looked)
      report_.not_checked(seen.name, {P::nothing_to_hold_against});
    else if (seen.how == (errors_ ? Stands::outside : Stands::unlikely)) {
      auto finding = diagnose(report_.check(), {{"point", seen.name}, {"words", say(rig_, seen.words)}});
      if (seen.point->provenance.place)
        finding = std::move(finding).at(*seen.point->provenance.place);
      if (seen.other)
        finding = std::move(finding).and_at(*seen.other, say(rig_, seen.label));
      report_.find(std::move(finding).about(seen.name));
    } else if (errors_ || seen.how == Stands::inside)
      report_.pass(seen.name, {P::inside_the_boat});
  }

  std::optional<Span> place(const std::optional<Sourced<Length>>& fact) const {
    return fact ? fact->provenance.place : std::nullopt;
  }

  void look_at(std::size_t index) {
    const Point& point = rig_.points[index];
    const PointUses& use = uses_[index];
    if (told_by_twin(point) || (use.begins.empty() && use.ends.empty() && use.passes.empty() &&
                                use.tip_of == nullptr && use.root_of == nullptr))
      return;
    Seen seen{&point,
              point.overridden || !point.twin || rig_[*point.twin].overridden ? point.name : point.base};
    if (use.tip_of != nullptr)
      look_at_tip(seen, use);
    else if (on_deck(index))
      look_on_deck(seen, use);
    else if (aloft(index) || (mast(point) != nullptr && use.root_of == nullptr))
      look_aloft(seen, use, aloft(index));
    if (const Spar* spar = find_spar(rig_, point.spar); spar != nullptr && use.tip_of == nullptr)
      look_on_spar(seen, *spar, use);
    tell(seen);
  }

  /// A mast stands on the deck or below it.
  void look_at_step(const Spar& spar) {
    Point heel;
    heel.name = spar.name;
    heel.position = spar.heel;
    heel.provenance.place = spar.place;
    Seen seen{&heel, spar.name};
    heights_on_deck(seen, false);
    if (seen.how != Stands::inside)
      tell(seen);
  }

  void look_at_heel(const Spar& spar) {
    const auto off = from_mast(spar.heel.x.metres());
    if (!off)
      return;
    Point heel;
    heel.name = spar.name;
    heel.position = spar.heel;
    heel.provenance.place = spar.place;
    Seen seen{&heel, spar.name};
    along_boat(seen, *off, centre_from_mast, centre_from_mast);
    heights_on_deck(seen, true);
    tell(seen);
  }

  void along_boat(Seen& seen, double off, const Bound& forward, const Bound& aft) {
    if (!overall_)
      return;
    const double share = off / overall_->value.metres();
    judge(seen, std::abs(share), share > 0.0 ? forward : aft, false,
          {share > 0.0 ? P::before_mast : P::behind_mast,
           {Fixed{std::abs(off), 3}, Fixed{overall_->value.metres(), 3}}},
          place(overall_), {P::the_length_overall});
  }

  bool high_over_sheer(const Point& point) const {
    return sheer_ && sheer_->value.metres() >= least_sheer_metres &&
           is_below(over_sheer.outside,
                    (point.position.z.metres() - over_sheer_metres) / sheer_->value.metres());
  }

  /// A plate whose number has a slip may stand close to the mast, but not high up on it.
  bool low_over_sheer(const Point& point) const {
    return sheer_ && sheer_->value.metres() >= least_sheer_metres && !high_over_sheer(point);
  }

  void heights_on_deck(Seen& seen, bool from_aloft) {
    if (!sheer_ || sheer_->value.metres() < least_sheer_metres)
      return;
    const double z = seen.point->position.z.metres();
    const double sheer = sheer_->value.metres();
    const Remark words(P::height_and_sheer, {Fixed{z, 3}, Fixed{sheer, 3}});
    judge(seen, (z - over_sheer_metres) / sheer, over_sheer, false, words, place(sheer_), {P::the_sheer});
    if (from_aloft)
      judge(seen, z / sheer, under_sheer, true, words, place(sheer_), {P::the_sheer});
  }

  void look_on_deck(Seen& seen, const PointUses& use) {
    const Point& point = *seen.point;
    const double y = std::abs(point.position.y.metres());
    const bool pair = point.side != Side::centre;
    const auto off = from_mast(point.position.x.metres());
    if (off)
      along_boat(seen, *off, pair ? pair_forward : centre_from_mast, pair ? pair_aft : centre_from_mast);
    if (beam_) {
      const double half = beam_->value.metres() / 2.0;
      judge(seen, (y - 0.05) / half, over_half_beam, false,
            {P::wider_than_beam, {Fixed{y, 3}, Fixed{half, 3}}}, place(beam_), {P::the_beam});
    }
    heights_on_deck(seen, held_from_aloft(use));
    for (const Stay* stay : use.ends)
      look_at_stay(seen, *stay);
    if (!beam_ || !pair || !off || !overall_)
      return;
    const double half = beam_->value.metres() / 2.0;
    const double share = *off / overall_->value.metres();
    const bool from_sprit = std::any_of(use.ends.begin(), use.ends.end(), [&](const Stay* stay) {
      const Spar* spar = find_spar(rig_, rig_[stay->path.front().point].spar);
      return spar != nullptr && !stands(*spar);
    });
    if (share > 0.2 && !from_sprit) {
      // Twin forestays stand close together at the stem; of two hulls or three each has its own.
      if (2.0 * half > multihull_beam * overall_->value.metres())
        judge(seen, y / half, pair_on_hulls, true,
              {P::close_pair, {Fixed{2.0 * y, 3}, Fixed{2.0 * half, 3}}}, place(beam_), {P::the_beam});
      return;
    }
    judge(seen, y / half,
          std::abs(share) < 0.2 && !from_sprit ? Bound{pair_amidships, pair_apart.outside} : pair_apart,
          true, {P::close_pair, {Fixed{2.0 * y, 3}, Fixed{2.0 * half, 3}}}, place(beam_), {P::the_beam});
  }

  /// What the lead of a stay says of its lower end.
  void look_at_stay(Seen& seen, const Stay& stay) {
    const Point& first = rig_[stay.path.front().point];
    const Spar* spar = find_spar(rig_, first.spar);
    if (spar == nullptr || stay.path.size() != 2)
      return;
    if (stands(*spar)) {
      const auto lead = direction_between(space_point(first.position), space_point(seen.point->position));
      if (!lead)
        return;
      const double angle = angle_between(*lead, -1.0 * spar_line(*spar).along);
      const auto hold = [&](const Bound& bound, bool least, P words) {
        judge(seen, degrees(angle), bound, least,
              {words, {Words{stay.base}, Words{spar->name}, Angle{angle}}}, first.provenance.place,
              {P::its_upper_end});
      };
      hold(along_mast_degrees, true, P::lies_along);
      hold(off_mast_degrees, false, P::leads_off);
    } else if (const auto length = fact_length(spar->particulars, fact_names.length)) {
      const double way =
          magnitude(vector_between(space_point(first.position), space_point(seen.point->position)));
      judge(seen, way / length->value.metres(), under_bowsprit, false,
            {P::long_under_sprit,
             {Words{stay.base}, Fixed{way, 3}, Words{spar->name}, Fixed{length->value.metres(), 3}}},
            length->provenance.place, {P::length_of_spar});
    }
  }

  void look_aloft(Seen& seen, const PointUses& use, bool begins) {
    const Point& point = *seen.point;
    const double z = point.position.z.metres();
    if (overall_ && begins)
      for (const Stay* stay : use.begins) {
        const Point& last = rig_[stay->path.back().point];
        if (!on_deck(stay->path.back().point.index()) || high_over_sheer(last))
          continue; // an end that stands too high is told itself
        judge(seen, (z - last.position.z.metres()) / overall_->value.metres(), drop_to_deck, true,
              {P::low_aloft,
               {Fixed{z, 3}, Words{stay->base}, Words{last.base}, Fixed{last.position.z.metres(), 3}}},
              last.provenance.place, {P::its_lower_end});
      }
    if (sheer_ && (triangle_ || hoist_)) {
      // A mainsail is set at its boom, and there is a head and a crane above it; a fractional mast goes on
      // above the forestay.
      const double by_hoist = hoist_ ? 1.15 * hoist_->value.metres() + 1.0 : 0.0;
      const double by_triangle = triangle_ ? (hoist_ ? 1.0 : 1.35) * triangle_->value.metres() : 0.0;
      const bool hoist_counts = by_hoist > by_triangle;
      const double top = sheer_->value.metres() + std::max(by_hoist, by_triangle);
      const auto& fact = hoist_counts ? hoist_ : triangle_;
      judge(seen, z / top, over_sail_plan, false,
            {hoist_counts ? P::above_hoist : P::above_triangle,
             {Fixed{z, 3}, Fixed{fact->value.metres(), 3}, Fixed{sheer_->value.metres(), 3}}},
            place(fact), {P::stated_here_too});
    } else if (overall_) {
      judge(seen, z / overall_->value.metres(), over_length_overall, false,
            {P::high_for_length, {Fixed{z, 3}, Fixed{overall_->value.metres(), 3}}}, place(overall_),
            {P::the_length_overall});
    }
  }

  void look_on_spar(Seen& seen, const Spar& spar, const PointUses& use) {
    const Local at = local(spar, seen.point->position);
    const auto length = fact_length(spar.particulars, fact_names.length);
    const double along = stands(spar) ? at.along : spar.sort == SparSort::bowsprit ? at.x : -at.x;
    const Remark spar_label(P::length_of_spar);
    if (length) {
      judge(seen, along / length->value.metres(), over_spar, false,
            {P::beyond_spar, {Words{spar.name}, Fixed{along, 3}, Fixed{length->value.metres(), 3}}},
            length->provenance.place, spar_label);
      if (!stands(spar)) {
        if (!use.begins.empty() || !use.ends.empty())
          judge(seen, along / length->value.metres(), inboard_on_sprit, true,
                {P::inboard_on_spar, {Words{spar.name}, Fixed{along, 3}, Fixed{length->value.metres(), 3}}},
                length->provenance.place, spar_label);
        const double off = std::max(std::abs(at.y), std::abs(at.along));
        judge(seen, off / length->value.metres(), off_sprit, false,
              {P::off_spar, {Fixed{off, 3}, Words{spar.name}}}, spar.place, {P::the_spar});
      }
    }
    if (!stands(spar))
      return;
    const MastLine line = line_of(spar, *seen.point);
    const double height = std::max(line.height, at.along);
    if (!(height > 0.0))
      return;
    if (!use.begins.empty() || !use.ends.empty())
      judge(seen, at.along / height, above_heel, true,
            {P::near_heel, {Fixed{at.along, 3}, Words{spar.name}}}, spar.place, {P::the_spar});
    const double x = at.x - line.rake * at.along;
    const double off = std::max(std::abs(x), std::abs(at.y));
    // What stays only go over, though no spreader is declared, is the tip of one.
    if (!use.passes.empty() && use.begins.empty() && use.ends.empty() && use.root_of == nullptr)
      return;
    const Bound bound{std::max(off_mast.unlikely * height, off_mast_metres),
                      std::max(off_mast.outside * height, 2.0 * off_mast_metres)};
    // Off the mast as it is stated, and on it if its numbers are counted from the waterline and not from
    // the heel.
    const Local as_boat =
        local(spar, {Length::metres(at.x), Length::metres(at.y), Length::metres(at.along)});
    const bool in_boat_axes = std::abs(as_boat.x) < bound.unlikely && std::abs(as_boat.y) < bound.unlikely;
    judge(seen, off, bound, false,
          {in_boat_axes ? P::off_spar_in_boat_axes : P::off_spar, {Fixed{off, 3}, Words{spar.name}}},
          spar.place, {P::the_spar});
    for (const Stay* stay : use.begins)
      look_at_face(seen, spar, *stay, at, x);
  }

  struct MastLine {
    double height = 0.0; ///< along the mast, of the highest of its other points, metres
    double rake = 0.0; ///< how its other points lean off its stated line, forward, for each metre along it
  };
  /// By the other points of the mast, so that one with a slip is held against them.
  MastLine line_of(const Spar& spar, const Point& without) const {
    MastLine line;
    struct Lean {
      double height = 0.0, least = 0.0, most = 0.0;
    };
    std::vector<Lean> at_heights;
    for (std::size_t i = 0; i < rig_.points.size(); ++i) {
      const Point& point = rig_.points[i];
      if (point.spar != spar.name || &point == &without || point.base == without.base ||
          uses_[i].tip_of != nullptr)
        continue;
      const Local at = local(spar, point.position);
      line.height = std::max(line.height, at.along);
      if (at.along < 1.0)
        continue;
      // What sits at one height says it once; the mast is between its fore and its after side.
      const double lean = at.x / at.along;
      const auto here = std::find_if(at_heights.begin(), at_heights.end(), [&](const Lean& other) {
        return std::abs(other.height - at.along) < one_height_metres;
      });
      if (here == at_heights.end())
        at_heights.push_back({at.along, lean, lean});
      else
        *here = {here->height, std::min(here->least, lean), std::max(here->most, lean)};
    }
    if (at_heights.size() > 2) {
      constexpr double most = 0.15; // 8.5 degrees; points that lean more are not a mast that does
      std::vector<double> leans;
      for (const Lean& here : at_heights)
        leans.push_back((here.least + here.most) / 2.0);
      std::sort(leans.begin(), leans.end());
      const double middle = leans[leans.size() / 2];
      line.rake = std::abs(middle) <= most ? middle : 0.0;
    }
    return line;
  }

  /// A stay that leads forward is made fast on the fore side of the mast, one that leads aft on the after
  /// side.
  void look_at_face(Seen& seen, const Spar& spar, const Stay& stay, const Local& at, double x) {
    const PointId last = stay.path.back().point;
    if (!on_deck(last.index()) && find_spar(rig_, rig_[last].spar) == nullptr)
      return;
    const Local end = local(spar, rig_[last].position);
    const double drop = at.along - end.along;
    if (!(drop > 1.0) || !(std::abs(x) > face_metres))
      return;
    const double lead = (end.x - at.x) / drop;
    const bool other_way = lead * x < 0.0 && std::abs(lead) > face_lead;
    judge(seen, other_way ? 1.0 : 0.0, Bound{0.5, 2.0}, false,
          {x > 0.0 ? P::fore_face_leads_aft : P::aft_face_leads_forward,
           {Fixed{std::abs(x), 3}, Words{spar.name}, Words{stay.base}, Words{rig_[last].base}}},
          rig_[last].provenance.place, {P::its_lower_end});
  }

  /// Whether a stay goes over this tip and on to the deck: a strut of a diamond or a jumper points
  /// anywhere.
  bool to_deck(const PointUses& use) const {
    return std::any_of(use.passes.begin(), use.passes.end(),
                       [&](const Stay* stay) { return on_deck(stay->path.back().point.index()); });
  }

  struct Reach {
    double out = 0.0, aft = 0.0, up = 0.0;
    double sweep() const { return std::atan2(aft, out); }
  };
  Reach reach(const Spreader& spreader) const {
    const SpaceVector way = vector_between(place_of(rig_, spreader.root), place_of(rig_, spreader.tip));
    return {std::abs(way.y), -way.x, way.z};
  }

  void look_at_tip(Seen& seen, const PointUses& use) {
    const Spreader& spreader = *use.tip_of;
    if (spreader.side == Side::centre)
      return;
    const Point& root = rig_[spreader.root];
    const Reach way = reach(spreader);
    const double y = std::abs(seen.point->position.y.metres());
    if (beam_) {
      const double half = beam_->value.metres() / 2.0;
      judge(seen, y / half, over_half_beam, false, {P::wider_than_beam, {Fixed{y, 3}, Fixed{half, 3}}},
            place(beam_), {P::the_beam});
    }
    // A jumper looks forward; nothing sweeps far aft, the strut of a diamond neither.
    if (to_deck(use) || way.aft > 0.0)
      judge(seen, std::abs(degrees(way.sweep())), way.aft > 0.0 ? swept_aft : swept_forward, false,
            {P::swept_spreader, {Angle{std::abs(way.sweep())}}}, root.provenance.place, {P::the_root});
    if (!to_deck(use))
      return;
    const double length = std::hypot(way.out, way.aft, way.up);
    judge(seen, std::abs(way.up) / std::max(way.out, 0.001), spreader_rise, false,
          {P::steep_spreader, {Fixed{std::abs(way.up), 3}, Fixed{way.out, 3}}}, root.provenance.place,
          {P::the_root});
    if (beam_)
      judge(seen, length / (beam_->value.metres() / 2.0), spreader_share, true,
            {P::short_spreader, {Fixed{length, 3}, Fixed{beam_->value.metres() / 2.0, 3}}}, place(beam_),
            {P::the_beam});
    for (const Spreader& other : rig_.spreaders) {
      if (&other == &spreader || other.side != spreader.side || !to_deck(uses_[other.tip.index()]) ||
          rig_[other.root].spar != root.spar)
        continue;
      const double apart = std::abs(degrees(reach(other).sweep() - way.sweep()));
      // Which of the two is odd is not known: the upper one is told, and the other beside it.
      if (rig_[other.tip].position.z > seen.point->position.z)
        continue;
      judge(seen, apart / sweeps_apart_degrees, Bound{1.0, std::numeric_limits<double>::max()}, false,
            {P::sweeps_unlike,
             {Angle{way.sweep()}, Words{rig_[other.tip].base}, Angle{reach(other).sweep()}}},
            rig_[other.tip].provenance.place, {P::the_other_tip});
    }
  }

  const Rig& rig_;
  CheckReport& report_;
  bool errors_;
  bool lowered_ = false;
  std::vector<PointUses> uses_;
  std::optional<Sourced<Length>> overall_, beam_, sheer_, triangle_, hoist_;
};

void check_envelope(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  Envelope(rig, report).look();
}

} // namespace

const CheckTable checks{CheckRow{.slug = "point-outside", .run = check_envelope, .acceptable = true},
                        CheckRow{.slug = "point-unlikely", .run = check_envelope}};

} // namespace sheerpole::boat_envelope
