#include "calculate/physics/inextensible_catenary.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace sheerpole::inextensible_catenary_test {
namespace {

Length metres(double value) {
  return Length::metres(value);
}

// Worked outside the project by bisection of the closed form: span 100, sag 10.
TEST(InextensibleCatenary, OfSpanHundredAndSagTen) {
  const Length parameter = *catenary_parameter(metres(100), metres(10));
  EXPECT_NEAR(parameter.metres(), 126.63244, 0.000005);
  EXPECT_NEAR(catenary_length(metres(100), parameter)->metres(), 102.61869, 0.000005);
  EXPECT_NEAR(catenary_sag(metres(100), parameter)->metres(), 10, 1e-12);
}

// By hand: a = 1 and L = 2 ln 2 give cosh(ln 2) - 1 = 1.25 - 1 and 2 sinh(ln 2) = 1.5.
TEST(InextensibleCatenary, OfAWholeNumber) {
  const Length span = metres(2 * std::log(2.0));
  EXPECT_NEAR(catenary_sag(span, metres(1))->metres(), 0.25, 1e-15);
  EXPECT_NEAR(catenary_length(span, metres(1))->metres(), 1.5, 1e-15);
  EXPECT_NEAR(catenary_parameter(span, metres(0.25))->metres(), 1, 1e-14);
}

TEST(InextensibleCatenary, IsNothingOutOfRange) {
  EXPECT_FALSE(catenary_parameter(metres(0), metres(1)));
  EXPECT_FALSE(catenary_parameter(metres(1), metres(0)));
  EXPECT_FALSE(catenary_parameter(metres(1), metres(-1)));
  EXPECT_FALSE(catenary_parameter(metres(1), metres(1.1e6)));
  EXPECT_FALSE(catenary_sag(metres(1), metres(0)));
  EXPECT_FALSE(catenary_sag(metres(0), metres(1)));
  EXPECT_FALSE(catenary_sag(metres(1), metres(1e-6)));
  EXPECT_FALSE(catenary_length(metres(1), metres(0)));
  EXPECT_FALSE(catenary_length(metres(-1), metres(1)));
  EXPECT_FALSE(catenary_length(metres(1), metres(1e-6)));
}

// From a line as good as straight to one that hangs a million spans deep.
RC_GTEST_PROP(InextensibleCatenary, ParameterAndSagAreEachOthersInverse, ()) {
  const double span = *rc::gen::inRange(1, 1000) / 10.0;
  const double ratio = std::pow(10.0, *rc::gen::inRange(-1500, 600) / 100.0);
  const auto parameter = catenary_parameter(metres(span), metres(ratio * span));
  RC_ASSERT(parameter.has_value());
  RC_ASSERT(std::abs(catenary_sag(metres(span), *parameter)->metres() / (ratio * span) - 1.0) < 1e-12);
}

} // namespace
} // namespace sheerpole::inextensible_catenary_test
