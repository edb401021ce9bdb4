#include "calculate/calculate.hpp"
#include "unit/calculate/rig_builder.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::mirrored_pair_test {
namespace {

using namespace build;

/// A pair of stays whose plates lie at these places; starboard is y > 0.
Derived pair_with(double port_y, double starboard_y) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  const PartId eye = builder.add(fixed("eye", mm(62)));
  for (const Side side : {Side::port, Side::starboard}) {
    const double y = side == Side::port ? -port_y : starboard_y;
    Stay made = stay("shroud", line_material, {item(eye), line()}, side);
    made.path = path({builder.point("tang", 0, side == Side::port ? -60 : 60, 9000, {}, side),
                      builder.point("plate", -500, y, 1100, {}, side)});
    builder.add(std::move(made));
  }
  return calculate(builder.rig);
}

RC_GTEST_PROP(MirroredPair, SwappingTheSidesSwapsTheLengths, ()) {
  const double one = *rc::gen::inRange(200'000, 2'500'000) / 1000.0;
  const double other = *rc::gen::inRange(200'000, 2'500'000) / 1000.0;
  const Derived first = pair_with(one, other);
  const Derived second = pair_with(other, one);
  RC_ASSERT(first.stays[0].body.known() == second.stays[1].body.known());
  RC_ASSERT(first.stays[1].body.known() == second.stays[0].body.known());
  RC_ASSERT(first.stays[0].pieces[0].name == "shroud.port");
  RC_ASSERT(second.stays[0].pieces[0].name == "shroud.port");
}

} // namespace
} // namespace sheerpole::mirrored_pair_test
