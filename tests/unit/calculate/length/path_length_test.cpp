#include "calculate/length/path_length.hpp"

#include "unit/calculate/rig_builder.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace sheerpole::path_length_test {
namespace {

using namespace build;

Rig rig_through(std::initializer_list<std::array<double, 3>> places) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(6)));
  Stay made = stay("stay", line_material, {line()});
  std::uint32_t place = 910;
  for (const auto& [x, y, z] : places)
    made.path.push_back({builder.point("p" + std::to_string(place), x, y, z), Passage::free, at(place++)});
  builder.add(std::move(made));
  return builder.rig;
}

// Pythagorean quadruples: 1-2-2-3, 2-3-6-7, 4-4-7-9.
TEST(PathLength, SumsTheSegmentsInSpace) {
  const Rig rig = rig_through({{0, 0, 0}, {100, 200, 200}, {300, 500, 800}, {700, 100, 1500}});
  const auto sum = path_length(rig, rig.stays[0]);
  ASSERT_TRUE(sum);
  ASSERT_EQ(sum->terms.size(), 3u);
  EXPECT_NEAR(sum->terms[0].amount.millimetres(), 300, 1e-9);
  EXPECT_NEAR(sum->terms[1].amount.millimetres(), 700, 1e-9);
  EXPECT_NEAR(sum->terms[2].amount.millimetres(), 900, 1e-9);
  EXPECT_NEAR(sum->known().millimetres(), 1900, 1e-9);
  EXPECT_EQ(term_name(rig, sum->terms[0]), "p910 to p911");
}

TEST(PathLength, IsNothingWithoutAPath) {
  const Rig none = rig_through({});
  EXPECT_FALSE(path_length(none, none.stays[0]));
  const Rig one = rig_through({{1, 2, 3}});
  EXPECT_FALSE(path_length(one, one.stays[0]));
}

TEST(PathLength, NamesPointsWithoutTheirSideAndCarriesTheirAssumptions) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(6)));
  Stay made = stay("cap-shroud", line_material, {line()}, Side::port);
  made.path = path({builder.point("cap-tang", 0, -70, 12000, from(SourceClass::drawn), Side::port),
                    builder.point("tip-2", 0, -820, 9000, assumed("tip-2"), Side::port),
                    builder.point("plate-a", 0, -1430, 1100, assumed("plate-a"), Side::port)});
  builder.add(made);
  const auto sum = path_length(builder.rig, builder.rig.stays[0]);
  ASSERT_TRUE(sum);
  EXPECT_EQ(term_name(builder.rig, sum->terms[0]), "cap-tang to tip-2");
  EXPECT_EQ(sum->terms[0].provenance.source_class, SourceClass::computed);
  EXPECT_EQ(note_words(sum->terms[0].provenance), "from points");
  EXPECT_EQ(sum->terms[0].provenance.assumptions, std::vector<std::string>{"tip-2"});
  EXPECT_EQ(sum->terms[1].provenance.assumptions, (std::vector<std::string>{"tip-2", "plate-a"}));
}

double any_coordinate() {
  return *rc::gen::inRange(-20'000'000, 20'000'000) / 1000.0;
} // mm, to the micrometre

RC_GTEST_PROP(PathLength, ChangesWithAPointAsTheDerivativeSays, ()) {
  const std::array<double, 3> a{any_coordinate(), any_coordinate(), any_coordinate()};
  const std::array<double, 3> b{any_coordinate(), any_coordinate(), any_coordinate()};
  const std::array<double, 3> c{any_coordinate(), any_coordinate(), any_coordinate()};
  const auto apart = [](const auto& p, const auto& q) {
    return std::sqrt((p[0] - q[0]) * (p[0] - q[0]) + (p[1] - q[1]) * (p[1] - q[1]) +
                     (p[2] - q[2]) * (p[2] - q[2]));
  };
  RC_PRE(apart(a, b) > 1.0 && apart(b, c) > 1.0);
  const double step = 1e-3;
  const auto length_with = [&](double x) {
    const Rig rig = rig_through({a, {x, b[1], b[2]}, c});
    return path_length(rig, rig.stays[0])->known().millimetres();
  };
  // The sum of the direction cosines of both segments at the middle point.
  const double expected = (b[0] - a[0]) / apart(a, b) + (b[0] - c[0]) / apart(b, c);
  const double measured = (length_with(b[0] + step) - length_with(b[0] - step)) / (2 * step);
  RC_ASSERT(std::abs(measured - expected) < 1e-4 + 1e-3 * step / std::min(apart(a, b), apart(b, c)) * 1e3);
}

} // namespace
} // namespace sheerpole::path_length_test
