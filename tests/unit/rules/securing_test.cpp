#include "unit/calculate/compiled_rig.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace sheerpole::securing_test {
namespace {

using test::compiled;

/// How often this finding was reported.
std::size_t count(const Compilation& rig, std::string_view slug) {
  return static_cast<std::size_t>(std::count_if(rig.findings.begin(), rig.findings.end(),
                                                [&](const Diagnostic& one) { return one.slug == slug; }));
}

/// What a check came to.
std::vector<CheckOutcome> outcomes(std::string_view slug, const Compilation& rig) {
  std::vector<CheckOutcome> result;
  for (const CheckResult& one : rig.results->all)
    if (one.check == slug)
      result.push_back(one.outcome);
  return result;
}

using Outcomes = std::vector<CheckOutcome>;
constexpr auto pass = CheckOutcome::pass;
constexpr auto finding = CheckOutcome::finding;
constexpr auto not_checked = CheckOutcome::not_checked;

struct Wire {
  std::string aloft = "    tang-12\n    toggle-a\n";
  std::string below = "    toggle-b\n";
  std::string toggle = ""; ///< more of toggle-b
  std::string screw = "";  ///< more of the turnbuckle
  std::string plate = "";  ///< more of the chainplate
  std::string link = "";   ///< more of link-80
  std::string head = "  duty: carries-sail\n";

