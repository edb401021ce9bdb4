#include "units/thread.hpp"

#include <gtest/gtest.h>

#include <set>
#include <vector>

namespace sheerpole::thread_test {
namespace {

struct InchThread {
  std::string designation;
  double diameter; ///< in
  double threads_per_inch;
};

// From memory of ASME B1.1, table of standard series: fine (UNF), coarse (UNC), and the special 1-14 (UNS).
const std::vector<InchThread> asme_b1_1{
    {"1/4-28 UNF", 0.25, 28},    {"5/16-24 UNF", 0.3125, 24}, {"3/8-24 UNF", 0.375, 24},
    {"7/16-20 UNF", 0.4375, 20}, {"1/2-20 UNF", 0.5, 20},     {"9/16-18 UNF", 0.5625, 18},
    {"5/8-18 UNF", 0.625, 18},   {"3/4-16 UNF", 0.75, 16},    {"7/8-14 UNF", 0.875, 14},
    {"1-12 UNF", 1.0, 12},       {"1-14 UNS", 1.0, 14},       {"1/4-20 UNC", 0.25, 20},
    {"5/16-18 UNC", 0.3125, 18}, {"3/8-16 UNC", 0.375, 16},   {"7/16-14 UNC", 0.4375, 14},
    {"1/2-13 UNC", 0.5, 13},     {"9/16-12 UNC", 0.5625, 12}, {"5/8-11 UNC", 0.625, 11},
    {"3/4-10 UNC", 0.75, 10},    {"7/8-9 UNC", 0.875, 9},     {"1-8 UNC", 1.0, 8},
};

struct MetricThread {
  std::string designation;
  double diameter; ///< mm
  double pitch;    ///< mm
};

// From memory of ISO 261, table 2; the fine ones are the selection of ISO 262, with M5 x 0.5 and M6 x 0.75.
const std::vector<MetricThread> iso_261{
    {"M5", 5, 0.8},           {"M6", 6, 1},           {"M8", 8, 1.25},        {"M10", 10, 1.5},
    {"M12", 12, 1.75},        {"M14", 14, 2},         {"M16", 16, 2},         {"M18", 18, 2.5},
    {"M20", 20, 2.5},         {"M22", 22, 2.5},       {"M24", 24, 3},         {"M27", 27, 3},
    {"M30", 30, 3.5},         {"M5 x 0.5", 5, 0.5},   {"M6 x 0.75", 6, 0.75}, {"M8 x 1", 8, 1},
    {"M10 x 1.25", 10, 1.25}, {"M10 x 1", 10, 1},     {"M12 x 1.5", 12, 1.5}, {"M12 x 1.25", 12, 1.25},
    {"M14 x 1.5", 14, 1.5},   {"M16 x 1.5", 16, 1.5}, {"M18 x 2", 18, 2},     {"M18 x 1.5", 18, 1.5},
    {"M20 x 2", 20, 2},       {"M20 x 1.5", 20, 1.5}, {"M22 x 2", 22, 2},     {"M22 x 1.5", 22, 1.5},
    {"M24 x 2", 24, 2},       {"M27 x 2", 27, 2},     {"M30 x 2", 30, 2},
};

TEST(Threads, InchOnesAreThoseOfAsmeB11) {
  for (const InchThread& expected : asme_b1_1) {
    const auto thread = parse_thread(expected.designation);
    ASSERT_TRUE(thread.ok()) << expected.designation;
    EXPECT_EQ(thread.value().designation, expected.designation);
    EXPECT_EQ(thread.value().standard, "ASME B1.1");
    EXPECT_NEAR(thread.value().diameter.inches(), expected.diameter, 1e-12) << expected.designation;
    EXPECT_NEAR(thread.value().pitch.inches(), 1.0 / expected.threads_per_inch, 1e-12)
        << expected.designation;
  }
}

TEST(Threads, MetricOnesAreThoseOfIso261) {
  for (const MetricThread& expected : iso_261) {
    const auto thread = parse_thread(expected.designation);
    ASSERT_TRUE(thread.ok()) << expected.designation;
    EXPECT_EQ(thread.value().designation, expected.designation);
    EXPECT_EQ(thread.value().standard, "ISO 261");
    EXPECT_NEAR(thread.value().diameter.millimetres(), expected.diameter, 1e-12) << expected.designation;
    EXPECT_NEAR(thread.value().pitch.millimetres(), expected.pitch, 1e-12) << expected.designation;
  }
}

TEST(Threads, NoOtherIsKnown) {
  EXPECT_EQ(known_threads().size(), asme_b1_1.size() + iso_261.size());
  std::set<std::string_view> designations;
  for (const ThreadRow& row : known_threads())
    EXPECT_TRUE(designations.insert(row.designation).second) << row.designation;
}

// ISO 898-1 prints the stress areas As = pi/4 (d - 0.9382 P)^2 of coarse threads; a wrong pitch would miss
// them. From memory of ISO 898-1, table of coarse threads, mm2.
TEST(Threads, CoarsePitchesGiveThePrintedStressAreas) {
  const std::vector<std::pair<std::string, double>> printed{
      {"M5", 14.2}, {"M6", 20.1}, {"M8", 36.6}, {"M10", 58.0}, {"M12", 84.3}, {"M14", 115}, {"M16", 157},
      {"M18", 192}, {"M20", 245}, {"M22", 303}, {"M24", 353},  {"M27", 459},  {"M30", 561}};
  for (const auto& [designation, area] : printed) {
    const auto thread = parse_thread(designation);
    ASSERT_TRUE(thread.ok()) << designation;
    const double d = thread.value().diameter.millimetres() - 0.9382 * thread.value().pitch.millimetres();
    EXPECT_NEAR(0.7853981633974483 * d * d, area, area < 100 ? 0.051 : 0.51) << designation;
  }
}

TEST(Threads, AreReadInTheUsualSpellings) {
  const auto designation = [](std::string_view text) {
    const auto thread = parse_thread(text);
    return thread.ok() ? thread.value().designation : "refused: " + thread.error();
  };
  EXPECT_EQ(designation("1/2-20"), "1/2-20 UNF");
  EXPECT_EQ(designation("1/2-13"), "1/2-13 UNC");
  EXPECT_EQ(designation("1/2-20UNF"), "1/2-20 UNF");
  EXPECT_EQ(designation("1/2 - 20 UNF"), "1/2-20 UNF");
  EXPECT_EQ(designation("1-14"), "1-14 UNS");
  EXPECT_EQ(designation("M12x1.25"), "M12 x 1.25");
  EXPECT_EQ(designation("M12 x 1.25"), "M12 x 1.25");
  EXPECT_EQ(designation("M12\u00D71.25"), "M12 x 1.25");
  EXPECT_EQ(designation("M12 x 1.75"), "M12");
  EXPECT_EQ(designation(" M12 "), "M12");
}

TEST(Threads, ARefusalListsTheNearOnes) {
  const auto near = [](std::string_view text) {
    const auto thread = parse_thread(text);
    return thread.ok() ? "read as " + thread.value().designation : thread.error();
  };
  EXPECT_EQ(near("1/2"), "1/2-20 UNF, 1/2-13 UNC");
  EXPECT_EQ(near("1/2-18"), "1/2-20 UNF, 1/2-13 UNC");
  EXPECT_EQ(near("1/2-20 UNC"), "1/2-20 UNF, 1/2-13 UNC");
  EXPECT_EQ(near("1/2-20 UNF-2A"), "1/2-20 UNF, 1/2-13 UNC");
  EXPECT_EQ(near("M12 x 1"), "M12, M12 x 1.5, M12 x 1.25");
  EXPECT_EQ(near("m12"), "M12, M12 x 1.5, M12 x 1.25");
  EXPECT_EQ(near("M12 coarse"), "M12, M12 x 1.5, M12 x 1.25");
  EXPECT_EQ(near("M11"), "M10, M10 x 1.25, M10 x 1, M12, M12 x 1.5, M12 x 1.25");
  EXPECT_EQ(near("M1 2"), "");
  EXPECT_EQ(near("1 1/2-12 UNF"), "");
  EXPECT_EQ(near(""), "");
  EXPECT_EQ(near("thread"), "");
}

} // namespace
} // namespace sheerpole::thread_test
