#pragma once

#include "statics/solver.hpp"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace sheerpole::test {

/// What a boat by chance is made of; every number between 0 and 1, to be stretched over its range.
struct Chances {
  std::vector<double> values;
  std::size_t next = 0;

  double between(double least, double most) {
    const double value = next < values.size() ? values[next++] : 0.5;
    return least + value * (most - least);
  }
  bool one_in(double chances) { return between(0.0, chances) < 1.0; }
};

inline Chances any_chances() {
  const auto numbers = *rc::gen::container<std::vector<int>>(80, rc::gen::inRange(0, 10001));
  Chances chances;
  for (const int number : numbers)
    chances.values.push_back(number / 10000.0);
  return chances;
}

/// A stayed mast by chance: one or two spreaders, swept or not, pinned, hinged or built in; caps clamped or
/// running free; with or without backstay and partners; sizes, stiffness and turns as on boats.
class RandomRig {
public:
  explicit RandomRig(Chances& chances) : chances_(chances) { build(); }

  statics::Structure structure;

private:
  statics::NodeId node(double x, double y, double z) {
    structure.nodes.push_back({{x, y, z}});
    return {static_cast<std::uint32_t>(structure.nodes.size() - 1)};
  }
  statics::NodeId chainplate(double x, double y, double z) {
    const statics::NodeId place = node(x, y, z);
    structure.supports.push_back(chances_.one_in(6.0) ? statics::giving_point(place, {0.5, 0.3, 1.0})
                                                      : statics::fixed_point(place));
    return place;
  }
  void stay(std::vector<statics::NodeId> path, double axial, double shorter_mm) {
    statics::Stay line{std::move(path), axial, 0.0};
    line.unstressed_mm = statics::drawn_length_mm(structure, line) - shorter_mm;
    structure.stays.push_back(std::move(line));
  }

  void build() {
    const double height = chances_.between(7000, 16000), rake = chances_.between(0.0, 0.03);
    const bool backstay = chances_.between(0.0, 1.0) < 0.6, fractional = !backstay || chances_.one_in(3.0);
    const bool partners = chances_.one_in(3.0);
    const double hounds = fractional ? height * chances_.between(0.8, 0.95) : height;
    const auto at = [&](double z) { return node(-rake * z, 0.0, z); };
    statics::Spar mast;
    mast.nodes.push_back(at(0.0));
    structure.supports.push_back(statics::pinned_heel(mast.nodes[0]));
    if (partners) {
      mast.nodes.push_back(at(chances_.between(1200, 2000)));
      structure.supports.push_back(
          {mast.nodes[1], {statics::Hold{}, statics::Hold{}, std::nullopt}, statics::Turning::free});
    }
    const int spreaders = chances_.one_in(3.0) ? 2 : 1;
    std::vector<statics::NodeId> roots;
    for (int i = 1; i <= spreaders; ++i) {
      roots.push_back(at(hounds * (i / (spreaders + 1.0) + chances_.between(-0.03, 0.05))));
      mast.nodes.push_back(roots.back());
    }
    const statics::NodeId head = at(hounds);
    mast.nodes.push_back(head);
    const statics::NodeId top = fractional ? at(height) : head;
    if (fractional)
      mast.nodes.push_back(top);
    const double stout = height * height * 1.2e3; // N mm2 for each: 1.7e11 at 12 m
    const double fore = stout * chances_.between(1.0, 2.0) * 1.0,
                 across = fore * chances_.between(0.5, 0.8);
    mast.stations = {{0.0, {1e8, fore, across, 10.0 * (fore + across)}}};
    mast.side = {1.0, 0.0, 0.0};
    structure.spars.push_back(mast);

    const double stay_axial = chances_.between(2e6, 4.5e6);
    stay({head, chainplate(0.3 * height, 0.0, 0.0)}, stay_axial, chances_.between(6, 18));
    if (backstay)
      stay({top, chainplate(-0.4 * height, 0.0, 0.0)}, stay_axial * 0.8, chances_.between(10, 26));
    const double sweep = backstay ? chances_.between(0.0, 0.3) : chances_.between(0.35, 0.6);
    const int joint = static_cast<int>(chances_.between(0.0, 2.99)); // pinned, hinged, built in
    const bool free_tips = joint == 2 && chances_.one_in(2.0);
    const double beam = height * chances_.between(0.08, 0.11), tip = beam * chances_.between(0.7, 0.9);
    const double cap_axial = chances_.between(2e6, 4e6), cap = chances_.between(20, 36);
    const double low_fwd = chances_.between(-4, 9), low_aft = chances_.between(3, 9);
    const double chain_x = -sweep * tip * 1.2;
    for (const double y : {1.0, -1.0}) {
      std::vector<statics::NodeId> path{head};
      for (std::size_t i = roots.size(); i-- > 0;) {
        const statics::Vector root = structure.nodes[roots[i].index()].place_mm;
        const double reach = tip * (i == 0 ? 1.0 : 0.85);
        path.push_back(node(root.x - sweep * reach, y * reach, root.z + 50.0));
        statics::Spar spreader{
            {roots[i], path.back()}, {{0.0, {3e7, 6e9, 1.1e10, 1.5e11}}}, {0, 0, 1}, {}, 2};
        spreader.root = {joint < 2, joint < 1, joint < 1};
        structure.spars.push_back(spreader);
      }
      path.push_back(chainplate(chain_x, y * beam, 0.0));
      if (free_tips) {
        stay(path, cap_axial, cap);
      } else {
        for (std::size_t i = 0; i + 1 < path.size(); ++i)
          stay({path[i], path[i + 1]}, cap_axial, i + 2 == path.size() ? cap : 0.0);
      }
      stay({roots[0], chainplate(0.04 * height, y * beam, 0.0)}, 2e6, low_fwd);
      stay({roots[0], chainplate(-0.05 * height, y * beam, 0.0)}, 2.3e6, low_aft);
      if (roots.size() == 2)
        stay({roots[1], path[2]}, 1.6e6, chances_.between(0, 4));
    }
  }

  Chances& chances_;
};

/// Every number of a state.
inline bool all_finite(const statics::State& state) {
  bool finite = std::isfinite(state.residual_newtons);
  for (const statics::StayState& stay : state.stays)
    finite = finite && std::isfinite(stay.tension_newtons) && std::isfinite(stay.slack_mm);
  for (const statics::Vector& moved : state.moved_mm)
    finite = finite && statics::is_finite(moved);
  for (const auto& reaction : state.reactions)
    finite = finite && statics::is_finite(reaction[0]) && statics::is_finite(reaction[1]);
  for (const statics::SparState& spar : state.spars) {
    for (const statics::SparPlace& place : spar.places)
      finite = finite && statics::is_finite(place.moved_mm) && statics::is_finite(place.bend_mm);
    for (const auto& numbers : {spar.compression_newtons, spar.bending_newton_mm})
      finite = finite && std::ranges::all_of(numbers, [](double number) { return std::isfinite(number); });
  }
  return finite && (!state.softest || std::isfinite(state.softest->stiffness_newtons_per_mm));
}

} // namespace sheerpole::test