  std::string text() const {
    return "language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
           "rope rope-6 {\n  construction: \"12-strand\"\n  size: \"6 mm\"\n}\n"
           "tang tang-12 {\n  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n}\n"
           "toggle toggle-a {\n  length: 60 mm\n}\n"
           "shackle shackle-a {\n  length: 40 mm\n}\n"
           "terminal eye-62 {\n  length: 62 mm\n  lower: wire-socket (inserted: 50 mm)\n}\n"
           "terminal tee-20 {\n  length: 20 mm\n  upper: tee\n  lower: wire-socket (inserted: 50 mm)\n}\n"
           "turnbuckle screw-12 {\n  shortest: 240 mm\n  longest: 360 mm\n" +
           screw +
           "  upper: wire-socket (inserted: 50 mm)\n  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n}\n"
           "toggle toggle-b {\n  length: 60 mm\n" +
           toggle +
           "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n}\n"
           "link link-80 {\n  length: 80 mm\n" +
           link +
           "}\nlashing lashing-a {\n  shortest: 40 mm\n  longest: 200 mm\n}\n"
           "chainplate plate-a {\n" +
           plate +
           "  upper: eye (hole: 12.3 mm, thickness: 12 mm)\n}\n"
           "stay forestay {\n  pin-to-pin: 10 m\n  line: wire-6\n" +
           head + "  stack {\n" + aloft + "    eye-62\n    line\n    screw-12 (open: 50 %)\n" + below +
           "    plate-a\n  }\n}\n";
  }
  Compilation rig() const { return compiled(text()); }
};

std::size_t articulation_findings(const Compilation& rig) {
  return count(rig, "no-toggle-aloft") + count(rig, "no-toggle-below") + count(rig, "pins-parallel");
}

// Common practice, no source: a stay with a toggle at each end is whole, and taking one away is one
// finding.
TEST(Toggles, TakingOneAwayIsOneFinding) {
  const Compilation whole = Wire{}.rig();
  EXPECT_EQ(whole.findings.size(), 0u);
  Wire without;
  without.aloft = "    tang-12\n";
  const Compilation aloft = without.rig();
  EXPECT_EQ(aloft.findings.size(), 1u);
  EXPECT_EQ(count(aloft, "no-toggle-aloft"), 1u);
  without = {};
  without.below = "";
  const Compilation below = without.rig();
  EXPECT_EQ(below.findings.size(), 1u);
  EXPECT_EQ(count(below, "no-toggle-below"), 1u);
}

TEST(Toggles, WhatSwingsInTwoPlanesStandsForOne) {
  for (const char* aloft : {"    shackle-a\n", "    lashing-a (gap: 100 mm)\n",
                            "    line (length: 400 mm, material: rope-6)\n"}) {
    Wire wire;
    wire.aloft = "    tang-12\n" + std::string(aloft);
    EXPECT_EQ(articulation_findings(compiled(wire.text())), 0u) << aloft;
  }
  Wire own;
  own.below = "";
  own.screw = "  toggle: lower\n";
  EXPECT_EQ(articulation_findings(own.rig()), 0u);
  Wire crossed;
  crossed.below = "    link-80\n";
  crossed.link = "  pins: crossed\n";
  EXPECT_EQ(articulation_findings(crossed.rig()), 0u);
}

TEST(Toggles, AloftAreAskedForByAStayThatCarriesASail) {
  Wire wire;
  wire.aloft = "    tang-12\n";
  wire.head = "";
  EXPECT_EQ(articulation_findings(wire.rig()), 0u);
  EXPECT_TRUE(outcomes("no-toggle-aloft", wire.rig()).empty());
}

TEST(Toggles, OfATeeItIsNotKnownHowFarItSwings) {
  Wire wire;
  std::string text = wire.text();
  const std::string stack = "    tang-12\n    toggle-a\n    eye-62\n";
  text.replace(text.find(stack), stack.size(), "    tee-20\n");
  EXPECT_EQ(outcomes("no-toggle-aloft", compiled(text)), Outcomes{not_checked});
}

// A link that leaves the stay stiff and the toggle that is missing are one cause.
TEST(Toggles, ALinkWithParallelPinsIsNoToggle) {
  Wire wire;
  wire.below = "    link-80\n";
  wire.link = "  pins: parallel\n";
  const Compilation rig = wire.rig();
  EXPECT_EQ(articulation_findings(rig), 1u);
  EXPECT_EQ(count(rig, "no-toggle-below"), 1u);
}

TEST(PinsParallel, OfAToggleAreSaidUnlessAnotherCrosses) {
  Wire wire;
  wire.toggle = "  pins: parallel\n";
  const Compilation alone = wire.rig();
  EXPECT_EQ(articulation_findings(alone), 1u);
  EXPECT_EQ(count(alone, "pins-parallel"), 1u);
  wire.below = "    toggle-b\n    shackle-a\n";
  EXPECT_EQ(articulation_findings(wire.rig()), 0u);
  EXPECT_EQ(outcomes("pins-parallel", wire.rig()), Outcomes{pass});
}

TEST(PinsParallel, AreNotCheckedWhenNotStated) {
  Wire wire;
  wire.head = "";
  wire.aloft = "    link-80\n";
  EXPECT_EQ(outcomes("pins-parallel", wire.rig()), Outcomes{not_checked});
}

// The part with the jaw has to say it; what is not stated is no finding.
TEST(PinNotSecured, IsFoundOnlyWhenStated) {
  Wire wire;
  EXPECT_EQ(outcomes("pin-not-secured", wire.rig()), (Outcomes{not_checked, not_checked, not_checked}));
  wire.toggle = "  secured: \"none\"\n";
  wire.screw = "  secured: \"split pin\"\n";
  EXPECT_EQ(outcomes("pin-not-secured", wire.rig()), (Outcomes{finding, pass, not_checked}));
}

TEST(PinNotSecured, IsSaidByTheSplitPinOfTheJaw) {
  Wire wire;
  std::string text = wire.text();
  const std::string jaw = "tang tang-12 {\n  lower: jaw (gap: 14 mm, pin: \"12 mm\"";
  text.insert(text.find(jaw) + jaw.size(), ", split-pin: \"3.2 mm\"");
  const Compilation rig = compiled(text);
  EXPECT_TRUE(std::any_of(rig.results->all.begin(), rig.results->all.end(), [](const CheckResult& one) {
    return one.check == "pin-not-secured" && one.outcome == pass &&
           one.words.find("3.2 mm") != std::string::npos;
  }));
}

TEST(ThreadNotLocked, IsFoundOnlyWhenStated) {
  Wire wire;
  EXPECT_EQ(outcomes("thread-not-locked", wire.rig()), Outcomes{not_checked});
  wire.screw = "  locked: \"none\"\n";
  EXPECT_EQ(outcomes("thread-not-locked", wire.rig()), Outcomes{finding});
  wire.screw = "  locked: \"rings\"\n";
  EXPECT_EQ(outcomes("thread-not-locked", wire.rig()), Outcomes{pass});
}

TEST(NoWitnessHole, IsAskedOfAClosedBody) {
  const auto of = [](const std::string& screw) {
    Wire wire;
    wire.screw = screw;
    return outcomes("no-witness-hole", wire.rig());
  };
  EXPECT_EQ(of(""), Outcomes{not_checked});
  EXPECT_EQ(of("  body: open\n"), Outcomes{pass});
  EXPECT_EQ(of("  body: closed\n"), Outcomes{not_checked});
  EXPECT_EQ(of("  body: closed\n  witness-hole: no\n"), Outcomes{finding});
}

// Common practice, no source: stainless and aluminium, and not stainless and bronze.
TEST(MetalsDiffer, NeedsBothMetalsAndNoBarrier) {
  const auto of = [](const std::string& toggle, const std::string& plate) {
    Wire wire;
    wire.toggle = toggle;
    wire.plate = plate;
    return outcomes("metals-differ", wire.rig());
  };
  EXPECT_TRUE(of("", "").empty());
  EXPECT_EQ(of("", "  metal: aluminium\n"), Outcomes{not_checked});
  const std::string stainless = "  metal: stainless\n"; // the screw above it states none
  EXPECT_EQ(of(stainless, "  metal: aluminium\n"), (Outcomes{finding, not_checked}));
  EXPECT_EQ(of(stainless, "  metal: galvanised-steel\n"), (Outcomes{finding, not_checked}));
  EXPECT_EQ(of(stainless, "  metal: bronze\n"), (Outcomes{pass, not_checked}));
  EXPECT_EQ(of(stainless, "  metal: aluminium\n  barrier: \"sleeve\"\n"), (Outcomes{pass, not_checked}));
  EXPECT_EQ(of(stainless, "  metal: aluminium\n  barrier: \"none\"\n"), (Outcomes{finding, not_checked}));
}

TEST(NotAccessible, IsAskedOfAStayInsideAFoil) {
  Wire wire;
  EXPECT_TRUE(outcomes("not-accessible", wire.rig()).empty());
  wire.toggle = "  accessible: no\n";
  EXPECT_EQ(outcomes("not-accessible", wire.rig()), Outcomes{finding});
  wire.toggle = "";
  std::string text = wire.text();
  text.insert(text.find("stay forestay"), "foil foil-32 {\n}\n");
  text.insert(text.find("    line\n"), "    foil-32\n");
  EXPECT_EQ(outcomes("not-accessible", compiled(text)), Outcomes{not_checked});
}

struct Rope {
  std::string thimble = "  length: 16 mm\n  upper: eye (hole: 12.5 mm)\n";
  std::string seat = "diameter: 28 mm";
  std::string spreader = "";
  std::string worn = "";
  std::string limits = "";

