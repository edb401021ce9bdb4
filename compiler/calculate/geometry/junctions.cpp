#include "calculate/geometry/junctions.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/geometry_phrases.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double leans = 0.02;
constexpr double tenth_of_pull = 0.1;

/// A stay that begins on a mast and leads away from it.
struct StayOnMast {
  const Stay* stay = nullptr;
  double height_metres = 0.0;
  SpaceVector pull; ///< of length 1
};

std::vector<std::vector<StayOnMast>> stays_by_spar(const Rig& rig) {
  std::vector<std::vector<StayOnMast>> result(rig.spars.size());
  for (const Stay& stay : rig.stays) {
    if (stay.path.size() < 2)
      continue;
    const PointId upper = stay.path.front().point;
    const PointId lower = stay.path.back().point;
    const auto above = mast_of(rig, rig[upper]);
    const auto below = mast_of(rig, rig[lower]);
    // Its lowest part is what it pulls by on its mast and the spreaders of that together.
    const auto pull =
        direction_between(place_of(rig, stay.path[stay.path.size() - 2].point), place_of(rig, lower));
    if (!pull || (above && below && above->mast == below->mast))
      continue;
    const auto add = [&](const Spar* mast, PointId end, SpaceVector way) {
      const auto spar = static_cast<std::size_t>(mast - rig.spars.data());
      const double height = from_spar(spar_line(*mast), place_of(rig, end)).along.metres();
      result[spar].push_back({&stay, height, way});
    };
    if (above)
      add(above->mast, upper, *pull);
    if (below)
      add(below->mast, lower, -1.0 * *pull);
  }
  return result;
}

void add_once(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end())
    names.push_back(name);
}

} // namespace

namespace {

HeldDirections held_directions_of(const Rig& rig, std::size_t spar, const std::vector<StayOnMast>& stays) {
  HeldDirections held;
  held.spar = spar;
  held.stays = stays.size();
  double height = 0.0;
  for (const StayOnMast& on : stays)
    height = std::max(height, on.height_metres);
  if (const auto length = fact_length(rig.spars[spar].particulars, fact_names.length))
    height = length->value.metres();
  held.half_height_metres = height / 2.0;
  for (const StayOnMast& on : stays) {
    if (on.height_metres < held.half_height_metres)
      continue;
    const std::array<double, 4> shares{on.pull.x, -on.pull.x, -on.pull.y, on.pull.y};
    for (std::size_t way = 0; way < shares.size(); ++way)
      if (shares[way] > leans) {
        add_once(held.by_direction[way], on.stay->base);
        held.stays_by_direction[way].push_back(
            StayId{static_cast<std::uint32_t>(on.stay - rig.stays.data())});
        held.shares_by_direction[way].push_back(shares[way]);
      }
  }
  return held;
}

} // namespace

std::vector<HeldDirections> held_directions(const Rig& rig) {
  std::vector<HeldDirections> result;
  const auto by_spar = stays_by_spar(rig);
  for (std::size_t i = 0; i < rig.spars.size(); ++i)
    if (stands(rig.spars[i]))
      result.push_back(held_directions_of(rig, i, by_spar[i]));
  return result;
}

const Spar* rests_on(const Rig& rig, const Stay& stay, const Spar& held) {
  if (stay.path.size() < 2)
    return nullptr;
  for (const PointId end : {stay.path.front().point, stay.path.back().point})
    if (const auto on = mast_of(rig, rig[end]); on && on->mast != &held)
      return on->mast;
  return nullptr;
}

namespace {

/// One end of a stay at a point.
struct StayEnd {
  StayId stay;
  bool upper = false; ///< the upper end of the stay is there
  bool by_junction = false;
};

/// The stays that end at each point that has a junction, points in the order in which stays come to them.
struct Meeting {
  PointId at;
  std::vector<StayEnd> ends;
};

bool is_junction(const Rig& rig, const StackItem& item) {
  return item.kind == StackItem::Kind::part && rig[item.part].kind == PartKind::junction;
}

std::vector<Meeting> meetings(const Rig& rig) {
  std::vector<Meeting> result;
  constexpr std::size_t none = static_cast<std::size_t>(-1);
  std::vector<std::size_t> at_point(rig.points.size(), none);
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    const Stay& stay = rig.stays[i];
    if (stay.path.size() < 2 || stay.stack.empty())
      continue;
    for (const bool upper : {true, false}) {
      const PointId point = (upper ? stay.path.front() : stay.path.back()).point;
      std::size_t& place = at_point[point.index()];
      if (place == none) {
        place = result.size();
        result.push_back({point, {}});
      }
      result[place].ends.push_back({StayId{static_cast<std::uint32_t>(i)}, upper,
                                    is_junction(rig, upper ? stay.stack.front() : stay.stack.back())});
    }
  }
  std::erase_if(result, [](const Meeting& meeting) {
    return std::none_of(meeting.ends.begin(), meeting.ends.end(),
                        [](const StayEnd& end) { return end.by_junction; });
  });
  return result;
}

