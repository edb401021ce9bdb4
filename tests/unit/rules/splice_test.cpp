#include "unit/calculate/compiled_rig.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace sheerpole::splice_test {
namespace {

using test::compiled;

constexpr auto pass = CheckOutcome::pass;
constexpr auto finding = CheckOutcome::finding;
constexpr auto not_checked = CheckOutcome::not_checked;
using Outcomes = std::vector<CheckOutcome>;

/// A rope of 9 mm with a thimble at each end.
struct Spliced {
  std::string bury = "72 d";
  std::string splice = "";
  std::string seat = "diameter: 28 mm";
  std::string thimble = "  wrap: 159 mm\n";
  std::string limits = "";
  std::string length = "10 m";
  std::string setting = "";
  std::string construction = "12-strand";
  std::string more = "";

  Compilation rig() const { return compiled(text()); }
  std::string text() const {
    return "language 1\n" + limits + "rope rope-9 {\n  construction: \"" + construction +
           "\"\n  size: \"9 mm\"\n}\n"
           "splice bury {\n  bury: " +
           bury + "\n  contraction: 8 %\n" + splice + "}\nthimble thimble-16 {\n  length: 0 mm\n" +
           thimble + "  lower: rope-seat (" + seat +
           ")\n}\nstay shroud {\n  sides: port, starboard\n  pin-to-pin: " + length +
           "\n  line: rope-9\n  stack {\n    thimble-16 (splice: bury" + setting +
           ")\n    line\n    thimble-16 (splice: bury)\n  }\n}\n" + more;
  }
};

Outcomes of(std::string_view slug, const Spliced& spliced) {
  Outcomes result;
  const auto results = spliced.rig().results;
  for (const CheckResult& one : results->all)
    if (one.check == slug)
      result.push_back(one.outcome);
  return result;
}

/// The findings of this name, whatever their severity.
std::vector<Diagnostic> findings(std::string_view slug, const std::string& text) {
  std::vector<Diagnostic> result;
  for (const Diagnostic& one : test::tried(text).findings)
    if (one.slug == slug)
      result.push_back(one);
  return result;
}

// Common practice, no source: below 50 diameters hardly any rule goes. Both ends and both sides are said
// once.
TEST(BuryShort, BelowHardlyAnyRuleBlocks) {
  const auto of_bury = [](const std::string& bury, const std::string& splice = "") {
    return findings("bury-short", Spliced{.bury = bury, .splice = splice}.text());
  };
  EXPECT_TRUE(of_bury("50 d").empty());
  EXPECT_TRUE(of_bury("450 mm").empty()) << "50 x 9 mm";
  const auto found = of_bury("449 mm");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::error);
  EXPECT_EQ(found[0].message, "shroud: bury on rope-9 buries 449 mm, 49.9 d; at least 50 d");
  EXPECT_TRUE(of_bury("31 d", "  sort: tucked\n").empty());
  EXPECT_EQ(of_bury("31 d", "  sort: bury\n").size(), 1u);
}

constexpr const char* accepted = "accept bury-short of shroud {\n  reason: \"sheet of the rope\"\n  by: "
                                 "\"owner\"\n  until: 2027-05-01\n}\n";

TEST(BuryShort, IsAWarningWhileItIsAccepted) {
  const auto with = [](const std::string& date) {
    return findings("bury-short", Spliced{.bury = "45 d", .more = accepted}.text() +
                                      "boat \"A boat\" {\n  report-date: " + date + "\n}\n");
  };
  ASSERT_EQ(with("2026-06-01").size(), 1u);
  EXPECT_EQ(with("2026-06-01")[0].severity, Severity::warning);
  EXPECT_EQ(
      with("2026-06-01")[0].message,
      "shroud: bury on rope-9 buries 405 mm, 45 d; at least 50 d; accepted until 2027-05-01 by owner: "
      "sheet of the rope");
  EXPECT_EQ(with("2027-05-02")[0].severity, Severity::error) << "the day after the last";
}

