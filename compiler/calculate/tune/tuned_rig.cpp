#include "calculate/tune/tuned_rig.hpp"

#include "calculate/geometry/spar_lines.hpp"
#include "statics/measured_state.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

using statics::Vector;

/// How well an unstressed length that only a tension tells is known from the rig as drawn, as a share of
/// the drawn path: tensions tell nothing of the rake, which is held by this. A choice of the project.
constexpr double free_share = 0.0025;
/// A dock tension is to be met within this share.
constexpr double dock_within = 0.002;
/// A fit is off when readings miss by more than so many of their bounds on the root of the mean square.
constexpr double most_bounds_off = 4.0;

std::vector<TuneQuantity> quantities_of(const Rig& rig, const TuneModel& model) {
  using enum TuneQuantity::Kind;
  std::vector<TuneQuantity> result;
  for (std::size_t i = 0; i < model.stays.size(); ++i)
    result.push_back({tension, i, 0, statics::Tension{model.stays[i].at_deck()}});
  for (std::size_t i = 0; i < model.spars.size(); ++i) {
    const TuneSpar& spar = model.spars[i];
    if (!stands(rig.spars[spar.spar]))
      continue;
    result.push_back({head_aft, i, 0, statics::Movement{spar.head, {-1.0, 0.0, 0.0}}});
    result.push_back({head_starboard, i, 0, statics::Movement{spar.head, {0.0, 1.0, 0.0}}});
    for (std::size_t k = 0; k < spar.spreaders.size(); ++k) {
      result.push_back(
          {bend_forward, i, k, statics::Bend{spar.element, spar.spreaders[k].node, spar.forward}});
      result.push_back(
          {bend_starboard, i, k, statics::Bend{spar.element, spar.spreaders[k].node, spar.starboard}});
    }
  }
  return result;
}

/// What is known of tensions, and which lengths are not known.
struct Known {
  std::vector<statics::Measured> measured;
  std::vector<statics::DoubtfulLength> doubtful;
};

Known known_of(const TuneModel& model) {
  Known known;
  const bool any_reading = std::ranges::any_of(
      model.stays, [](const TuneStay& stay) { return stay.known_by == LengthKnownBy::reading; });
  for (const TuneStay& stay : model.stays) {
    const statics::StayId screwed = stay.legs[stay.screwed];
    const double free_mm =
        free_share * statics::drawn_length_mm(model.structure, model.structure.stays[screwed.index()]);
    const statics::Tension tension{stay.at_deck()};
    switch (stay.known_by) {
    case LengthKnownBy::reading:
      for (const TuneStay::Read& read : stay.readings)
        known.measured.push_back({tension, read.newtons, read.bound_newtons});
      known.doubtful.push_back({screwed, stay.taken_bound_mm.value_or(free_mm)});
      break;
    case LengthKnownBy::dock_tension:
      known.measured.push_back({tension, *stay.dock_newtons, dock_within * *stay.dock_newtons});
      known.doubtful.push_back({screwed, free_mm});
      break;
    case LengthKnownBy::taken_up:
      if (stay.taken_bound_mm && *stay.taken_bound_mm > 0.0 && any_reading)
        known.doubtful.push_back({screwed, *stay.taken_bound_mm});
      break;
    case LengthKnownBy::nothing:
      break;
    }
  }
  return known;
}

/// The lengths of each leg of lines that were seized in this state.
std::vector<double> seized_lengths(const TuneModel& free, const statics::State& state,
                                   const TuneModel& seized) {
  std::vector<double> lengths(seized.structure.stays.size(), 0.0);
  for (std::size_t i = 0; i < seized.stays.size(); ++i) {
    const TuneStay& from = free.stays[i];
    const TuneStay& to = seized.stays[i];
    for (std::size_t k = 0; k < to.legs.size(); ++k) {
      double& length = lengths[to.legs[k].index()];
      if (from.legs.size() == to.legs.size()) {
        length = state.unstressed_mm[from.legs[k].index()];
        continue;
      }
      const statics::Stay& leg = seized.structure.stays[to.legs[k].index()];
      double now = 0.0;
      for (std::size_t j = 1; j < leg.path.size(); ++j) {
        const std::size_t a = leg.path[j - 1].index(), b = leg.path[j].index();
        now += statics::length(seized.structure.nodes[b].place_mm + state.moved_mm[b] -
                               seized.structure.nodes[a].place_mm - state.moved_mm[a]);
      }
      const statics::StayState& one = state.stays[from.legs.front().index()];
      const double share = now / (now + one.slack_mm); // a slack line is longer than its way
      length = statics::unstressed_length_mm(now, one.tension_newtons, leg.axial_stiffness_newtons)
                   .value_or(now) /
               std::max(share, 0.5);
    }
  }
  return lengths;
}

class StateSearch {
public:
  StateSearch(const Rig& rig, const Derived& derived, const MovedBounds& moved)
      : rig_(rig), derived_(derived), moved_(moved) {
    result_.model = tune_model(rig, derived, moved);
  }

