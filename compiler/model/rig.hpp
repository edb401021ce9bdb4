#pragma once

#include "model/boat.hpp"
#include "model/field.hpp"
#include "model/line_material.hpp"
#include "model/part.hpp"
#include "model/point.hpp"
#include "model/records.hpp"
#include "model/spar.hpp"
#include "model/splice.hpp"
#include "model/spreader.hpp"
#include "model/stay.hpp"

#include <vector>

namespace sheerpole {

/// A boat's standing rigging: consistent in its dimensions, every id points into the vector of its kind,
/// the order is that of the source (a base file before the file that uses it; starboard after port).
struct Rig {
  std::vector<StatedBound> bounds; ///< every `± …` that a value rests on
  Boat boat;
  std::vector<Spar> spars;
  std::vector<Point> points;
  std::vector<Spreader> spreaders;
  std::vector<LineMaterial> materials;
  std::vector<Splice> splices;
  std::vector<Part> parts;
  std::vector<Stay> stays;
  std::vector<State> states;
  std::vector<Record> records;
  Limits limits;
  std::vector<UserRule> rules;
  std::vector<Waiver> waivers;
  std::vector<Expectation> expectations;
  std::vector<Inspection> inspections;
  std::vector<PieceRecord> piece_records; ///< in the order of the stays, those of one stay as in the file
  std::vector<Difference> differences;
  Edition edition;

  const StatedBound& operator[](BoundId id) const { return bounds[id.index()]; }
  const Point& operator[](PointId id) const { return points[id.index()]; }
  const LineMaterial& operator[](MaterialId id) const { return materials[id.index()]; }
  const Splice& operator[](SpliceId id) const { return splices[id.index()]; }
  const Part& operator[](PartId id) const { return parts[id.index()]; }
  const Stay& operator[](StayId id) const { return stays[id.index()]; }
};

constexpr auto fields_of(const Rig*) {
  using enum FieldRole;
  return std::tuple(
      field("boat", "", &Rig::boat, geometry), field("spars", "", &Rig::spars, geometry),
      field("points", "", &Rig::points, geometry), field("spreaders", "", &Rig::spreaders, geometry),
      field("materials", "", &Rig::materials, geometry), field("splices", "", &Rig::splices, geometry),
      field("parts", "", &Rig::parts, geometry), field("stays", "", &Rig::stays, geometry),
      field("states", "", &Rig::states, geometry), field("records", "", &Rig::records, geometry),
      field("limits", "", &Rig::limits, geometry), field("rules", "", &Rig::rules, geometry),
      field("waivers", "", &Rig::waivers, geometry),
      field("expectations", "", &Rig::expectations, geometry),
      field("inspections", "", &Rig::inspections, geometry),
      field("piece_records", "", &Rig::piece_records, geometry),
      field("differences", "", &Rig::differences, identity), field("edition", "", &Rig::edition, identity),
      field("bounds", "", &Rig::bounds, identity));
}
static_assert(all_members_are_listed<Rig>());

} // namespace sheerpole
