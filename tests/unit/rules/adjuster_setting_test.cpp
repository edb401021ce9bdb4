#include "unit/calculate/compiled_rig.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::adjuster_setting_test {
namespace {

using test::compiled;

constexpr auto pass = CheckOutcome::pass;
constexpr auto finding = CheckOutcome::finding;
constexpr auto not_checked = CheckOutcome::not_checked;
using Outcomes = std::vector<CheckOutcome>;

Outcomes of(std::string_view slug, const std::string& text) {
  Outcomes result;
  const auto results = compiled(text).results;
  for (const CheckResult& one : results->all)
    if (one.check == slug)
      result.push_back(one.outcome);
  return result;
}

std::vector<std::string> slugs(const std::string& text) {
  std::vector<std::string> result;
  for (const Diagnostic& one : compiled(text).findings)
    result.push_back(one.slug);
  return result;
}

/// A wire with a screw of 240 to 360 mm on port and starboard.
struct Screwed {
  std::string setting = "open: 50 %";
  std::string limits = "";
  std::string wire = "";
  std::string place = "";
  std::string ends = "";
  std::string starboard = "";

  std::string text() const {
    return "language 1\n" + limits +
           "boat {\n  reference-temperature: 18 degC\n}\n"
           "wire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n  thermal: 16 ppm/K\n" +
           wire +
           "}\nterminal eye-62 {\n  length: 62 mm\n  lower: wire-socket (inserted: 50 mm)\n}\n"
           "turnbuckle screw-12 {\n  shortest: 240 mm\n  longest: 360 mm\n  thread: \"M12\"\n"
           "  screw: pair\n" +
           ends +
           "}\nlever lever-300 {\n  shortest: 240 mm\n  longest: 360 mm\n}\n"
           "points {\n  tang: (0.000, 0.100, 10.000) m mirrored\n"
           "  plate: (0.000, 3.000, 1.000) m " +
           place +
           " mirrored\n}\n"
           "spar mast {\n  sort: mast\n  heel: (0.000, 0.000, 1.000) m\n  thermal: 16 ppm/K\n"
           "  carries: tang\n}\n"
           "stay shroud {\n  sides: port, starboard\n  path: tang > plate\n  line: wire-6\n"
           "  stack {\n    eye-62\n    line\n    eye-62\n    screw-12 (" +
           setting + ")\n  }\n}\n" + starboard;
  }
};

// Common practice, no source: closed by two thirds at most. At 40 mm of 120 mm open it is closed by just
// that. Within a tenth of the range of its end the other finding says it.
TEST(AdjusterMostlyClosed, ByMoreThanTwoThirds) {
  const auto set = [](const char* setting, const char* limits = "") {
    return of("adjuster-mostly-closed", Screwed{.setting = setting, .limits = limits}.text());
  };
  EXPECT_EQ(set("length: 280 mm"), Outcomes{pass});
  EXPECT_EQ(set("length: 279 mm"), Outcomes{finding});
  EXPECT_EQ(set("length: 252 mm"), Outcomes{finding});
  EXPECT_TRUE(set("length: 251 mm").empty());
  EXPECT_EQ(slugs(Screwed{.setting = "length: 251 mm"}.text()),
            std::vector<std::string>{"adjuster-near-end"});
  EXPECT_EQ(set("length: 279 mm", "limits {\n  first-fit-closed: 70 %\n}\n"), Outcomes{pass});
  EXPECT_EQ(set("length: 279 mm", "limits {\n  first-fit-closed: off\n}\n"), Outcomes{not_checked});
}

/// Everything that the account asks for is stated: bedding, creep, temperature, a bound.
Screwed whole(const std::string& setting, const std::string& bedding, const std::string& limits = "") {
  return {.setting = setting,
          .limits = limits,
          .wire = "  bedding: " + bedding + "\n  creep: 0 %\n",
          .place = "± 1 mm"};
}

// Common practice, no source: a third of the range, 40 mm of 120 mm.
TEST(TakeUpLow, LeavesAThirdAfterTheLastDate) {
  EXPECT_EQ(of("take-up-low", whole("open: 60 %", "0.4 %").text()), Outcomes{finding});
  EXPECT_EQ(of("take-up-low", whole("open: 60 %", "0.1 %").text()), Outcomes{pass});
  EXPECT_EQ(of("take-up-low", whole("open: 60 %", "0.4 %", "limits {\n  take-up-left: 20 %\n}\n").text()),
            Outcomes{pass});
  EXPECT_EQ(of("take-up-low", Screwed{}.text()), Outcomes{not_checked}) << "bedding is not stated";
}

// What is closed as it is set leaves little for that reason alone.
TEST(TakeUpLow, LeavesItToWhatIsSaidOfTheSetting) {
  EXPECT_EQ(slugs(whole("open: 25 %", "0 %").text()), std::vector<std::string>{"adjuster-mostly-closed"});
  EXPECT_EQ(slugs(whole("open: 5 %", "0 %").text()), std::vector<std::string>{"adjuster-near-end"});
  EXPECT_EQ(of("take-up-spent", whole("open: 60 %", "1 %").text()), Outcomes{finding});
  EXPECT_TRUE(of("take-up-low", whole("open: 60 %", "1 %").text()).empty()) << "spent says it";
}

TEST(TakeUpLow, LeavesLeversAlone) {
  std::string text = whole("open: 60 %", "0.4 %").text();
  const std::string screw = "    screw-12 (open: 60 %)\n";
  text.replace(text.find(screw), screw.size(), "    lever-300 (length: 312 mm)\n");
  EXPECT_TRUE(of("take-up-low", text).empty());
}

// Geometry: a bound of b on each coordinate of the place moves this stay by at most b (cos + sin) of its
// angle: sin = 2.9 / 9.4557, cos = 9 / 9.4557, so 50 mm make 62.92 mm, 47 mm make 59.15 mm.
TEST(ReachInDoubt, WhenTheBoundsAddUpToMoreThanTheRoom) {
  EXPECT_EQ(of("reach-in-doubt", Screwed{.place = "± 50 mm"}.text()), Outcomes{finding});
  EXPECT_EQ(of("reach-in-doubt", Screwed{.place = "± 47 mm"}.text()), Outcomes{pass});
  EXPECT_EQ(of("reach-in-doubt", Screwed{}.text()), Outcomes{not_checked});
}

TEST(AdjustersDiffer, ByTheirKind) {
  EXPECT_EQ(of("adjusters-differ", Screwed{}.text()), Outcomes{pass});
  const std::string starboard = "stay shroud.starboard {\n  stack {\n    eye-62\n    line\n    eye-62\n";
  EXPECT_EQ(of("adjusters-differ",
               Screwed{.starboard = starboard + "    lever-300 (length: 300 mm)\n  }\n}\n"}.text()),
            Outcomes{finding});
  EXPECT_EQ(of("adjusters-differ", Screwed{.starboard = starboard + "  }\n}\n"}.text()), Outcomes{finding});
}

// A right- and a left-handed thread are what brings two studs nearer.
TEST(ScrewSameHand, NeedsBothHands) {
  const auto ends = [](const std::string& upper, const std::string& lower) {
    return of("screw-same-hand",
              Screwed{.ends = "  upper: " + upper + "\n  lower: " + lower + "\n"}.text());
  };
  EXPECT_EQ(ends("stud (hand: right)", "stud (hand: left)"), Outcomes{pass});
  EXPECT_EQ(ends("stud (hand: right)", "stud"), Outcomes{not_checked});
  EXPECT_TRUE(ends("eye", "jaw").empty());
}

struct Lashed {
  std::string limits = "";
  std::string passes = ", passes: 6";
  std::string cord = "  break-load: 15 kN\n";
  std::string lashing = "  cord: cord-4\n  knot-factor: 50 %\n";
  std::string rope = "  break-load: 92 kN\n";
  std::string load = "";