TEST(Accept, IsForFewFindingsAndForOneThatIsThere) {
  EXPECT_EQ(findings("waiver-without-finding", Spliced{.more = accepted}.text()).size(), 1u);
  EXPECT_EQ(findings("waiver-date-not-checked", Spliced{.bury = "45 d", .more = accepted}.text()).size(),
            1u);
  std::string other = accepted;
  other.replace(other.find("bury-short"), 10, "eye-short");
  EXPECT_EQ(findings("not-to-be-accepted", Spliced{.more = other}.text()).size(), 1u);
}

// Common practice, no source: a tail goes into a hollow braid and into nothing else.
TEST(RopeNotHollow, WhereThereIsNoRoomForATail) {
  const auto of_rope = [](const std::string& construction, const std::string& splice = "") {
    return findings("rope-not-hollow", Spliced{.splice = splice, .construction = construction}.text())
        .size();
  };
  EXPECT_EQ(of_rope("12-strand HMPE"), 0u);
  EXPECT_EQ(of_rope("3-strand polyester"), 1u);
  EXPECT_EQ(of_rope("double braid polyester"), 1u);
  EXPECT_EQ(of_rope("3-strand polyester", "  sort: tucked\n"), 0u);
  EXPECT_EQ(of("rope-not-hollow", {.construction = "rope"}), Outcomes{not_checked});
  EXPECT_EQ(of("rope-not-hollow", {}), Outcomes{pass});
}

TEST(BuryBelowUsual, IsSaidOnlyWhenItIsNotShort) {
  EXPECT_EQ(of("bury-below-usual", {.bury = "72 d"}), Outcomes{pass});
  EXPECT_EQ(of("bury-below-usual", {.bury = "71 d"}), Outcomes{finding});
  EXPECT_EQ(of("bury-below-usual", {.bury = "50 d"}), Outcomes{finding});
  EXPECT_EQ(of("bury-below-usual", {.bury = "25 1/2 in"}), Outcomes{pass})
      << "647.7 mm, 71.97 d: 72 by tape";
  EXPECT_TRUE(findings("bury-below-usual", Spliced{.bury = "49 d"}.text()).empty());
  EXPECT_EQ(of("bury-below-usual", {.bury = "49 d", .limits = "limits {\n  bury-least: off\n}\n"}),
            Outcomes{finding});
  const Outcomes off =
      of("bury-below-usual", {.bury = "62 d", .limits = "limits {\n  bury-usual: off\n}\n"});
  EXPECT_EQ(off, Outcomes{not_checked});
}

// Common practice, no source: 15 % of 72 d is 10.8 d.
TEST(TaperShort, IsAShareOfTheBury) {
  EXPECT_EQ(of("taper-short", {}), Outcomes{not_checked});
  EXPECT_EQ(of("taper-short", {.splice = "  taper-over: 10.8 d\n"}), Outcomes{pass});
  EXPECT_EQ(of("taper-short", {.splice = "  taper-over: 97 mm\n"}), Outcomes{finding});
}

TEST(SpliceNotLocked, IsFoundOnlyWhenStated) {
  EXPECT_EQ(of("splice-not-locked", {}), Outcomes{not_checked});
  EXPECT_EQ(of("splice-not-locked", {.splice = "  locking: \"none\"\n"}), Outcomes{finding});
  EXPECT_EQ(of("splice-not-locked", {.splice = "  locking: \"lock stitch\"\n"}), Outcomes{pass});
  EXPECT_EQ(of("splice-not-locked", {.splice = "  locking: \"maybe\"\n"}), Outcomes{not_checked});
  EXPECT_EQ(of("locking-unclear", {.splice = "  locking: \"maybe\"\n"}), Outcomes{finding});
  EXPECT_EQ(of("locking-unclear", {.splice = "  locking: \"None\"\n"}), Outcomes{pass});
}

std::vector<std::string> overlaps(const std::string& length, const std::string& throat = "",
                                  const std::string& setting = "") {
  const std::string text =
      "language 1\nrope rope-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n"
      "splice bury {\n  bury: 72 d\n  contraction: 8 %\n}\n"
      "thimble thimble-16 {\n  length: 0 mm\n  wrap: 159 mm\n  lower: rope-seat (diameter: 20 mm" +
      throat + ")\n}\nstay shroud {\n  pin-to-pin: " + length +
      "\n  line: rope-9\n  stack {\n    thimble-16 (splice: bury" + setting +
      ")\n    line\n    thimble-16 (splice: bury)\n  }\n}\n";
  std::vector<std::string> result;
  for (const Diagnostic& one : findings("burys-overlap", text))
    result.push_back(one.message);
  return result;
}

