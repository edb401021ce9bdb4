#include "calculate/length/pin_to_pin.hpp"

#include "kinds/kind_row.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/share.hpp"
#include "wording/print_phases.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <optional>
#include <string>
#include <vector>

// Which length wins: common practice, no source; docs/calculations/pin-to-pin.md says it in words.
namespace sheerpole::precedence_test {
namespace {

using test::compiled;
using test::found;

/// One way to the length of a stay. No two come within 5 mm of each other.
struct Way {
  std::string name;
  std::string in_stay;                  ///< a property of the stay; empty: it is a reading
  std::string in_reading = {};          ///< what the reading states beside its date
  std::optional<double> length_mm = {}; ///< nothing: X
  LengthRoute route = LengthRoute::reading;

  bool reading() const { return in_stay.empty(); }
};

const std::vector<Way>& ways() {
  static const std::vector<Way> all{
      {"cord", "", "method: messenger  mark: \"red whipping\"", std::nullopt, LengthRoute::unknown},
      {"tape", "", "method: tape  runs: 11_600 mm", 11600.0},
      {"old stay", "", "method: old-stay  runs: 11_610 mm", 11610.0},
      {"laser", "", "method: laser  runs: 11_620 mm", 11620.0},
      {"cord on the bench", "", "method: messenger  mark: \"red\"  cord-length: 11_590 mm", 11590.0},
      {"stated", "pin-to-pin: 11_630 mm drawn", "", 11630.0, LengthRoute::stated},
      {"assumed", "pin-to-pin: 11_640 mm assumed", "", 11640.0, LengthRoute::stated},
      {"path", "path: tang > stem", "", 11650.0, LengthRoute::path},
  };
  return all;
}

std::string rig_of(const std::vector<std::string>& in_stay, const std::vector<std::string>& readings) {
  std::string text = "language 1\n"
                     "wire wire-6 {  construction: \"1x19\"  size: \"6 mm\"  }\n"
                     "points {  tang: (0, 0, 11_650) mm drawn  stem: (0, 0, 0) mm drawn  }\n"
                     "stay forestay {\n";
  for (const std::string& one : in_stay)
    text += one + "\n";
  text += "line: wire-6\nstack {\nline\n}\n}\n";
  for (const std::string& one : readings)
    text += "reading of forestay {\n" + one + "\n}\n";
  return test::unfolded(text);
}

/// What came of a rig, as far as which length won is concerned.
struct Outcome {
  LengthRoute route = LengthRoute::unknown;
  bool unknown = false;
  double known_mm = 0.0;
  int contradictions = 0;
  bool draft_by_contradiction = false;