  std::string text() const {
    return "language 1\n" + limits + "rope hmpe-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n" +
           rope + "}\nrope cord-4 {\n  construction: \"cord\"\n  size: \"4 mm\"\n" + cord +
           "}\nsplice long-bury {\n  bury: 72 d\n  contraction: 8 %\n}\n"
           "thimble thimble-16 {\n  length: 16 mm\n  wrap: 159 mm\n}\n"
           "lashing lashing-260 {\n  shortest: 60 mm\n  longest: 260 mm\n" +
           lashing + "}\nstay shroud {\n  pin-to-pin: 10 m\n  line: hmpe-9\n" + load +
           "  stack {\n    thimble-16 (splice: long-bury)\n    line\n    thimble-16 (splice: long-bury)\n"
           "    lashing-260 (gap: 160 mm" +
           passes + ")\n  }\n}\n";
  }
};

// By hand: 6 passes x 15 kN x 0.5 = 45 kN, against 1.5 x 92 kN = 138 kN of the line, or 1.5 x 30 kN = 45 kN
// of a stated load.
TEST(LashingWeak, IsPassesTimesCordTimesKnot) {
  std::string message;
  for (const Diagnostic& one : compiled(Lashed{}.text()).findings)
    if (one.slug == "lashing-weak")
      message = one.message;
  EXPECT_EQ(message, "shroud: 6 passes x 1 leg x 15 kN of cord-4 x 50 % in the knot = 45 kN, less than 1.5 "
                     "times the break load of hmpe-9 (92 kN), 138 kN");
  EXPECT_EQ(of("lashing-weak", Lashed{.load = "  load: 30 kN\n"}.text()), Outcomes{pass});
  EXPECT_EQ(of("lashing-weak", Lashed{.load = "  load: 30.1 kN\n"}.text()), Outcomes{finding});
}

// Both legs of a pass: 90 kN hold 60 kN one and a half times over.
TEST(LashingWeak, CountsTheLegsOfTheLimits) {
  const std::string both = "limits {\n  lashing-legs: 200 %\n}\n";
  EXPECT_EQ(of("lashing-weak", Lashed{.limits = both, .load = "  load: 60 kN\n"}.text()), Outcomes{pass});
  EXPECT_EQ(of("lashing-weak", Lashed{.limits = both, .load = "  load: 61 kN\n"}.text()),
            Outcomes{finding});
  EXPECT_EQ(of("lashing-weak", Lashed{.limits = "limits {\n  lashing-legs: off\n}\n"}.text()),
            Outcomes{not_checked});
  EXPECT_EQ(of("lashing-weak", Lashed{.limits = "limits {\n  lashing-strength: off\n}\n"}.text()),
            Outcomes{not_checked});
}

TEST(LashingWeak, IsNotCheckedWithoutItsNumbers) {
  EXPECT_EQ(of("lashing-weak", Lashed{.passes = ""}.text()), Outcomes{not_checked});
  EXPECT_EQ(of("lashing-weak", Lashed{.cord = ""}.text()), Outcomes{not_checked});
  EXPECT_EQ(of("lashing-weak", Lashed{.lashing = "  cord: cord-4\n"}.text()), Outcomes{not_checked});
  EXPECT_EQ(of("lashing-weak", Lashed{.lashing = "  knot-factor: 50 %\n"}.text()), Outcomes{not_checked});
  EXPECT_EQ(of("lashing-weak", Lashed{.rope = ""}.text()), Outcomes{not_checked});
}

TEST(KnotFactorHigh, AboveHalf) {
  EXPECT_EQ(of("knot-factor-high", Lashed{}.text()), Outcomes{pass});
  EXPECT_EQ(of("knot-factor-high", Lashed{.lashing = "  knot-factor: 51 %\n"}.text()), Outcomes{finding});
  EXPECT_EQ(of("knot-factor-high", Lashed{.lashing = ""}.text()), Outcomes{not_checked});
}

} // namespace
} // namespace sheerpole::adjuster_setting_test