// Arithmetic: two tails of 648 mm are 1296 mm. With throats 90 + 10 mm from the bearing at each end 200 mm
// more, with 100 mm of rope kept for later another 100 mm.
TEST(BurysOverlap, WhenTheTailsAreLongerThanWhatLiesBetween) {
  EXPECT_TRUE(overlaps("1296 mm").empty());
  EXPECT_EQ(overlaps("1295 mm").size(), 1u);
  EXPECT_TRUE(overlaps("1496 mm", ", throat: 90 mm").empty());
  EXPECT_EQ(overlaps("1495 mm", ", throat: 90 mm").size(), 1u);
  EXPECT_TRUE(overlaps("1396 mm", "", ", spare-bury: 100 mm").empty());
  EXPECT_EQ(overlaps("1395 mm", "", ", spare-bury: 100 mm").size(), 1u);
}

/// The findings about the size of an eye; one at most, whatever comes of it.
std::vector<std::string> eye_findings(const Spliced& spliced) {
  std::vector<std::string> result;
  for (const Diagnostic& one : spliced.rig().findings)
    if (one.slug.starts_with("eye-"))
      result.push_back(one.slug);
  return result;
}

// Common practice, no source: three times the seat at least, five times usual, half angle 15 degrees.
// Geometry: a seat of 28 mm with its throat 70 mm from the centre is 84 mm long; asin(18.5 / 70) is 15.3
// degrees, asin(18.5 / 71.5) 14.997 degrees.
TEST(EyeSizes, AreSaidOnceAndTheWorstFirst) {
  const auto with = [](const char* throat) {
    return eye_findings({.seat = std::string("diameter: 28 mm, throat: ") + throat, .thimble = ""});
  };
  EXPECT_EQ(with("69.9 mm"), std::vector<std::string>{"eye-short"});
  EXPECT_EQ(with("70 mm"), std::vector<std::string>{"eye-angle-wide"});
  EXPECT_EQ(with("71.5 mm"), std::vector<std::string>{"eye-below-usual"});
  EXPECT_EQ(with("125.9 mm"), std::vector<std::string>{"eye-below-usual"});
  EXPECT_TRUE(with("126 mm").empty());
  EXPECT_TRUE(
      eye_findings({.seat = "diameter: 28 mm, throat: 38 mm", .thimble = "  shape: pear\n"}).empty());
}

TEST(EyeSizes, AreNotCheckedWithoutAThroat) {
  for (const char* slug : {"eye-short", "eye-below-usual", "eye-angle-wide"})
    EXPECT_EQ(of(slug, {}), Outcomes{not_checked}) << slug;
}

// Geometry: round a seat of 28 mm with its throat at 38 mm a rope of 9 mm uses 87.42 mm; test wraps 5 mm to
// either side of it are as good, farther off they are not.
TEST(EyeWaysDiffer, ByMoreThanTheLimit) {
  const auto with = [](const char* wrap) {
    return of("eye-ways-differ", {.seat = "diameter: 28 mm, throat: 38 mm",
                                  .thimble = std::string("  shape: pear\n  wrap: ") + wrap + "\n"});
  };
  EXPECT_EQ(with("92.4 mm"), Outcomes{pass});
  EXPECT_EQ(with("92.5 mm"), Outcomes{finding});
  EXPECT_EQ(with("82.5 mm"), Outcomes{pass});
  EXPECT_EQ(with("82.4 mm"), Outcomes{finding});
  EXPECT_TRUE(of("eye-ways-differ", {}).empty()) << "one way only";
}