/// Which of three ends is alone on its side; nothing when all come from above or all go down.
std::optional<std::size_t> alone(const std::vector<StayEnd>& ends) {
  const auto upper = std::count_if(ends.begin(), ends.end(), [](const StayEnd& end) { return end.upper; });
  if (upper != 1 && upper != 2)
    return std::nullopt;
  for (std::size_t i = 0; i < ends.size(); ++i)
    if (ends[i].upper == (upper == 1))
      return i;
  return std::nullopt;
}

SpacePoint far_end(const Rig& rig, const StayEnd& end) {
  const std::vector<PathStop>& path = rig[end.stay].path;
  return place_of(rig, end.upper ? path[1].point : path[path.size() - 2].point);
}

std::vector<PartId> junction_parts(const Rig& rig, const Meeting& meeting) {
  std::vector<PartId> parts;
  for (const StayEnd& end : meeting.ends) {
    const Stay& stay = rig[end.stay];
    const StackItem& item = end.upper ? stay.stack.front() : stay.stack.back();
    if (end.by_junction && std::find(parts.begin(), parts.end(), item.part) == parts.end())
      parts.push_back(item.part);
  }
  return parts;
}

JunctionBalance balance(const Rig& rig, const Meeting& meeting) {
  JunctionBalance result;
  result.at = meeting.at;
  const std::optional<std::size_t> single = meeting.ends.size() == 3 ? alone(meeting.ends) : std::nullopt;
  result.single = meeting.ends[single.value_or(0)].stay;
  std::vector<StayEnd> legs;
  for (std::size_t i = 0; i < meeting.ends.size(); ++i)
    if (i != single.value_or(0)) {
      legs.push_back(meeting.ends[i]);
      result.legs.push_back(meeting.ends[i].stay);
    }
  result.parts = junction_parts(rig, meeting);
  if (!single) {
    const std::size_t count = meeting.ends.size();
    const Words place{rig[meeting.at].base};
    result.not_checked = count == 3   ? Remark(GeometryPhrase::stays_to_one_side, {place})
                         : count == 1 ? Remark(GeometryPhrase::no_other_stay, {place})
                                      : Remark(GeometryPhrase::too_many_stays,
                                               {Count{static_cast<std::int64_t>(count)}, place});
    return result;
  }
  const Stay& first = rig[legs[0].stay];
  const Stay& second = rig[legs[1].stay];
  result.legs_are_a_pair = first.base == second.base && first.side != second.side;
  const BridlePlaces places{.stay_end = far_end(rig, meeting.ends[*single]),
                            .junction = place_of(rig, meeting.at),
                            .first_end = far_end(rig, legs[0]),
                            .second_end = far_end(rig, legs[1])};
  const auto offset = junction_offset(places);
  if (!offset) {
    result.not_checked = GeometryPhrase::ends_in_one_line;
    return result;
  }
  result.off = offset->from_plane;
  result.from_middle = offset->from_middle;
  const Force tension = Force::newtons(1000.0);
  const auto pulls = bridle_tensions(places, tension);
  const auto going_on = direction_between(places.stay_end, places.junction);
  for (const bool second : {false, true}) {
    JunctionLeg leg{.stay = legs[second ? 1 : 0].stay};
    const auto way = direction_between(places.junction, second ? places.second_end : places.first_end);
    if (going_on && way)
      leg.angle_radians = angle_between(*going_on, *way);
    if (pulls)
      leg.share = (second ? pulls->second : pulls->first).newtons() / tension.newtons();
    result.loaded.push_back(leg);
  }
  if (pulls)
    result.leg_share = std::max(*result.loaded[0].share, *result.loaded[1].share);
  return result;
}

} // namespace

std::vector<JunctionBalance> junction_balances(const Rig& rig) {
  std::vector<JunctionBalance> result;
  for (const Meeting& meeting : meetings(rig))
    result.push_back(balance(rig, meeting));
  return result;
}

std::optional<Sourced<Force>> load_of(const Rig& rig, StayId stay) {
  std::optional<Sourced<Force>> load = fact_force(rig[stay].particulars, fact_names.load);
  const auto junction_at = [&](const StackItem& item) { return is_junction(rig, item); };
  if (std::none_of(rig[stay].stack.begin(), rig[stay].stack.end(), junction_at))
    return load;
  for (const JunctionBalance& balance : junction_balances(rig)) {
    if (!balance.not_checked.empty())
      continue;
    const auto single = fact_force(rig[balance.single].particulars, fact_names.load);
    for (const JunctionLeg& leg : balance.loaded)
      if (single && leg.share && leg.stay == stay) {
        Sourced<Force> reached{single->value * *leg.share, single->provenance, {}};
        reached.provenance.written.clear();
        reached.provenance.derivation = {Derivation::share_through_junction,
                                         {Fixed{*leg.share, 2}, Words{rig[balance.single].name}}};
        if (!load || load->value < reached.value)
          load = std::move(reached);
      }
  }
  return load;
}

