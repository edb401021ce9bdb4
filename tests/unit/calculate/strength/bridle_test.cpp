#include "calculate/strength/stay_directions.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace sheerpole::bridle_test {
namespace {

SpacePoint at(double x, double y, double z) {
  return {Length::metres(x), Length::metres(y), Length::metres(z)};
}

double distance_metres(const SpacePoint& a, const SpacePoint& b) {
  return magnitude(vector_between(a, b));
}

// By hand: half angle 60 degrees, 1 / (2 x 0.5) = 1; two legs side by side carry half each.
TEST(Bridle, LegByHand) {
  EXPECT_NEAR(bridle_leg(Force::kilonewtons(8), 60 * degree)->kilonewtons(), 8, 1e-12);
  EXPECT_NEAR(bridle_leg(Force::kilonewtons(8), 0)->kilonewtons(), 4, 1e-12);
}

// An invented cutter's split backstay, worked outside the project: the plate is 0.3 mm off the line from
// the masthead to the middle of the quarters, and each leg carries 0.52 of the single stay's tension.
const BridlePlaces backstay{.stay_end = at(-0.160, 0, 16.720),
                            .junction = at(-5.105, 0, 4.731),
                            .first_end = at(-6.500, 1.050, 1.350),
                            .second_end = at(-6.500, -1.050, 1.350)};

TEST(Bridle, SplitBackstay) {
  const auto offset = junction_offset(backstay);
  ASSERT_TRUE(offset);
  EXPECT_NEAR(offset->from_middle.millimetres(), 0.3, 0.05);
  EXPECT_NEAR(offset->from_plane.millimetres(), 0.3, 0.05);
  const auto tensions = bridle_tensions(backstay, Force::newtons(1000));
  ASSERT_TRUE(tensions);
  EXPECT_NEAR(tensions->first.newtons(), 520, 5);
  EXPECT_NEAR(tensions->first.newtons(), tensions->second.newtons(), 1e-9);
  EXPECT_LT(tensions->residual_share, 2e-4);
}

// A plate moved 100 mm aft is out of the plane by nearly as much and leaves some per cent of the tension.
TEST(Bridle, APlateOutOfPlace) {
  BridlePlaces moved = backstay;
  moved.junction = at(-5.205, 0, 4.731);
  EXPECT_GT(junction_offset(moved)->from_plane.millimetres(), 90);
  EXPECT_GT(bridle_tensions(moved, Force::newtons(1000))->residual_share, 0.02);
}

// By hand, legs of a 3-4-5 triangle: 3 and 4 m with ends 5 m apart meet 1.8 m along and 2.4 m square to it.
TEST(Bridle, JunctionOfUnequalLegs) {
  const auto junction =
      bridle_junction(at(1, 0, 9), at(0, 0, 0), at(5, 0, 0), Length::metres(3), Length::metres(4));
  ASSERT_TRUE(junction);
  EXPECT_NEAR(junction->x.metres(), 1.8, 1e-12);
  EXPECT_NEAR(junction->y.metres(), 0, 1e-12);
  EXPECT_NEAR(junction->z.metres(), 2.4, 1e-12);
}

TEST(Bridle, IsNothingOutOfRange) {
  const Force newton = Force::newtons(1);
  EXPECT_FALSE(bridle_leg(newton, 90 * degree));
  EXPECT_FALSE(bridle_leg(newton, -0.1));
  EXPECT_FALSE(bridle_leg(newton, std::nan("")));
  EXPECT_FALSE(bridle_leg(Force::newtons(-1), 0.1));
  EXPECT_FALSE(bridle_tensions(backstay, Force()));
  BridlePlaces wrong = backstay;
  wrong.junction = wrong.stay_end;
  EXPECT_FALSE(bridle_tensions(wrong, newton));
  wrong = backstay;
  wrong.second_end = wrong.first_end; // one leg twice: no telling what each carries
  EXPECT_FALSE(bridle_tensions(wrong, newton));
  wrong = backstay;
  wrong.junction = at(-6.0, 1.4, 2.0); // outside both legs: one would have to push
  EXPECT_FALSE(bridle_tensions(wrong, newton));
  const Length metre = Length::metres(1);
  EXPECT_FALSE(bridle_junction(at(0, 0, 9), at(-2, 0, 0), at(2, 0, 0), metre, metre));
  EXPECT_FALSE(bridle_junction(at(0, 0, 9), at(-1, 0, 0), at(1, 0, 0), metre, Length::metres(4)));
  EXPECT_FALSE(bridle_junction(at(9, 0, 0), at(-1, 0, 0), at(1, 0, 0), metre * 3, metre * 3));
  EXPECT_FALSE(bridle_junction(at(0, 0, 9), at(1, 0, 0), at(1, 0, 0), metre, metre));
  EXPECT_FALSE(bridle_junction(at(0, 0, 9), at(-1, 0, 0), at(1, 0, 0), Length(), metre));
  wrong = backstay;
  wrong.stay_end = at(-6.5, 0, 1.35); // between the quarters
  EXPECT_FALSE(junction_offset(wrong));
}

// Equilibrium of the joint: where unequal legs hang, two tensions hold the stay and nothing is left over.
RC_GTEST_PROP(Bridle, UnequalLegsAreInEquilibrium, ()) {
  const auto coordinate = [] { return *rc::gen::inRange(-3000, 3000) / 1000.0; };
  BridlePlaces places{.stay_end = at(coordinate(), coordinate(), 15),
                      .junction = {},
                      .first_end = at(coordinate(), coordinate(), coordinate() / 3),
                      .second_end = at(coordinate(), coordinate(), coordinate() / 3)};
  const double base = distance_metres(places.first_end, places.second_end);
  RC_PRE(base > 0.2);
  const double first = base * *rc::gen::inRange(600, 2000) / 1000.0;
  const double second = base * *rc::gen::inRange(600, 2000) / 1000.0;
  const auto junction = bridle_junction(places.stay_end, places.first_end, places.second_end,
                                        Length::metres(first), Length::metres(second));
  RC_PRE(junction.has_value());
  places.junction = *junction;
  RC_ASSERT(std::abs(distance_metres(*junction, places.first_end) - first) < 1e-9);
  RC_ASSERT(std::abs(distance_metres(*junction, places.second_end) - second) < 1e-9);
  RC_ASSERT(junction_offset(places)->from_plane.metres() < 1e-9);
  const auto tensions = bridle_tensions(places, Force::newtons(1000));
  RC_PRE(tensions.has_value()); // else the stay's end is not above the legs
  RC_ASSERT(tensions->residual_share < 1e-9);

  // Summed here joint by joint, in newtons.
  const SpaceVector sum = 1000.0 * *direction_between(*junction, places.stay_end) +
                          tensions->first.newtons() * *direction_between(*junction, places.first_end) +
                          tensions->second.newtons() * *direction_between(*junction, places.second_end);
  RC_ASSERT(magnitude(sum) < 1e-6);
}

} // namespace
} // namespace sheerpole::bridle_test
