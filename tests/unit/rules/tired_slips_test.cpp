// Slips of a tired hand that came out READY: each is found, and the right number beside it is not.
#include "plugins/dry-fit-card/dry_fit_card.hpp"
#include "unit/calculate/compiled_rig.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sheerpole::tired_slips_test {
namespace {

using test::found;
using test::tried;

constexpr const char* wire_and_ends = R"(language 1
wire wire-6 {
  construction: "1x19"
  size: "6 mm"
}
terminal eye-60 {
  length: 60 mm measured
  upper: eye (hole: 12.3 mm, thickness: 10 mm)
  lower: wire-socket (inserted: 50 mm measured)
}
toggle double-jaw {
  length: 51 mm measured
  upper: jaw (gap: 12 mm, pin: "12 mm")
  lower: jaw (gap: 12 mm, pin: "12 mm")
}
toggle jaw-and-eye {
  length: 51 mm measured
  upper: jaw (gap: 12 mm, pin: "12 mm")
  lower: eye (hole: 12.3 mm, thickness: 10 mm)
}
deadeye dead-eye {
  length: 40 mm measured
  upper: wire-socket (inserted: 200 mm measured)
  lower: holes (count: 3, diameter: 12 mm)
}
)";

std::string stay_with(const std::string& stack, const std::string& more = "") {
  return std::string(wire_and_ends) + more +
         "stay forestay {\n  pin-to-pin: 10 m drawn\n  line: wire-6\n  stack {\n" + stack + "  }\n}\n";
}

// Written as two parts it was found; `2 x` of a part whose ends are alike is the same.
TEST(TiredSlips, SeveralAlikeInARowBearOnEachOther) {
  const std::string line = "    eye-60\n    line\n    eye-60\n";
  EXPECT_TRUE(found(tried(stay_with(line + "    2 x double-jaw\n")), "jaws-meet"));
  EXPECT_FALSE(found(tried(stay_with(line + "    double-jaw\n")), "jaws-meet"));
  EXPECT_FALSE(found(tried(stay_with(line + "    3 x jaw-and-eye\n")), "jaws-meet"));
}

TEST(TiredSlips, TwoDeadEyesNeedALanyard) {
  const std::string lower =
      "deadeye lower-eye {\n  length: 40 mm measured\n  upper: holes (count: 3, diameter: "
      "12 mm)\n}\nlashing lanyard {\n  shortest: 60 mm\n  longest: 400 mm\n}\n";
  EXPECT_TRUE(found(tried(stay_with("    eye-60\n    line\n    dead-eye\n    lower-eye\n", lower)),
                    "ends-do-not-join"));
  EXPECT_FALSE(
      found(tried(stay_with("    eye-60\n    line\n    dead-eye\n    lanyard (gap: 300 mm, passes: 3)\n    "
                            "lower-eye\n",
                            lower)),
            "ends-do-not-join"));
}

// The crown of an eye right round a dead-eye lies on the lanyard's side of its holes.
TEST(TiredSlips, ADeadEyeMayCountAwayFromTheLine) {
  std::string text = stay_with("    eye-60\n    line\n    dead-eye\n");
  text.replace(text.find("length: 40 mm"), 13, "length: -45 mm");
  const Compilation boat = test::compiled(text);
  ASSERT_TRUE(boat.checked);
  EXPECT_NEAR(boat.derived->stays.front().pieces.front().body.known().millimetres(), 10'000.0 - 60.0 + 45.0,
              1e-6);
}

TEST(TiredSlips, AnEstimateOfAStayOnACordIsHeldAgainstItsPoints) {
  const auto estimated = [](const std::string& estimate) {
    return tried(std::string(wire_and_ends) +
                 "points {\n  head: (0, 0, 10) m drawn\n  stem: (0, 3, 0.5) m drawn\n}\nstay forestay {\n  "
                 "path: head > stem\n  line: wire-6\n  estimate: " +
                 estimate +
                 "\n  stack {\n    eye-60\n    line\n    eye-60\n  }\n}\nreading of forestay {\n  method: "
                 "messenger\n  mark: \"two knots\"\n}\n");
  };
  EXPECT_TRUE(found(estimated("13 ft 6 in"), "estimate-far"));
  EXPECT_FALSE(found(estimated("32 ft 8 in"), "estimate-far"));
}

TEST(TiredSlips, LinksAndStiffnessAreHeldAgainstTheSizeOfTheirLine) {
  const auto chain = [](const std::string& pitch) {
    return tried(stay_with(
        "    line\n",
        "chain links {\n  construction: \"short link\"\n  size: \"8 mm\"\n  pitch: " + pitch + "\n}\n"));
  };
  EXPECT_TRUE(found(chain("2.4 mm"), "size-far-off"));
  EXPECT_FALSE(found(chain("24 mm"), "size-far-off"));
  const auto rod = [](const std::string& stiffness) {
    return tried(stay_with("    line\n", "rod rod-7 {\n  construction: \"rod 316\"\n  size: \"7 mm\"\n  "
                                         "break-load: 55 kN\n  stiffness: " +
                                             stiffness + "\n}\n"));
  };
  EXPECT_TRUE(found(rod("710 kN"), "size-unusual"));
  EXPECT_FALSE(found(rod("7_100 kN"), "size-unusual"));
}

// A file without any mast has its hoisted dry fit all the same.
TEST(TiredSlips, AFileWithoutAMastKeepsItsHoistedPage) {
  const Compilation boat = test::compiled(
      "language 1\nrope hmpe-9 {\n  construction: \"12-strand HMPE\"\n  size: \"9 mm\"\n}\nsplice long {\n "
      " "
      "bury: 72 d practice\n  contraction: 8 % measured\n}\nthimble eye {\n  length: 20 mm measured\n  "
      "wrap: "
      "150 mm measured\n}\nturnbuckle screw {\n  shortest: 300 mm measured\n  longest: 400 mm measured\n}\n"
      "points {\n  head: (0, 0, 10) m drawn\n  plate: (0, 1.4, 0.5) m drawn\n}\nstay shroud {\n  path: "
      "head > "
      "plate\n  line: hmpe-9\n  hoist-gap: 5 in measured\n  stack {\n    eye (splice: long)\n    line\n    "
      "eye "
      "(splice: long)\n    screw (open: 50 %)\n  }\n}\n");
  ASSERT_TRUE(boat.checked);
  EXPECT_FALSE(hoisted_pages(stay_fits(*boat.checked).front(), "Ray", PaperSize::a4).empty());
}

} // namespace
} // namespace sheerpole::tired_slips_test
