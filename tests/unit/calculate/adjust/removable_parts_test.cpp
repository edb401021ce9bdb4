#include "calculate/adjust/removable_parts.hpp"

#include "calculate/calculate.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/reference_rows.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::removable_parts_test {
namespace {

double worked(const std::string& quantity) {
  for (const auto& row : reference_rows("in-hand", 3))
    if (row[0] == "take-up" && row[1] == quantity)
      return std::stod(row[2]);
  ADD_FAILURE() << quantity;
  return 0.0;
}

const char* const hardware =
    "language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
    "terminal eye-40 {\n  length: 40 mm\n  lower: wire-socket (inserted: 50 mm)\n}\n"
    "chainplate plate {\n  upper: eye (hole: 12.5 mm, thickness: 9 mm)\n}\n"
    "toggle joint {\n  length: 2.25 in\n  upper: eye (hole: 12.5 mm, thickness: 9 mm)\n"
    "  lower: jaw (gap: 10 mm, pin: \"12 mm\")\n}\n"
    "turnbuckle screw {\n  shortest: 17 in\n  longest: 22 in\n  upper: wire-socket (inserted: 50 mm)\n"
    "  lower: jaw (gap: 10 mm, pin: \"12 mm\")\n}\n";

std::string forestay(const std::string& stack, const std::string& more = "",
                     const std::string& set = "19.5 in") {
  return "stay forestay {\n  pin-to-pin: 10 m\n  line: wire-6\n" + more +
         "  stack {\n    eye-40\n    line\n    screw (length: " + set + ")\n" + stack +
         "    plate\n  }\n}\n";
}

Compilation made(const std::string& more) {
  return test::compiled(hardware + more);
}

// Common practice, no source: 5 in of throw and two removable toggles of 2 1/4 in are 9 1/2 in of play.
TEST(RemovableParts, FiveInchesOfThrowAndTwoTogglesAreNineAndAHalf) {
  const Compilation rig = made(forestay("    2 x joint (removable: yes)\n"));
  const Play& play = rig.derived->stays[0].play;
  EXPECT_NEAR(play.by_adjusters.inches(), worked("by-the-screw"), 1e-9);
  EXPECT_NEAR(play.in_all.inches(), worked("with-two-toggles"), 1e-9);
  ASSERT_EQ(play.rows.size(), 3u); // alone, one out, two out
  EXPECT_NEAR(play.rows[0].to_tighten.inches(), 2.5, 1e-9);
  EXPECT_NEAR(play.rows[1].to_tighten.inches(), 4.75, 1e-9);
  EXPECT_NEAR(play.rows[1].to_slacken.inches(), 0.25, 1e-9);
  EXPECT_NEAR(play.rows[2].to_tighten.inches(), 7.0, 1e-9);
  EXPECT_NEAR(play.rows[2].to_slacken.inches(), -2.0, 1e-9);
  // With one out nothing meets that did not before; with both the jaw of the screw takes the plate.
  EXPECT_TRUE(play.rows[1].stack.joints.empty());
  ASSERT_EQ(play.rows[2].stack.joints.size(), 1u);
  EXPECT_EQ(say(*rig.rig, play.rows[2].stack.joints[0].name), "screw to plate");
  EXPECT_NE(play.rows[2].stack.joints[0].result, JointResult::finding);
}

TEST(RemovableParts, OneMoreInFromWhatIsInHand) {
  const Compilation rig =
      made(forestay("    joint (removable: yes)\n") + "in-hand of joint {\n  pieces: 2\n}\n");
  const Play& play = rig.derived->stays[0].play;
  ASSERT_EQ(play.rows.size(), 3u); // alone, one out, one more in
  EXPECT_EQ(play.rows[2].stack.in.size(), 1u);
  EXPECT_NEAR(play.rows[2].to_slacken.inches(), 2.5 + 2.25, 1e-9);
  EXPECT_NEAR(play.in_all.inches(), 5.0 + 2 * 2.25, 1e-9);
  // The one in the stack is used: with one in hand there is none more.
  const Compilation used =
      made(forestay("    joint (removable: yes)\n") + "in-hand of joint {\n  pieces: 1\n}\n");
  EXPECT_EQ(used.derived->stays[0].play.rows.size(), 2u);
  // What only the stay names is there as often as it is named.
  const Compilation named = made(forestay("", "  spare-parts: joint, joint\n"));
  ASSERT_EQ(named.derived->stays[0].play.rows.size(), 2u);
}

TEST(RemovableParts, AreNothingWithoutBeingMarked) {
  EXPECT_TRUE(made(forestay("    joint\n")).derived->stays[0].play.rows.empty());
}

// Two eyes meet when a toggle with two jaws is taken out from between them.
TEST(RemovableParts, ThatHoldTheOnlyPinAreFound) {
  const std::string eyes = "toggle twin {\n  length: 57 mm\n  upper: jaw (gap: 10 mm, pin: \"12 mm\")\n"
                           "  lower: jaw (gap: 10 mm, pin: \"12 mm\")\n}\n"
                           "link strap {\n  length: 50 mm\n  upper: eye (hole: 12.5 mm, thickness: 9 mm)\n"
                           "  lower: eye (hole: 12.5 mm, thickness: 9 mm)\n}\n";
  const Compilation lost = made(eyes + forestay("    strap\n    twin (removable: yes)\n"));
  EXPECT_TRUE(test::found(lost, "removable-holds-pin"));
  for (const Diagnostic& finding : lost.findings)
    if (finding.slug == "removable-holds-pin") {
      ASSERT_TRUE(finding.edit);
      const std::string text = hardware + eyes + forestay("    strap\n    twin (removable: yes)\n");
      EXPECT_EQ(text.substr(finding.edit->span.begin, finding.edit->span.end - finding.edit->span.begin),
                "yes");
      EXPECT_EQ(finding.edit->replacement, "no");
    }
  const Play& play = lost.derived->stays[0].play;
  ASSERT_EQ(play.rows.size(), 2u);
  EXPECT_FALSE(play.rows[1].stack.can_be_made());
  EXPECT_NEAR(play.in_all.inches(), 5.0, 1e-9); // a row that cannot be pinned adds nothing
  EXPECT_FALSE(test::found(made(eyes + forestay("    strap\n    twin\n")), "removable-holds-pin"));
  EXPECT_FALSE(test::found(made(forestay("    2 x joint (removable: yes)\n")), "removable-holds-pin"));
}

// The line is 60 mm too long for the screw alone: with one toggle of 57.15 mm out it fits.
TEST(RemovableParts, AreTakenOutToFit) {
  // Pins 10 000, eye 40, one toggle 57.15, screw 431.8 to 558.8: the line may be 9344.05 to 9471.05.
  const Compilation rig =
      made(forestay("    joint (removable: yes)\n") + "fit of forestay {\n  line-length: 9520 mm\n}\n");
  const Fit& fit = rig.derived->stays[0].fits.at(0);
  ASSERT_FALSE(fit.ways.empty());
  EXPECT_TRUE(fit.ways[0].parts.empty());
  ASSERT_EQ(fit.ways[0].out.size(), 1u);
  EXPECT_EQ((*rig.rig)[fit.ways[0].out[0].first].name, "joint");
  EXPECT_NEAR(fit.ways[0].adjuster.millimetres(), 10'000 - 40 - 9520, 1e-6);
}

TEST(RemovableParts, AreSpentOnce) {
  const std::string port =
      "stay shroud {\n  sides: port, starboard\n  pin-to-pin: 10 m\n  line: wire-6\n"
      "  stack {\n    eye-40\n    line\n    screw (length: 19.5 in)\n    plate\n  }\n}\n"
      "fit of shroud {\n  line-length: 9380 mm\n  parts: joint\n}\n";
  // 580 mm to fill on each side, the screw goes to 558.8: a toggle is wanted on each.
  const Compilation two = made(port + "in-hand of joint {\n  pieces: 2\n}\n");
  EXPECT_FALSE(two.derived->stays[0].fits.at(0).ways.empty());
  EXPECT_FALSE(two.derived->stays[1].fits.at(0).ways.empty());
  const Compilation one = made(port + "in-hand of joint {\n  pieces: 1\n}\n");
  EXPECT_FALSE(one.derived->stays[0].fits.at(0).ways.empty());
  EXPECT_TRUE(one.derived->stays[1].fits.at(0).ways.empty());
}

RC_GTEST_PROP(RemovableParts, EachRowIsWhatItsPartsMeasure, ()) {
  const int count = *rc::gen::inRange(1, 5);
  const double set = *rc::gen::inRange(432, 558);
  const Compilation rig = made(forestay("    " + std::to_string(count) + " x joint (removable: yes)\n", "",
                                        std::to_string(set) + " mm"));
  const Play& play = rig.derived->stays[0].play;
  RC_ASSERT(play.rows.size() == static_cast<std::size_t>(count) + 1);
  for (std::size_t i = 0; i < play.rows.size(); ++i) {
    RC_ASSERT(std::abs((play.rows[i].to_tighten - play.rows[0].to_tighten).inches() - 2.25 * double(i)) <
              1e-9);
    RC_ASSERT(std::abs((play.rows[i].to_tighten + play.rows[i].to_slacken).inches() - 5.0) < 1e-9);
  }
  RC_ASSERT(std::abs(play.in_all.inches() - (5.0 + 2.25 * count)) < 1e-9);
}

} // namespace
} // namespace sheerpole::removable_parts_test