namespace {

/// The stays that are of no use without this one: those that meet it at a junction.
std::vector<StayId> taken_with(const Rig& rig, StayId stay) {
  std::vector<StayId> taken{stay};
  for (const Meeting& meeting : meetings(rig))
    if (std::any_of(meeting.ends.begin(), meeting.ends.end(),
                    [&](const StayEnd& end) { return end.stay == stay; }))
      for (const StayEnd& end : meeting.ends)
        if (std::find(taken.begin(), taken.end(), end.stay) == taken.end())
          taken.push_back(end.stay);
  return taken;
}

/// Whether nothing of the pair that a stay is of is missing among those that are left.
bool whole_pair_left(const Rig& rig, StayId id, const std::vector<StayId>& pulling,
                     const std::vector<StayId>& still) {
  const auto of_pair = [&](const std::vector<StayId>& stays) {
    return std::ranges::count_if(stays, [&](StayId other) { return rig[other].base == rig[id].base; });
  };
  return of_pair(still) == of_pair(pulling);
}

/// How high above the waterline a stay holds a mast: its higher end there; nothing when it ends elsewhere.
std::optional<Length> holds_at(const Rig& rig, const Spar& mast, const Stay& stay) {
  std::optional<Length> height;
  if (stay.path.size() < 2)
    return height;
  for (const PathStop* stop : {&stay.path.front(), &stay.path.back()}) {
    const Point& point = rig[stop->point];
    if (mast_of(rig, point).value_or(MastOfPoint{}).mast == &mast)
      height = std::max(height.value_or(point.position.z), point.position.z);
  }
  return height;
}

/// AfterParting::up_to
std::optional<Length> held_up_to(const Rig& rig, const Spar& mast, StayId gone,
                                 const std::vector<StayId>& still) {
  constexpr double share_of_mast = 0.05; // a choice of the project: two tangs at one band are one height
  const auto was = holds_at(rig, mast, rig[gone]);
  std::optional<Length> is;
  for (const StayId id : still)
    if (const auto height = holds_at(rig, mast, rig[id]))
      is = std::max(is.value_or(*height), *height);
  if (!was || !is || *was - *is <= (*was - mast.heel.z) * share_of_mast)
    return std::nullopt;
  return is;
}

} // namespace

std::vector<AfterParting> after_parting(const Rig& rig, StayId stay) {
  std::vector<AfterParting> result;
  const std::vector<HeldDirections> masts = held_directions(rig);
  if (masts.empty())
    return result;
  std::vector<StayId> lost = taken_with(rig, stay);
  const auto is_lost = [&](StayId id) { return std::find(lost.begin(), lost.end(), id) != lost.end(); };
  std::vector<bool> told(masts.size() * pull_directions.size(), false);
  std::vector<bool> fallen(masts.size(), false);
  bool more = true;
  for (bool at_once = true; more; at_once = false) {
    more = false;
    const std::vector<StayId> before = lost;
    for (std::size_t i = 0; i < masts.size(); ++i)
      for (std::size_t way = 0; way < pull_directions.size(); ++way) {
        const std::vector<StayId>& pulling = masts[i].stays_by_direction[way];
        if (told[i * pull_directions.size() + way] || (fallen[i] && !at_once) ||
            std::none_of(pulling.begin(), pulling.end(), [&](StayId id) {
              return std::find(before.begin(), before.end(), id) != before.end();
            }))
          continue;
        AfterParting after{
            .spar = masts[i].spar, .way = pull_directions[way], .left = {}, .at_once = at_once};
        std::vector<StayId> still;
        double most = 0.0;
        for (std::size_t k = 0; k < pulling.size(); ++k)
          if (!is_lost(pulling[k])) {
            still.push_back(pulling[k]);
            most = std::max(most, masts[i].shares_by_direction[way][k]);
          }
        after.weakly = !still.empty() && most < tenth_of_pull;
        for (const StayId id : still)
          add_once(after.left, whole_pair_left(rig, id, pulling, still) ? rig[id].base : rig[id].name);
        after.up_to = held_up_to(rig, rig.spars[masts[i].spar], stay, still);
        if (!after.left.empty() && !at_once)
          continue; // it stands: no news
        told[i * pull_directions.size() + way] = true;
        fallen[i] = fallen[i] || after.left.empty();
        if (after.left.empty())
          for (const Stay& other : rig.stays) { // it falls, and what ends on it goes slack
            const StayId id{static_cast<std::uint32_t>(&other - rig.stays.data())};
            const Spar& down = rig.spars[masts[i].spar];
            const bool ends_there =
                other.path.size() >= 2 &&
                (mast_of(rig, rig[other.path.front().point]).value_or(MastOfPoint{}).mast == &down ||
                 mast_of(rig, rig[other.path.back().point]).value_or(MastOfPoint{}).mast == &down);
            if (ends_there && !is_lost(id)) {
              lost.push_back(id);
              more = true;
            }
          }
        result.push_back(std::move(after));
      }
  }
  return result;
}

} // namespace sheerpole