  Compilation rig() const {
    return compiled(
        "language 1\n" + limits +
        "rope rope-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n"
        "splice bury {\n  bury: 72 d\n  contraction: 8 %\n}\n"
        "tang tang-12 {\n  lower: jaw (gap: 20 mm, pin: \"12 mm\")\n}\n"
        "cover sleeve {\n}\nbush bush-12 {\n  upper: eye (hole: 12 mm)\n}\n"
        "thimble thimble-a {\n  wrap: 150 mm\n" +
        thimble + "  lower: rope-seat (" + seat +
        ")\n}\n"
        "points {\n  tang: (0, 0.08, 10) m mirrored\n  root: (0, 0.07, 5) m mirrored\n"
        "  tip: (0, 1.13, 5.13) m mirrored\n  plate: (0, 1.23, 1) m mirrored\n}\n"
        "spreader low {\n  root: root\n  tip: tip\n" +
        spreader +
        "}\nstay shroud {\n  sides: port, starboard\n  path: tang > tip clamped > plate\n  line: rope-9\n"
        "  stack {\n    tang-12\n" +
        worn + "    thimble-a (splice: bury)\n    line\n    thimble-a (splice: bury)\n  }\n}\n");
  }
};

// Common practice, no source: half the rope's diameter, 4.5 mm under 9 mm; exactly that is enough. Port and
// starboard are said once.
TEST(EdgeSharp, AtATipAndAtASeat) {
  Rope rope;
  EXPECT_EQ(outcomes("edge-sharp", rope.rig()), (Outcomes{not_checked, not_checked, not_checked}));
  rope.spreader = "  edge-radius: 4.5 mm\n";
  rope.seat = "diameter: 28 mm, edge-radius: 4.5 mm";
  EXPECT_EQ(outcomes("edge-sharp", rope.rig()), (Outcomes{pass, pass, pass}));
  rope.spreader = "  edge-radius: 4.4 mm\n";
  EXPECT_EQ(count(rope.rig(), "edge-sharp"), 1u);
  rope.limits = "limits {\n  edge-radius: 40 %\n}\n"; // 3.6 mm
  EXPECT_EQ(count(rope.rig(), "edge-sharp"), 0u);
}

TEST(NoChafeGear, IsFoundOnlyWhenStatedAndACoverCounts) {
  Rope rope;
  EXPECT_EQ(outcomes("no-chafe-gear", rope.rig()), Outcomes{not_checked});
  rope.spreader = "  chafe-gear: \"none\"\n";
  EXPECT_EQ(outcomes("no-chafe-gear", rope.rig()), Outcomes{finding});
  rope.worn = "    sleeve\n";
  EXPECT_EQ(outcomes("no-chafe-gear", rope.rig()), Outcomes{pass});
}

TEST(ThimbleForWire, NeedsTheSortThatItIsMadeFor) {
  Rope rope;
  EXPECT_EQ(outcomes("thimble-for-wire", rope.rig()), (Outcomes{not_checked, not_checked}));
  for (const auto& [made_for, found] : {std::pair{"wire", 1u}, {"rope", 0u}, {"either", 0u}}) {
    rope.thimble = std::string("  length: 16 mm\n  made-for: ") + made_for + "\n";
    EXPECT_EQ(count(rope.rig(), "thimble-for-wire"), found) << made_for;
  }
}

// Geometry: a bore of 12.5 mm on a pin of 12 mm hangs 0.25 mm off the centre. A bush that fills the bore
// leaves nothing.
TEST(BearingOffsetZero, IsHalfWhatThePinHasInTheBore) {
  Rope rope;
  EXPECT_TRUE(outcomes("bearing-offset-zero", rope.rig()).empty()) << "it has a length";
  rope.thimble = "  length: 0 mm\n  upper: eye (hole: 12.5 mm)\n";
  const Compilation hanging = rope.rig();
  ASSERT_EQ(count(hanging, "bearing-offset-zero"), 1u);
  EXPECT_TRUE(std::any_of(hanging.findings.begin(), hanging.findings.end(), [](const Diagnostic& one) {
    return one.slug == "bearing-offset-zero" && one.message.find("lies 0.25 mm") != std::string::npos;
  }));
  rope.worn = "    bush-12\n";
  EXPECT_EQ(outcomes("bearing-offset-zero", rope.rig()), Outcomes{pass});
  rope.worn = "";
  rope.thimble = "  length: 0 mm\n";
  EXPECT_EQ(outcomes("bearing-offset-zero", rope.rig()), Outcomes{not_checked});
}

// Plane geometry: a seat of 28 mm round a pin of 12 mm in a bore of 12.5 mm. The crown lies 14 mm from the
// centre of the seat, which hangs 0.25 mm towards the line.
TEST(CrownBeyondPin, IsHalfTheSeatLessHalfThePlay) {
  Rope rope;
  EXPECT_EQ(outcomes("crown-beyond-pin", rope.rig()), Outcomes{not_checked}) << "it is not measured";
  const std::string shape = "  upper: eye (hole: 12.5 mm)\n";
  rope.thimble = "  length: 14 mm measured\n" + shape;
  const Compilation towards = rope.rig();
  ASSERT_EQ(count(towards, "crown-beyond-pin"), 1u);
  EXPECT_TRUE(std::any_of(towards.findings.begin(), towards.findings.end(), [](const Diagnostic& one) {
    return one.slug == "crown-beyond-pin" &&
           one.message.find("lies 13.75 mm beyond") != std::string::npos &&
           one.why.find("27.75 mm short") != std::string::npos;
  }));
  const std::vector<MissingInput>& blocked = towards.derived->stays.front().pieces.front().blocked;
  ASSERT_EQ(blocked.size(), 1u) << "it is a draft, and says so once though the thimble is at both ends";
  EXPECT_EQ(
      say(*towards.rig, blocked.front().what),
      "thimble-a counts 14 mm towards the line, but by its shape the crown lies 13.75 mm beyond the pin: "
      "the stay comes out 27.75 mm short there");
  rope.thimble = "  length: 0 mm measured\n" + shape;
  EXPECT_EQ(count(rope.rig(), "crown-beyond-pin"), 1u) << "nor does it lie on the pin";
  rope.thimble = "  length: -13.75 mm measured\n" + shape;
  EXPECT_EQ(outcomes("crown-beyond-pin", rope.rig()), Outcomes{pass});
  rope.thimble = "  length: 14 mm measured\n" + shape;
  rope.seat = "";
  EXPECT_EQ(outcomes("crown-beyond-pin", rope.rig()), Outcomes{not_checked}) << "its seat has no diameter";
}

TEST(Held, AWordThatSaysNoneIsNeverAPass) {
  for (const char* none : {"none", "None", "no", "nothing", " NONE."}) {
    Wire wire;
    wire.screw = "  locked: \"" + std::string(none) + "\"\n";
    wire.toggle = "  secured: \"" + std::string(none) + "\"\n";
    const Compilation rig = wire.rig();
    EXPECT_EQ(outcomes("thread-not-locked", rig), Outcomes{finding}) << none;
    EXPECT_EQ(count(rig, "pin-not-secured"), 1u) << none;
  }
}

TEST(Held, AWordThatSaysNothingIsNotChecked) {
  for (const char* word : {"?", "unknown", "yes", "ok"}) {
    Wire wire;
    wire.screw = "  locked: \"" + std::string(word) + "\"\n";
    wire.toggle = "  secured: \"" + std::string(word) + "\"\n";
    const Compilation rig = wire.rig();
    EXPECT_EQ(outcomes("thread-not-locked", rig), Outcomes{not_checked}) << word;
    const Outcomes pins = outcomes("pin-not-secured", rig);
    EXPECT_EQ(std::count(pins.begin(), pins.end(), pass), 0) << word;
  }
}

TEST(Held, AWordOfNoTradeIsAFindingAndNeverAPass) {
  for (const char* word : {"maybe", "no split pin yet", "yes", "?"}) {
    Wire wire;
    wire.screw = "  locked: \"" + std::string(word) + "\"\n";
    wire.toggle = "  secured: \"" + std::string(word) + "\"\n";
    const Compilation rig = wire.rig();
    EXPECT_EQ(outcomes("thread-not-locked", rig), Outcomes{not_checked}) << word;
    EXPECT_EQ(count(rig, "securing-unclear"), 2u) << word;
    EXPECT_EQ(count(rig, "pin-not-secured"), 0u) << word;
  }
}

TEST(Held, AWayIsAPass) {
  Wire wire;
  wire.screw = "  locked: \"lock nuts\"\n";
  EXPECT_EQ(outcomes("thread-not-locked", wire.rig()), Outcomes{pass});
}

} // namespace
} // namespace sheerpole::securing_test
