#pragma once

#include "statics/solver.hpp"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <cstdint>
#include <fstream>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole::test {

/// A boat of tests/reference/statics as a structure.
struct ReferenceCase {
  nlohmann::json json;
  statics::Structure structure;
  std::map<std::string, statics::NodeId> nodes;
  /// By stay of the structure: its name in the file, which of its legs, and whether that has the adjuster.
  struct Leg {
    std::string stay;
    std::size_t leg = 0;
    bool adjusted = false;
    bool whole = false; ///< one tension for all legs of the path
  };
  std::vector<Leg> legs;

  statics::NodeId node(const nlohmann::json& name) const { return nodes.at(name.get<std::string>()); }
};

inline void add_stays(ReferenceCase& boat) {
  for (const nlohmann::json& stay : boat.json.at("stays")) {
    std::vector<statics::NodeId> path;
    for (const nlohmann::json& name : stay.at("path"))
      path.push_back(boat.node(name));
    const bool whole = path.size() == 2 || !stay.at("free_at").empty();
    const std::size_t legs = whole ? 1 : path.size() - 1;
    for (std::size_t i = 0; i < legs; ++i) {
      statics::Stay line{whole ? path : std::vector{path[i], path[i + 1]}, stay.at("EA_N").get<double>(),
                         0.0};
      const bool adjusted = i + 1 == legs;
      line.unstressed_mm = statics::drawn_length_mm(boat.structure, line) -
                           (adjusted ? stay.at("shortening_mm").get<double>() : 0.0);
      boat.structure.stays.push_back(std::move(line));
      boat.legs.push_back({stay.at("name").get<std::string>(), i, adjusted, whole});
    }
  }
}

inline statics::Section section_of(const nlohmann::json& spar, const char* in_side, const char* square) {
  constexpr double mm2_of_m2 = 1e6;
  return {spar.at("EA_N").get<double>(), mm2_of_m2 * spar.value(in_side, 0.0),
          mm2_of_m2 * spar.value(square, 0.0), mm2_of_m2 * spar.value("GJ_Nm2", 0.0)};
}

/// One section of a mast that is alike all along, else those of its stations, in metres from the heel.
inline std::vector<statics::Station> stations_of(const nlohmann::json& mast) {
  if (!mast.contains("stations"))
    return {{0.0, section_of(mast, "EIx_Nm2", "EIy_Nm2")}};
  std::vector<statics::Station> result;
  for (const nlohmann::json& station : mast.at("stations"))
    result.push_back(
        {1000.0 * station.at("at_m").get<double>(), section_of(station, "EIx_Nm2", "EIy_Nm2")});
  return result;
}

inline void add_spars(ReferenceCase& boat, bool spreaders_rigid) {
  for (const nlohmann::json& given : boat.json.at("spars")) {
    statics::Spar spar;
    if (given.at("kind") == "mast") {
      for (const nlohmann::json& name : given.at("nodes"))
        spar.nodes.push_back(boat.node(name));
      spar.side = {1.0, 0.0, 0.0};
      spar.stations = stations_of(given);
      boat.structure.supports.push_back(statics::pinned_heel(boat.node(given.at("heel"))));
      if (!given.at("partners").is_null())
        boat.structure.supports.push_back({boat.node(given.at("partners")),
                                           {statics::Hold{}, statics::Hold{}, std::nullopt},
                                           statics::Turning::free});
    } else {
      const std::string fixity = spreaders_rigid ? "rigid" : given.at("fixity").get<std::string>();
      spar.nodes = {boat.node(given.at("root")), boat.node(given.at("tip"))};
      spar.side = {0.0, 0.0, 1.0};
      spar.stations = {{0.0, section_of(given, "EIv_Nm2", "EIh_Nm2")}};
      spar.root.swings_in_side = fixity != "rigid";
      spar.root.swings_square = spar.root.twists = fixity == "pinned";
      spar.pieces_a_panel = 2;
    }
    boat.structure.spars.push_back(std::move(spar));
  }
}

/// The boat of a file in the form of tests/reference/statics; with all its spreaders rigid if so wanted.
inline ReferenceCase reference_case(const std::string& path, bool spreaders_rigid = false) {
  ReferenceCase boat;
  std::ifstream file(path);
  boat.json = nlohmann::json::parse(file);
  for (const auto& [name, place] : boat.json.at("nodes").items()) {
    boat.nodes.emplace(name, statics::NodeId{static_cast<std::uint32_t>(boat.structure.nodes.size())});
    boat.structure.nodes.push_back(
        {1000.0 * statics::Vector{place[0].get<double>(), place[1].get<double>(), place[2].get<double>()}});
  }
  add_stays(boat);
  add_spars(boat, spreaders_rigid);
  for (const nlohmann::json& name : boat.json.at("supports").at("fixed"))
    boat.structure.supports.push_back(statics::fixed_point(boat.node(name)));
  return boat;
}

} // namespace sheerpole::test
