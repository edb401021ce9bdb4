#include "unit/elaborate/understood.hpp"

#include <gmock/gmock.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <charconv>
#include <cmath>

namespace sheerpole::expression_test {
namespace {

using rig_test::Understood;
using testing::ElementsAre;
using testing::IsEmpty;

/// The length of a part as the text says it, behind the lets of the lines before.
Sourced<Length> length_of(const std::string& value, const std::string& lets = "") {
  const Understood rig("language 1\n" + lets + "toggle toggle-12 {\n  length: " + value + "\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty()) << value;
  if (rig.rig.parts.empty())
    return {};
  return *rig.rig.parts[0].length;
}

double millimetres(const std::string& value, const std::string& lets = "") {
  return length_of(value, lets).value.millimetres();
}

TEST(Expressions, FollowTheOrderOfArithmetic) {
  EXPECT_DOUBLE_EQ(millimetres("10 mm + 2 * 30 mm"), 70.0);
  EXPECT_DOUBLE_EQ(millimetres("(10 mm + 2 mm) * 3"), 36.0);
  EXPECT_DOUBLE_EQ(millimetres("100 mm - 30 mm - 20 mm"), 50.0);
  EXPECT_DOUBLE_EQ(millimetres("100 mm / 4 / 5"), 5.0);
  EXPECT_DOUBLE_EQ(millimetres("-(10 mm - 30 mm)"), 20.0);
  EXPECT_DOUBLE_EQ(millimetres("50 mm + 50 %* 20 mm"), 60.0);
}

TEST(Expressions, KeepTrackOfDimensions) {
  EXPECT_DOUBLE_EQ(millimetres("2 m * 3 m / (6 m)", ""), 1000.0);
  EXPECT_DOUBLE_EQ(millimetres("100 mm * (3 kN / (6 kN))"), 50.0);
  // 1 in is 25.4 mm exactly (international yard and pound agreement of 1959).
  EXPECT_DOUBLE_EQ(millimetres("1 in + 1 ft"), 330.2);
}

TEST(Expressions, NamesStandForTheirValues) {
  EXPECT_DOUBLE_EQ(millimetres("drop * parts + drop", "let parts = 3\nlet drop = 12 mm\n"), 48.0);
  EXPECT_DOUBLE_EQ(millimetres("c", "let c = b + 1 mm\nlet b = a + 1 mm\nlet a = 1 mm\n"), 3.0);
}

TEST(Expressions, PlacesAreAddedAndStretched) {
  const Understood rig("language 1\n"
                       "let up = (0, 0, 1) m\n"
                       "points {\n"
                       "  tip: (1, 2, 3) m\n"
                       "  a: tip + up * 2 - (10 mm, 20 mm, 30 mm)\n"
                       "  b: (tip + up) / 2\n"
                       "  c: -tip\n"
                       "  d: 2 * tip\n"
                       "}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  std::vector<double> numbers;
  for (std::size_t i = 1; i < rig.rig.points.size(); ++i)
    for (const Length length :
         {rig.rig.points[i].position.x, rig.rig.points[i].position.y, rig.rig.points[i].position.z})
      numbers.push_back(length.metres());
  using testing::DoubleEq;
  EXPECT_THAT(numbers, ElementsAre(DoubleEq(0.99), DoubleEq(1.98), DoubleEq(4.97), DoubleEq(0.5),
                                   DoubleEq(1), DoubleEq(2), DoubleEq(-1), DoubleEq(-2), DoubleEq(-3),
                                   DoubleEq(2), DoubleEq(4), DoubleEq(6)));
}

/// The reference temperature in kelvin.
double kelvin(const std::string& value) {
  const Understood rig("language 1\nboat \"Tern\" {\n  reference-temperature: " + value + "\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty()) << value;
  return rig.rig.boat.particulars.at(0).value.value.si;
}

TEST(Expressions, TemperaturesArePointsOnAScale) {
  // 0 degC is 273.15 K exactly (ITS-90, SI brochure); 32 degF is 0 degC.
  EXPECT_DOUBLE_EQ(kelvin("20 degC"), 293.15);
  EXPECT_DOUBLE_EQ(kelvin("-10 degC"), 263.15);
  EXPECT_DOUBLE_EQ(kelvin("20 degC + 15 K"), 308.15);
  EXPECT_DOUBLE_EQ(kelvin("20 degC + (30 degC - 25 degC)"), 298.15);
  EXPECT_NEAR(kelvin("68 degF"), 293.15, 1e-9);
  EXPECT_NEAR(kelvin("-40 degF"), 233.15, 1e-9); // the two scales meet at -40
}

TEST(Expressions, SharesAndRopeDiameters) {
  const Understood rig(
      "language 1\nsplice long-bury {\n  bury: 2 fids + 30 d\n  contraction: 100 % - 92 %\n"
      "  recovered: 0.6\n  tail-to-trim: 20 mm\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  const Splice& splice = rig.rig.splices.at(0);
  // A fid is 21 diameters of the rope (common practice, no source): 2 * 21 + 30 = 72.
  EXPECT_DOUBLE_EQ(splice.bury.value.amount, 72.0);
  EXPECT_TRUE(splice.bury.value.in_diameters);
  EXPECT_NEAR(splice.contraction->value, 0.08, 1e-12);
  EXPECT_DOUBLE_EQ(splice.recovered->value, 0.6);
  EXPECT_FALSE(splice.tail_to_trim->value.in_diameters);
  EXPECT_DOUBLE_EQ(splice.tail_to_trim->value.amount, 0.020);
}

TEST(Tolerances, StandBesideTheValue) {
  const Sourced<Length> length = length_of("82 mm ± 2 mm measured \"caliper\"");
  EXPECT_DOUBLE_EQ(length.value.millimetres(), 82.0);
  EXPECT_DOUBLE_EQ(length.tolerance->millimetres(), 2.0);
  EXPECT_EQ(length.provenance.written, "82 mm ± 2 mm");
  EXPECT_EQ(length.provenance.source_class, SourceClass::measured);
  EXPECT_DOUBLE_EQ(length_of("82 mm +- 1/16 in").tolerance->inches(), 0.0625);
  EXPECT_FALSE(length_of("82 mm").tolerance);
}

TEST(Tolerances, OfNamedValuesAreCarriedAlongAsBounds) {
  const std::string lets = "let a = 100 mm ± 2 mm\nlet b = 50 mm ± 1 mm\n";
  EXPECT_DOUBLE_EQ(length_of("a", lets).tolerance->millimetres(), 2.0);
  EXPECT_DOUBLE_EQ(length_of("a + b", lets).tolerance->millimetres(), 3.0);
  EXPECT_DOUBLE_EQ(length_of("a - b", lets).tolerance->millimetres(), 3.0);
  EXPECT_DOUBLE_EQ(length_of("a * 3", lets).tolerance->millimetres(), 6.0);
  EXPECT_DOUBLE_EQ(length_of("-(b - a)", lets).tolerance->millimetres(), 3.0);
  EXPECT_DOUBLE_EQ(length_of("a / 4 + 1 mm", lets).tolerance->millimetres(), 0.5);
  EXPECT_DOUBLE_EQ(length_of("a + b ± 5 mm", lets).tolerance->millimetres(), 5.0);
}

std::string shortest_text(double value) {
  char buffer[64];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed).ptr;
  return {buffer, end};
}

/// A sum of products of numbers of up to five digits, as text and as a double worked out by the C++
/// compiler's own arithmetic in the same order.
struct Sum {
  std::string text;
  double value = 0.0;
};

double any_number() {
  return *rc::gen::inRange(1, 100'000) / 1000.0;
}

Sum any_product() {
  Sum result;
  result.value = any_number();
  result.text = shortest_text(result.value);
  const int factors = *rc::gen::inRange(0, 3);
  for (int i = 0; i < factors; ++i) {
    const double factor = any_number();
    const bool divide = *rc::gen::arbitrary<bool>();
    result.value = divide ? result.value / factor : result.value * factor;
    result.text += (divide ? " / " : " * ") + shortest_text(factor);
  }
  return result;
}

RC_GTEST_PROP(Expressions, AgreeWithPlainArithmetic, ()) {
  Sum sum = any_product();
  const int terms = *rc::gen::inRange(0, 4);
  for (int i = 0; i < terms; ++i) {
    const Sum term = any_product();
    const bool minus = *rc::gen::arbitrary<bool>();
    sum.value = minus ? sum.value - term.value : sum.value + term.value;
    sum.text += (minus ? " - " : " + ") + term.text;
  }
  // A length of 1 m times the sum, in a property without a lower bound near it.
  const Understood rig("language 1\npoints {\n  tip: (0 m, 0 m, (" + sum.text + ") * 1 m)\n}\n");
  RC_ASSERT(rig.findings().empty());
  RC_ASSERT(rig.rig.points.at(0).position.z.metres() == sum.value);
}

} // namespace
} // namespace sheerpole::expression_test