  TunedRig find() {
    if (!result_.model.complete())
      return std::move(result_);
    const bool seized = std::ranges::any_of(result_.model.stays,
                                            [](const TuneStay& stay) { return stay.seized_under_tension; });
    if (!make_solver())
      return std::move(result_);
    if (!seized) {
      result_.state = fitted(result_.model, *result_.solver);
    } else {
      const TuneModel free = tune_model_before_seizing(rig_, derived_, moved_);
      auto solver = statics::Solver::make(free.structure);
      if (!solver) {
        result_.trouble.push_back(TunePhrase::cannot_be_worked);
        return std::move(result_);
      }
      const statics::State state = fitted(free, solver.value());
      if (result_.trouble.empty())
        result_.state =
            result_.solver->settle(seized_lengths(free, state, result_.model), {}, &state.configuration);
    }
    add_trouble(result_.model, result_.state);
    if (result_.trouble.empty())
      result_.quantities = quantities_of(rig_, result_.model);
    return std::move(result_);
  }

private:
  bool make_solver() {
    auto solver = statics::Solver::make(result_.model.structure);
    if (!solver) {
      result_.trouble.push_back(TunePhrase::cannot_be_worked);
      return false;
    }
    result_.solver = std::make_unique<statics::Solver>(std::move(solver.value()));
    return true;
  }

  void add_trouble(const TuneModel& model, const statics::State& state) {
    if (Remark trouble = trouble_of(rig_, model, state); result_.trouble.empty() && !trouble.empty())
      result_.trouble.push_back(std::move(trouble));
  }

  statics::State fitted(const TuneModel& model, statics::Solver& solver) {
    const Known known = known_of(model);
    if (known.measured.empty() || known.doubtful.empty()) {
      statics::State state = solver.settle();
      add_trouble(model, state);
      return state;
    }
    statics::FittedState fit = statics::fit_measured(solver, known.measured, known.doubtful);
    add_trouble(model, fit.state);
    double sum = 0.0;
    for (const double off : fit.off_bounds)
      sum += off * off;
    const double most = most_bounds_off * most_bounds_off * static_cast<double>(known.measured.size());
    if (result_.trouble.empty() && (!fit.converged || !(sum <= most))) {
      const auto worst =
          std::ranges::max_element(fit.off_bounds, {}, [](double off) { return std::abs(off); });
      const auto& tension = std::get<statics::Tension>(
          known.measured[static_cast<std::size_t>(worst - fit.off_bounds.begin())].what);
      for (const TuneStay& stay : model.stays)
        if (stay.at_deck() == tension.stay)
          result_.trouble.push_back({TunePhrase::readings_do_not_fit, {stay.stay}});
    }
    return std::move(fit.state);
  }

  const Rig& rig_;
  const Derived& derived_;
  MovedBounds moved_;
  TunedRig result_;
};

TunePhrase way_of(Vector direction) {
  const double x = std::abs(direction.x), y = std::abs(direction.y), z = std::abs(direction.z);
  return x >= y && x >= z ? TunePhrase::fore_and_aft
         : y >= z         ? TunePhrase::athwart
                          : TunePhrase::up_and_down;
}

} // namespace

std::vector<double> TunedRig::values(const statics::State& at) const {
  std::vector<double> result;
  result.reserve(quantities.size());
  for (const TuneQuantity& quantity : quantities)
    result.push_back(statics::value_of(model.structure, quantity.what, at));
  return result;
}

std::string name_of_node(const Rig& rig, const TuneModel& model, statics::NodeId node) {
  for (const auto& [point, at] : model.places)
    if (at == node)
      return rig[point].base;
  for (const TuneSpar& spar : model.spars)
    if (std::ranges::find(model.structure.spars[spar.element.index()].nodes, node) !=
        model.structure.spars[spar.element.index()].nodes.end())
      return rig.spars[spar.spar].name;
  return {};
}

Remark trouble_of(const Rig& rig, const TuneModel& model, const statics::State& state) {
  const auto where = [&](std::optional<statics::NodeId> node) {
    return Words{node ? name_of_node(rig, model, *node) : std::string()};
  };
  switch (state.outcome) {
  case statics::Outcome::equilibrium:
    return {};
  case statics::Outcome::mechanism:
    if (state.softest)
      return {TunePhrase::something_loose,
              {where(state.softest->node), Remarks{{way_of(state.softest->direction)}}}};
    return TunePhrase::no_balance;
  case statics::Outcome::unstable:
    if (state.softest)
      return {TunePhrase::knife_edge,
              {where(state.softest->node), Remarks{{way_of(state.softest->direction)}}}};
    return TunePhrase::no_balance;
  case statics::Outcome::far_away:
    return {TunePhrase::ran_away, {where(state.farthest)}};
  case statics::Outcome::not_converged:
    break;
  }
  return TunePhrase::no_balance;
}

TunedRig tuned_rig(const Rig& rig, const Derived& derived, const MovedBounds& moved) {
  return StateSearch(rig, derived, moved).find();
}

} // namespace sheerpole
