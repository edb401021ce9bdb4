#include "service/begin/first_rig.hpp"

#include "driver/built_in_backends.hpp"
#include "driver/terminal.hpp"
#include "service/compile.hpp"
#include "syntax/tidy.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

// Each kind of rig, in wire and in rope, measured by cord, by tape and from a drawing: what comes of its
// first file.
namespace sheerpole::first_rig_test {
namespace {

FirstNumbers first_of(const RigStart& start, FirstLine line, FirstMeasure way) {
  FirstNumbers first;
  first.rig = start.name;
  first.line = line;
  first.measured_by = way;
  first.numbers.insert(start.example.begin(), start.example.end());
  return first;
}

Compilation compiled(const std::string& text) {
  OneTextReader reader("boat.rig", text);
  return compile("boat.rig", reader, {});
}

std::string said(const Compilation& made) {
  return show_findings(made, "lines", false);
}

std::string tidied(const std::string& text) {
  OneTextReader reader("boat.rig", text);
  const auto source = load("boat.rig", SourceId{0}, reader);
  DiagnosticSink sink;
  return tidy(source.value(), sink).value_or("");
}

class FirstRig : public testing::TestWithParam<std::string> {};

template <class Try>
void each_way(const std::string& rig, const Try& tried) {
  const RigStart& start = rig_start(rig);
  for (const FirstLine line : {FirstLine::wire, FirstLine::rope})
    for (const FirstMeasure way : {FirstMeasure::cord, FirstMeasure::tape, FirstMeasure::drawing}) {
      SCOPED_TRACE(testing::Message() << rig << (line == FirstLine::wire ? ", wire, " : ", rope, ")
                                      << (way == FirstMeasure::cord   ? "cord"
                                          : way == FirstMeasure::tape ? "tape"
                                                                      : "drawing"));
      tried(first_rig(first_of(start, line, way)), way);
    }
}

/// What is found besides what is assumed is true of the boat, and not of her first file.
void find_no_fault_of_the_file(const Compilation& made) {
  EXPECT_LE(made.findings.size(), 3u) << said(made);
  const std::set<std::string> of_the_boat{"assumed-input", "pair-differs"};
  for (const Diagnostic& finding : made.findings)
    EXPECT_EQ(of_the_boat.count(finding.slug), 1u) << said(made);
}

void cut_nothing(const Compilation& made, FirstMeasure way) {
  for (const DerivedStay& stay : made.derived->stays) {
    EXPECT_FALSE(stay.measurement.in_place());
    EXPECT_EQ(stay.pin_to_pin.unknown, way == FirstMeasure::cord);
    for (const Piece& piece : stay.pieces)
      EXPECT_FALSE(made.checked->draft_reasons(piece).empty()) << piece.name;
  }
}

TEST_P(FirstRig, IsTidyFindsAtMostThreeThingsCutsNothingAndMakesEveryPaper) {
  const Backends backends = usual_backends();
  each_way(GetParam(), [&](const std::string& text, FirstMeasure way) {
    EXPECT_EQ(tidied(text), text);
    const Compilation made = compiled(text);
    ASSERT_TRUE(made.checked) << said(made);
    find_no_fault_of_the_file(made);
    cut_nothing(made, way);
    OutputBundle bundle;
    FileClaims claims;
    EXPECT_EQ(make_papers(backends, {.checked = *made.checked, .name = "boat.rig"}, claims, bundle,
                          [](const std::string&) {}),
              "");
    EXPECT_GT(bundle.files.size(), 10u);
  });
}

/// So it is with a smaller and with a larger boat of the same shape.
TEST_P(FirstRig, FindsAtMostThreeThingsAtEachSize) {
  const RigStart& start = rig_start(GetParam());
  for (const double scale : {0.6, 2.0}) {
    FirstNumbers first = first_of(start, FirstLine::wire, FirstMeasure::drawing);
    for (auto& [name, value] : first.numbers)
      value = std::to_string(std::stod(value) * scale) + " m";
    const Compilation made = compiled(first_rig(first));
    ASSERT_TRUE(made.checked) << said(made);
    find_no_fault_of_the_file(made);
  }
}

std::vector<std::string> all_rigs() {
  std::vector<std::string> names;
  for (const RigStart& one : rig_starts())
    names.push_back(one.name);
  return names;
}

INSTANTIATE_TEST_SUITE_P(Each, FirstRig, testing::ValuesIn(all_rigs()), [](const auto& info) {
  std::string name = info.param;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

} // namespace
} // namespace sheerpole::first_rig_test
