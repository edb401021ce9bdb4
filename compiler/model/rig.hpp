#pragma once

#include "model/boat.hpp"
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
  std::vector<Difference> differences;

  const StatedBound& operator[](BoundId id) const { return bounds[id.index()]; }
  const Point& operator[](PointId id) const { return points[id.index()]; }
  const LineMaterial& operator[](MaterialId id) const { return materials[id.index()]; }
  const Splice& operator[](SpliceId id) const { return splices[id.index()]; }
  const Part& operator[](PartId id) const { return parts[id.index()]; }
  const Stay& operator[](StayId id) const { return stays[id.index()]; }
};

} // namespace sheerpole