  friend bool operator==(const Outcome&, const Outcome&) = default;
};

Outcome outcome_of(const std::string& text) {
  const Compilation rig = compiled(text);
  Outcome result;
  if (!rig.checked) {
    ADD_FAILURE() << text;
    return result;
  }
  const DerivedStay& stay = rig.derived->stays.at(0);
  result.route = stay.route;
  result.unknown = stay.pin_to_pin.unknown;
  result.known_mm = stay.pin_to_pin.known().millimetres();
  for (const Diagnostic& finding : rig.findings)
    result.contradictions += finding.slug == "readings-contradict" ? 1 : 0;
  for (const DraftReason& reason : rig.checked->draft_reasons(stay.pieces.at(0)))
    result.draft_by_contradiction =
        result.draft_by_contradiction || reason.reason == "two readings contradict each other";
  return result;
}

std::string text_of(const Way& a, const std::string& date_a, const Way& b, const std::string& date_b) {
  std::vector<std::string> in_stay;
  std::vector<std::string> readings;
  for (const auto& [way, date] : {std::pair(&a, &date_a), std::pair(&b, &date_b)})
    if (way->reading())
      readings.push_back(way->in_reading + (date->empty() ? "" : "  date: " + *date));
    else
      in_stay.push_back(way->in_stay);
  return rig_of(in_stay, readings);
}

/// The winner by the rule as it is documented; with `tie` nothing tells which of two readings counts, and a
/// cord without a number is taken, so that no number invites a cut.
struct Expected {
  const Way* winner = nullptr;
  bool tie = false;
};
Expected expected(const Way& a, const std::string& date_a, const Way& b, const std::string& date_b) {
  if (a.reading() != b.reading())
    return {a.reading() ? &a : &b, false};
  if (!a.reading())
    return {a.route == LengthRoute::stated ? &a : &b, false};
  if (!date_a.empty() && !date_b.empty() && date_a != date_b)
    return {date_a > date_b ? &a : &b, false};
  if (!a.length_mm || !b.length_mm)
    return {!a.length_mm ? &a : &b, true};
  return {nullptr, true}; // which of the two is printed is told by the next test
}

TEST(Precedence, EveryPairOfWaysWithAndWithoutDatesInBothOrders) {
  const std::vector<std::string> dates{"", "2026-05-02", "2026-06-02"};
  int pairs = 0;
  int ties = 0;
  for (const Way& a : ways())
    for (const Way& b : ways()) {
      const bool one_property = !a.reading() && !b.reading() && a.route == b.route;
      if (&a == &b || one_property)
        continue;
      for (const std::string& date_a : dates)
        for (const std::string& date_b : dates) {
          if ((!a.reading() && !date_a.empty()) || (!b.reading() && !date_b.empty()))
            continue;
          SCOPED_TRACE(a.name + " " + date_a + ", " + b.name + " " + date_b);
          const Outcome outcome = outcome_of(text_of(a, date_a, b, date_b));
          EXPECT_EQ(outcome, outcome_of(text_of(b, date_b, a, date_a))) << "the order in the file counts";
          const Expected wanted = expected(a, date_a, b, date_b);
          EXPECT_EQ(outcome.contradictions, wanted.tie ? 1 : 0);
          EXPECT_EQ(outcome.draft_by_contradiction, wanted.tie);
          ++pairs;
          ties += wanted.tie ? 1 : 0;
          if (wanted.winner == nullptr)
            continue;
          EXPECT_EQ(outcome.route, wanted.winner->route);
          EXPECT_EQ(outcome.unknown, !wanted.winner->length_mm);
          EXPECT_NEAR(outcome.known_mm, wanted.winner->length_mm.value_or(0.0), 1e-6);
        }
    }
  EXPECT_EQ(pairs, 274);
  EXPECT_GT(ties, 100);
}

TEST(Precedence, CountsYesSettlesATieInBothOrders) {
  const std::string tape = "method: tape  runs: 11_600 mm";
  const std::string laser = "method: laser  runs: 11_620 mm";
  for (const auto& readings :
       {std::vector{tape + "  counts: yes", laser}, std::vector{laser, tape + "  counts: yes"}}) {
    const Outcome outcome = outcome_of(rig_of({}, readings));
    EXPECT_EQ(outcome.contradictions, 0);
    EXPECT_NEAR(outcome.known_mm, 11600.0, 1e-6);
  }
  // Two that are both stated to count are two all the same.
  EXPECT_EQ(outcome_of(rig_of({}, {tape + "  counts: yes", laser + "  counts: yes"})).contradictions, 1);
  // What counts stands above what is later.
  const Outcome older =
      outcome_of(rig_of({}, {laser + "  date: 2026-06-02", tape + "  counts: yes  date: 2026-05-02"}));
  EXPECT_NEAR(older.known_mm, 11600.0, 1e-6);
}

// Stated bounds decide where both state them, 2 + 3 = 5 mm against 6 mm; else routes-apart, 5 mm.
TEST(Precedence, ReadingsOfOneDayAgreeWithinTheirBounds) {
  const auto apart = [](const std::string& a, const std::string& b) {
    return outcome_of(rig_of({}, {"method: tape  runs: " + a + "  date: 2026-05-02",
                                  "method: laser  runs: " + b + "  date: 2026-05-02"}))
        .contradictions;
  };
  EXPECT_EQ(apart("11_600 mm ± 2 mm", "11_606 mm ± 3 mm"), 1);
  EXPECT_EQ(apart("11_600 mm ± 3 mm", "11_606 mm ± 3 mm"), 0);
  EXPECT_EQ(apart("11_600 mm", "11_606 mm ± 3 mm"), 1);
  EXPECT_EQ(apart("11_600 mm", "11_605 mm"), 0);
}

// A cord marked 40 mm beyond its pin and hoisted 60 mm below: 11650 = X - 40 + 60, so X ought to be 11630.
TEST(Precedence, ACordWithoutANumberMakesXAlsoWhereThereIsAPath) {
  const Compilation rig = compiled(
      rig_of({"path: tang > stem"},
             {"method: messenger  mark: \"red\"  offset: 40 mm measured  hoist-offset: 60 mm measured"}));
  const DerivedStay& stay = rig.derived->stays.at(0);
  EXPECT_TRUE(stay.pin_to_pin.unknown);
  EXPECT_NEAR(stay.pin_to_pin.known().millimetres(), 20.0, 1e-9);
  ASSERT_EQ(stay.other_routes.size(), 1u);
  ASSERT_TRUE(stay.other_routes[0].expected_x);
  EXPECT_NEAR(stay.other_routes[0].expected_x->millimetres(), 11630.0, 1e-9);
  EXPECT_TRUE(stay.pieces.at(0).cut.unknown) << "the points make no cut";
  EXPECT_FALSE(found(rig, "routes-differ"));
}

TEST(Precedence, ACordMeasuredOnTheBenchIsComparedWithThePath) {
  const std::string cord = "method: messenger  mark: \"red\"  offset: 40 mm measured  cord-length: ";
  const Compilation good = compiled(rig_of({"path: tang > stem"}, {cord + "11_692 mm"}));
  EXPECT_NEAR(good.derived->stays.at(0).pin_to_pin.known().millimetres(), 11652.0, 1e-9);
  EXPECT_FALSE(good.derived->stays.at(0).pin_to_pin.unknown);
  EXPECT_FALSE(found(good, "routes-differ"));
  EXPECT_TRUE(found(compiled(rig_of({"path: tang > stem"}, {cord + "11_592 mm"})), "routes-differ"));
}

/// Everything that is worked out or said of a rig.
std::string all_said(const Compilation& rig) {
  std::string text = print_derived(*rig.rig, *rig.derived);
  for (const DerivedStay& stay : rig.derived->stays)
    for (const std::string& words : say_each(*rig.rig, stay.not_corrected))
      text += words + "\n";
  for (const CheckResult& result : rig.results->all)
    text += result.check + " " + result.words + "\n";
  for (const UncertainInput& input : rig.derived->inputs)
    text += say(*rig.rig, input.name) + " " + std::to_string(input.bound) + "\n";
  return text;
}

/// The rig with one reading; nothing when it is refused.
std::optional<std::string> said_with(const std::string& reading, std::string& refused) {
  const Compilation rig = test::tried(test::unfolded(
      "language 1\n"
      "boat \"Tern\" { report-date: 2026-11-01 }\n"
      "cord orange {  knot-width: 6 mm  }\n"
      "wire wire-6 {  construction: \"1x19\"  size: \"6 mm\"  stiffness: 2_000 kN maker  }\n"
      "tape long-tape {  nominal-length: 15 m  true-length: 15.002 m measured  standard-temperature: 20 "
      "degC"
      "  standard-pull: 60 N  thermal: 11.6 ppm/K  section: 2.6 mm2  modulus: 200 GPa  linear-mass: 20 g/m "
      " }\n"
      "stay forestay {  line: wire-6  dock-tension: 3 kN measured  bench-tension: 200 N measured"
      "  estimate: 11.7 m drawn  stack {  line  }  }\n"
      "reading of forestay {  " +
      reading + "  }\n"));
  for (const Diagnostic& finding : rig.findings)
    if (finding.severity == Severity::error)
      refused += finding.slug + " ";
  if (!rig.derived || !refused.empty())
    return std::nullopt;
  return all_said(rig);
}

// Each property of a reading, with each method, of a number and of a mark, beside nothing and beside each
// other property: it moves or says something, or it is refused by its name.
TEST(Precedence, WhateverAReadingStatesActsOrIsRefused) {
  const std::vector<std::string> for_the_record{"method", "date", "by", "note", "counts"};
  const KindRow* kind = find_kind("reading");
  ASSERT_NE(kind, nullptr);
  int acted = 0;
  int refusals = 0;
  std::size_t number = 0;
  for (const std::string method : {"tape", "messenger", "old-stay", "laser"})
    for (const std::string length :
         {"runs: 11_640 mm, 11_642 mm", "mark: \"red\"", "mark: \"red\"  cord-length: 11.64 m"})
      for (const PropertyRow& beside : kind->properties) {
        if (length.find(std::string(beside.name) + ":") != std::string::npos || beside.name == "method" ||
            !test::is_tried(number++))
          continue;
        const std::string base = "method: " + method + "  " + length + "  " + std::string(beside.name) +
                                 ": " + std::string(beside.example);
        std::string refused_without;
        const auto without = said_with(base, refused_without);
        if (!without)
          continue; // refused as it is
        for (const PropertyRow& row : kind->properties) {
          const std::string name(row.name);
          const auto is_in = [](const std::vector<std::string>& names, std::string_view one) {
            return std::find(names.begin(), names.end(), one) != names.end();
          };
          if (is_in(for_the_record, name) || length.find(name + ":") != std::string::npos ||
              beside.name == row.name)
            continue;
          std::string refused;
          const auto with = said_with(base + "  " + name + ": " + std::string(row.example), refused);
          if (!with) {
            const std::string first = refused.substr(0, refused.find(' '));
            EXPECT_TRUE(
                is_in({"reading-property-idle", "knots-without-cord", "cord-by-other-method"}, first))
                << base << " with " << name << ": " << refused;
            ++refusals;
            continue;
          }
          EXPECT_NE(*with, *without) << base << " with " << name << " is as if it had not been stated";
          ++acted;
        }
      }
  EXPECT_GT(acted, 100 / static_cast<int>(test::one_case_in));
  EXPECT_GT(refusals, 50 / static_cast<int>(test::one_case_in));
}

} // namespace
} // namespace sheerpole::precedence_test
