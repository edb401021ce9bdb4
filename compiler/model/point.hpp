#pragma once

#include "model/field.hpp"
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

constexpr auto fields_of(const Vector3*) {
  using enum FieldRole;
  return std::tuple(field("x", "", &Vector3::x, geometry), field("y", "", &Vector3::y, geometry),
                    field("z", "", &Vector3::z, geometry));
}
static_assert(all_members_are_listed<Vector3>());

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

constexpr auto fields_of(const Point*) {
  using enum FieldRole;
  return std::tuple(
      field("name", "", &Point::name, identity), field("title", "", &Point::title, identity),
      field("base", "", &Point::base, identity), field("side", "", &Point::side, identity),
      field("position", "", &Point::position, geometry),
      field("provenance", "", &Point::provenance, identity), field("twin", "", &Point::twin, identity),
      field("overridden", "", &Point::overridden, identity),
      field("spar", "carries", &Point::spar, identity), field("tolerance", "", &Point::tolerance, geometry),
      field("influences", "", &Point::influences, identity));
}
static_assert(all_members_are_listed<Point>());

} // namespace sheerpole
