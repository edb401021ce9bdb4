#include "calculate/geometry/junctions.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/geometry_phrases.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double leans = 0.01;

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

std::vector<HeldDirections> held_directions(const Rig& rig) {
  std::vector<HeldDirections> result;
  const auto by_spar = stays_by_spar(rig);
  for (std::size_t i = 0; i < rig.spars.size(); ++i) {
    if (rig.spars[i].sort != SparSort::mast || by_spar[i].empty())
      continue;
    HeldDirections held;
    held.spar = i;
    held.stays = by_spar[i].size();
    double height = 0.0;
    for (const StayOnMast& on : by_spar[i])
      height = std::max(height, on.height_metres);
    if (const auto length = fact_length(rig.spars[i].particulars, fact_names.length))
      height = length->value.metres();
    held.half_height_metres = height / 2.0;
    for (const StayOnMast& on : by_spar[i]) {
      if (on.height_metres < held.half_height_metres)
        continue;
      const std::array<bool, 4> ways{on.pull.x > leans, on.pull.x < -leans,
                                     on.pull.y<-leans, on.pull.y> leans};
      for (std::size_t way = 0; way < ways.size(); ++way)
        if (ways[way])
          add_once(held.by_direction[way], on.stay->base);
    }
    result.push_back(std::move(held));
  }
  return result;
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
  result.off = result.legs_are_a_pair ? offset->from_middle : offset->from_plane;
  const Force tension = Force::newtons(1000.0);
  if (const auto pulls = bridle_tensions(places, tension))
    result.leg_share = std::max(pulls->first, pulls->second).newtons() / tension.newtons();
  return result;
}

} // namespace

std::vector<JunctionBalance> junction_balances(const Rig& rig) {
  std::vector<JunctionBalance> result;
  for (const Meeting& meeting : meetings(rig))
    result.push_back(balance(rig, meeting));
  return result;
}

} // namespace sheerpole
