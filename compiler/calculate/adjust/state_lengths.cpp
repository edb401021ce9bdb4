#include "calculate/adjust/state_lengths.hpp"

#include "calculate/length/path_length.hpp"
#include "units/si_factors.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// Below this a stay is neither slack nor tight: the rounding of a path.
constexpr Length nothing_to_speak_of = Length::millimetres(0.05);

/// How much longer its adjusters make a stay in a state.
Length change_in(const Derived& derived, std::size_t state, StayId stay) {
  for (const DerivedPosition& position : derived.positions)
    if (position.state == state && position.stay == stay)
      return position.change;
  return {};
}

/// Whether a state makes the stay off elsewhere: while a spar is lowered it is let go.
bool let_go(const State& state, StayId stay) {
  return std::any_of(state.positions.begin(), state.positions.end(), [&](const StatePosition& position) {
    return position.stay == stay && position.stowed_at.has_value();
  });
}

const Spar* find_spar(const Rig& rig, const std::string& name) {
  const auto found =
      std::find_if(rig.spars.begin(), rig.spars.end(), [&](const Spar& one) { return one.name == name; });
  return found == rig.spars.end() ? nullptr : &*found;
}

/// The way through the places of a stay with those on the spar turned.
Length way(const Rig& rig, const Stay& stay, const Spar& spar, double angle) {
  Length sum;
  std::optional<Vector3> before;
  for (const PathStop& stop : stay.path) {
    const Point& point = rig[stop.point];
    const Vector3 place =
        point.spar == spar.name ? turned_about_heel(point.position, spar, angle) : point.position;
    if (before)
      sum += distance(*before, place);
    before = place;
  }
  return sum;
}

LoweredStay lowered(const Rig& rig, const Derived& derived, std::size_t number, StayId id,
                    const Spar& spar) {
  const State& state = rig.states[number];
  const Stay& stay = rig[id];
  const double end = state.by->value.radians * (state.towards == LoweredTowards::forward ? -1.0 : 1.0);
  const Length has = way(rig, stay, spar, 0.0) + change_in(derived, number, id);
  LoweredStay result{.state = number, .stay = id, .slack = {}, .tightest = {}};
  const int steps = std::max(1, static_cast<int>(std::lround(std::abs(end) / degree)));
  for (int i = 0; i <= steps; ++i) {
    const double angle = end * i / steps;
    const Length slack = has - way(rig, stay, spar, angle);
    if (-slack > result.tightest + nothing_to_speak_of) {
      result.tightest = -slack;
      result.tightest_at = std::abs(angle);
    }
    if (slack < nothing_to_speak_of)
      result.slack_from = std::abs(angle);
    result.slack = slack;
  }
  return result;
}

} // namespace

Vector3 turned_about_heel(const Vector3& place, const Spar& spar, double angle) {
  const std::array<Length, 3> from{place.x - spar.heel.x, place.y - spar.heel.y, place.z - spar.heel.z};
  std::array<Length, 3> own{};
  for (std::size_t axis = 0; axis < 3; ++axis)
    for (std::size_t i = 0; i < 3; ++i)
      own[axis] += from[i] * spar.axes[axis][i];
  const Length x = own[0] * std::cos(angle) - own[2] * std::sin(angle);
  const Length z = own[0] * std::sin(angle) + own[2] * std::cos(angle);
  own[0] = x;
  own[2] = z;
  std::array<Length, 3> to{spar.heel.x, spar.heel.y, spar.heel.z};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t axis = 0; axis < 3; ++axis)
      to[i] += own[axis] * spar.axes[axis][i];
  return {to[0], to[1], to[2]};
}

std::vector<StowedStay> stowed_stays(const Rig& rig, const Derived& derived) {
  std::vector<StowedStay> result;
  for (const DerivedPosition& position : derived.positions) {
    const StatePosition& stated = rig.states[position.state].positions[position.position];
    const Stay& stay = rig[position.stay];
    // Where its spar is lowered in the same state its upper pin is nowhere for long.
    if (!stated.stowed_at || stay.path.empty() ||
        (!rig.states[position.state].lowers.empty() &&
         rig[stay.path.front().point].spar == rig.states[position.state].lowers))
      continue;
    StowedStay stowed{.state = position.state,
                      .position = position.position,
                      .stay = position.stay,
                      .needs =
                          distance(rig[stay.path.front().point].position, rig[*stated.stowed_at].position),
                      .has = {}};
    const LengthSum& pin_to_pin = derived.stays[position.stay.index()].pin_to_pin;
    if (!pin_to_pin.unknown)
      stowed.has = pin_to_pin.known() + position.change;
    result.push_back(stowed);
  }
  return result;
}

std::vector<LoweredStay> lowered_stays(const Rig& rig, const Derived& derived) {
  std::vector<LoweredStay> result;
  for (std::size_t state = 0; state < rig.states.size(); ++state) {
    const Spar* spar = find_spar(rig, rig.states[state].lowers);
    if (spar == nullptr || !rig.states[state].by)
      continue;
    for (const DerivedStay& stay : derived.stays) {
      const auto& path = rig[stay.stay].path;
      const auto on_it = std::count_if(path.begin(), path.end(), [&](const PathStop& stop) {
        return rig[stop.point].spar == spar->name;
      });
      if (on_it != 0 && on_it != static_cast<std::ptrdiff_t>(path.size()) &&
          !let_go(rig.states[state], stay.stay))
        result.push_back(lowered(rig, derived, state, stay.stay, *spar));
    }
  }
  return result;
}

} // namespace sheerpole