// The same geometry: a length that the splice states was measured round some seat, and is held against this
// one; so many diameters are a rule. By more than three diameters of the 9 mm rope it was another seat.
TEST(EyeWaysDiffer, AlsoByWhatTheSpliceStates) {
  const auto with = [](const char* allowance) {
    return Spliced{.splice = std::string("  eye-allowance: ") + allowance + "\n",
                   .seat = "diameter: 28 mm, throat: 38 mm",
                   .thimble = "  shape: pear\n"};
  };
  EXPECT_EQ(of("eye-ways-differ", with("92.4 mm")), Outcomes{pass});
  EXPECT_EQ(of("eye-ways-differ", with("110 mm")), Outcomes{finding});
  EXPECT_TRUE(of("eye-ways-differ", with("12 d")).empty());
  const auto piece = [&](const char* allowance) {
    return with(allowance).rig().derived->stays[0].pieces[0];
  };
  EXPECT_FALSE(piece("110 mm").upper.boxed.empty());
  EXPECT_TRUE(piece("114.4 mm").blocked.empty()) << "26.98 mm";
  EXPECT_EQ(piece("114.5 mm").blocked.size(), 2u) << "27.08 mm, both ends";
  EXPECT_TRUE(piece("14 d").blocked.empty());
}

// No eye of 9 mm rope round 180 mm takes less than 397 mm beyond its bearing, whatever its throat, so a
// rule for thimbles is none for it. Plane geometry.
TEST(EyeWaysDiffer, ARuleForThimblesIsNoneForAMast) {
  const auto with = [](const char* seat, const char* allowance) {
    return Spliced{.splice = std::string("  eye-allowance: ") + allowance + "\n",
                   .seat = std::string("diameter: ") + seat,
                   .thimble = ""};
  };
  EXPECT_EQ(of("eye-ways-differ", with("180 mm", "12 d")), Outcomes{finding});
  EXPECT_EQ(with("180 mm", "12 d").rig().derived->stays[0].pieces[0].blocked.size(), 2u);
  EXPECT_EQ(of("eye-ways-differ", with("180 mm", "300 mm")), Outcomes{finding});
  EXPECT_TRUE(of("eye-ways-differ", with("40 mm", "12 d")).empty());
  EXPECT_TRUE(of("eye-ways-differ", with("180 mm", "500 mm")).empty()) << "its throat is not stated";
}

// Two eyes of 108 mm where their seats ask for 87.42 mm make the stay 41.16 mm too long.
TEST(EyeWaysDiffer, BeyondWhatCanBeTakenUpIsADraft) {
  const auto blocked = [](const char* gap) {
    const Compilation rig =
        compiled("language 1\nrope rope-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n"
                 "splice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\n"
                 "thimble ring {\n  length: 30 mm\n  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}\n"
                 "lashing cord {\n  shortest: 60 mm\n  longest: 260 mm\n}\nstay cap {\n  pin-to-pin: 10 m\n"
                 "  line: rope-9\n  stack {\n    ring (splice: bury)\n    line\n    ring (splice: bury)\n  "
                 "  cord (gap: " +
                 std::string(gap) + ", passes: 6)\n  }\n}\n");
    return rig.derived->stays[0].pieces[0].blocked.size();
  };
  EXPECT_EQ(blocked("101.1 mm"), 1u);
  EXPECT_EQ(blocked("101.2 mm"), 0u);
}

// The same geometry: by more than the 9 mm of the rope it blocks, by less it is boxed on the card.
TEST(EyeWaysDiffer, ByMoreThanTheRopeBlocks) {
  const auto piece = [](const char* wrap) {
    const Compilation rig = Spliced{.seat = "diameter: 28 mm, throat: 38 mm",
                                    .thimble = std::string("  shape: pear\n  wrap: ") + wrap + "\n"}
                                .rig();
    return rig.derived->stays[0].pieces[0];
  };
  EXPECT_TRUE(piece("92.4 mm").upper.boxed.empty());
  EXPECT_FALSE(piece("96.4 mm").upper.boxed.empty());
  EXPECT_TRUE(piece("96.4 mm").blocked.empty()) << "8.98 mm";
  EXPECT_EQ(piece("96.5 mm").blocked.size(), 2u) << "9.08 mm, both ends";
}

} // namespace
} // namespace sheerpole::splice_test
