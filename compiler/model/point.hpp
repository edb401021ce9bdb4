#pragma once

#include "model/ids.hpp"
#include "model/influence.hpp"
#include "model/provenance.hpp"
#include "model/side.hpp"
#include "units/length.hpp"

#include <array>
#include <optional>
#include <string>

namespace sheerpole {

/// A place in boat axes: x forward, y to starboard, z up from the waterline.
struct Vector3 {
  Length x, y, z;
};

/// A named point. A mirrored declaration makes two, one a side, that know each other.
struct Point {
  std::string name;  ///< `plate-a.port`; a point on the centreline or of one side only has no suffix
  std::string base;  ///< `plate-a`
  std::string title; ///< may be empty
  Side side = Side::centre;
  Vector3 position;
  Provenance provenance;
  std::optional<PointId> twin;
  bool overridden = false;                   ///< this side was stated apart from its twin
  std::string spar = {};                     ///< name of the spar that it stands on; may be empty
  std::optional<Length> tolerance = {};      ///< of each coordinate, plus or minus, as stated
  std::array<Influences, 3> influences = {}; ///< of x, y and z in boat axes
};

} // namespace sheerpole
