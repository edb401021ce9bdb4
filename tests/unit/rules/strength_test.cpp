#include "unit/calculate/compiled_rig.hpp"
#include "unit/rules/rule_fixture.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::strength_test {
namespace {

std::vector<CheckResult> results(std::string_view check, const std::string& text) {
  const Compilation compiled = test::compiled(text);
  if (!compiled.rig) {
    ADD_FAILURE() << "no rig";
    return {};
  }
  return build::results_of(check, *compiled.rig);
}

/// The only result.
CheckResult result(std::string_view check, const std::string& text) {
  const auto all = results(check, text);
  EXPECT_EQ(all.size(), 1u);
  return all.empty() ? CheckResult{} : all.front();
}

/// A wire of so much between two terminals of 33 kN, loaded with so much; `end` goes into the terminals.
std::string wire(const std::string& break_load, const std::string& load, const std::string& end = "",
                 const std::string& limits = "") {
  return "language 1\n" + limits + "wire wire-6 {\n construction: \"1x19\"\n size: \"6 mm\"\n" +
         (break_load.empty() ? "" : " break-load: " + break_load + "\n") +
         "}\n"
         "terminal eye-62 {\n length: 62 mm\n lower: wire-socket (inserted: 50 mm)\n break-load: 33 kN\n" +
         end +
         "}\n"
         "stay shroud {\n sides: port, starboard\n pin-to-pin: 10 m\n line: wire-6\n" +
         (load.empty() ? "" : " load: " + load + "\n") + " stack {\n  eye-62\n  line\n  eye-62\n }\n}\n";
}

TEST(WeakestPart, IsAnythingBelowTheLineAndNothingAtIt) {
  EXPECT_EQ(result("weakest-part", wire("33 kN", "")).outcome, CheckOutcome::pass);
  const CheckResult found = result("weakest-part", wire("33.01 kN", ""));
  EXPECT_EQ(found.outcome, CheckOutcome::finding);
  EXPECT_EQ(found.subject, "shroud"); // both sides alike, said once
  EXPECT_EQ(found.words, "shroud: eye-62 holds 33 kN, less than the line: wire-6 33.01 kN");
}

TEST(WeakestPart, MayBeMeant) {
  const CheckResult meant =
      result("weakest-part", wire("40 kN", "", " weak-link: \"goes before the mast does\"\n"));
  EXPECT_EQ(meant.outcome, CheckOutcome::pass);
  EXPECT_NE(meant.words.find("eye-62 33 kN is meant to be weaker: goes before the mast does"),
            std::string::npos)
      << meant.words;
}

TEST(WeakestPart, IsNotCheckedWithoutTheLineOrAPart) {
  const CheckResult no_line = result("weakest-part", wire("", ""));
  EXPECT_EQ(no_line.outcome, CheckOutcome::not_checked);
  EXPECT_NE(no_line.words.find("break-load of wire-6"), std::string::npos) << no_line.words;
  const CheckResult no_pin =
      result("weakest-part", wire("30 kN", "", " upper: jaw (gap: 12 mm, pin: \"10 mm\")\n"));
  EXPECT_EQ(no_pin.outcome, CheckOutcome::not_checked);
  EXPECT_EQ(
      no_pin.words,
      "nothing that is known is weaker than wire-6 30 kN; not stated: pin-stress or pin-break-load of "
      "eye-62");
}

TEST(FactorLow, DrawsTheLineAtTheLimit) {
  EXPECT_EQ(result("factor-low", wire("30 kN", "12 kN")).outcome, CheckOutcome::pass); // 2.5
  EXPECT_EQ(result("factor-low", wire("30 kN", "12.01 kN")).outcome, CheckOutcome::finding);
  EXPECT_EQ(result("factor-low", wire("30 kN", "12.01 kN", "", "limits {\n break-factor: 2\n}\n")).outcome,
            CheckOutcome::pass);
  EXPECT_TRUE(
      results("factor-low", wire("30 kN", "18 kN", "", "limits {\n break-factor: off\n}\n")).empty());
}

TEST(FactorLow, WithoutALoadOrWithAnUnknownLinkIsNotChecked) {
  EXPECT_EQ(result("factor-low", wire("30 kN", "")).words, "load is not stated");
  const std::string jaw = " upper: jaw (gap: 12 mm, pin: \"10 mm\")\n";
  const CheckResult unknown = result("factor-low", wire("30 kN", "12 kN", jaw));
  EXPECT_EQ(unknown.outcome, CheckOutcome::not_checked);
  EXPECT_NE(unknown.words.find("holds at most 30 kN"), std::string::npos) << unknown.words;
  // What is known is too weak already: the unknown can only make it worse.
  EXPECT_EQ(result("factor-low", wire("30 kN", "18 kN", jaw)).outcome, CheckOutcome::finding);
}

/// A stay on a chainplate whose hole bears 12 x `thickness` x 400 MPa.
std::string plated(const std::string& thickness, const std::string& stress, const std::string& load) {
  return "language 1\n"
         "wire wire-6 {\n construction: \"1x19\"\n size: \"6 mm\"\n}\n"
         "toggle toggle-60 {\n length: 60 mm\n upper: wire-socket (inserted: 50 mm)\n"
         " lower: jaw (gap: 14 mm, pin: \"12 mm\")\n}\n"
         "chainplate plate-a {\n upper: eye (hole: 12.3 mm, thickness: " +
         thickness + ")\n" + stress +
         "}\n"
         "stay shroud {\n pin-to-pin: 10 m\n line: wire-6\n" +
         (load.empty() ? "" : " load: " + load + "\n") +
         " stack {\n  line\n  toggle-60\n  plate-a\n }\n}\n";
}

// 12 mm x 10 mm x 400 N/mm2 = 48 kN by hand: twice 24 kN.
TEST(PinBearingHigh, DrawsTheLineAtTheLimit) {
  const std::string stress = " bearing-stress: 400 MPa\n";
  EXPECT_EQ(result("pin-bearing-high", plated("10 mm", stress, "24 kN")).outcome, CheckOutcome::pass);
  EXPECT_EQ(result("pin-bearing-high", plated("10 mm", stress, "24.01 kN")).outcome, CheckOutcome::finding);
  EXPECT_EQ(result("pin-bearing-high", plated("10 mm", stress, "")).words, "load is not stated");
  const CheckResult unstated = result("pin-bearing-high", plated("10 mm", "", "24 kN"));
  EXPECT_EQ(unstated.outcome, CheckOutcome::not_checked);
  EXPECT_EQ(unstated.words, "hole of plate-a: bearing-stress of plate-a is not stated");
  EXPECT_TRUE(results("pin-bearing-high", wire("30 kN", "12 kN")).empty()); // no hole anywhere
}

/// Two stays on one pin of 10 mm on each side, loaded with so much.
std::string shared(const std::string& cap, const std::string& lower, const std::string& pin,
                   const std::string& lower_plate = "plate") {
  const auto stay = [](const std::string& name, const std::string& top, const std::string& plate,
                       const std::string& load) {
    return "stay " + name + " {\n sides: port, starboard\n path: " + top + " > " + plate +
           "\n line: wire-6\n" + (load.empty() ? "" : " load: " + load + "\n") +
           " stack {\n  line\n  toggle-60\n  plate-a\n }\n}\n";
  };
  return "language 1\n"
         "wire wire-6 {\n construction: \"1x19\"\n size: \"6 mm\"\n}\n"
         "toggle toggle-60 {\n length: 60 mm\n lower: jaw (gap: 14 mm, pin: \"10 mm\")\n" +
         pin +
         "}\n"
         "chainplate plate-a {\n upper: eye (hole: 10.3 mm, thickness: 12 mm)\n}\n"
         "points {\n masthead: (0, 0, 12) m\n hounds: (0, 0, 7) m\n plate: (0, 1.4, 1.1) m mirrored\n"
         " plate-aft: (-0.3, 1.4, 1.1) m mirrored\n}\n" +
         stay("cap-shroud", "masthead", "plate", cap) + stay("lower-shroud", "hounds", lower_plate, lower);
}

// 2 x pi/4 x 100 mm2 x 350 N/mm2 = 54.978 kN; over 2.5 is 21.99 kN.
TEST(SharedPinWeak, AddsTheLoadsOfAllThatEndOnThePin) {
  const std::string pin = " pin-stress: 350 MPa\n";
  EXPECT_EQ(result("shared-pin-weak", shared("11 kN", "10.9 kN", pin)).outcome, CheckOutcome::pass);
  const CheckResult found = result("shared-pin-weak", shared("11 kN", "11 kN", pin));
  EXPECT_EQ(found.outcome, CheckOutcome::finding);
  EXPECT_EQ(found.subject, "plate"); // both sides alike, said once
  EXPECT_TRUE(results("shared-pin-weak", shared("11 kN", "11 kN", pin, "plate-aft")).empty());
}

TEST(SharedPinWeak, NamesWhatIsNotStated) {
  const CheckResult unstated = result("shared-pin-weak", shared("11 kN", "", ""));
  EXPECT_EQ(unstated.outcome, CheckOutcome::not_checked);
  EXPECT_EQ(unstated.words, "shared by cap-shroud, lower-shroud; not stated: load of lower-shroud, "
                            "pin-stress or pin-break-load of the pin");
}

/// A mast with one level of spreaders that stands 5.5 m below them and 11.4 m below its top, chainplates
/// 1.25 m out, under 3200 N: 29 184 N in its lower panel by statics.
std::string pressed(const std::string& mast, const std::string& screening) {
  const auto shroud = [](const std::string& name, const std::string& path) {
    return "stay " + name + " {\n sides: port, starboard\n path: " + path +
           "\n line: wire-6\n stack {\n  line\n }\n}\n";
  };
  return "language 1\nwire wire-6 {\n construction: \"1x19\"\n size: \"6 mm\"\n}\n"
         "spar mast {\n sort: mast\n heel: (0, 0, 1.2) m\n carries: masthead, hounds\n" +
         mast +
         "}\npoints {\n masthead: (0, 0, 12.6) m\n hounds: (0, 0, 6.7) m\n"
         " tip: (0, 1, 6.7) m mirrored\n plate: (0, 1.25, 1.2) m mirrored\n}\n"
         "spreader arm {\n root: hounds\n tip: tip\n}\n" +
         shroud("cap", "masthead > tip free > plate") + shroud("lower", "hounds > plate") + screening;
}

const std::string by_statics =
    "load-screening of cap {\n method: joint-equilibrium\n side-force: 3_200 N\n}\n";

// Euler by hand: EI = 1.5 x 1.85 x 29 184 N x (5.5 m)^2 / pi^2 = 248 218.09 N m2 is the limit; the 1.85 for
// stays, halyards and sheets is from memory of Skene's.
TEST(PanelOverloaded, DrawsTheLineAtTheLimit) {
  const auto stiff = [](const std::string& bending) {
    return pressed(" bending-stiffness-across: " + bending + "\n", by_statics);
  };
  EXPECT_EQ(result("panel-overloaded", stiff("248.219 kNm2")).outcome, CheckOutcome::pass);
  EXPECT_EQ(result("panel-overloaded", stiff("248.217 kNm2")).outcome, CheckOutcome::finding);
}

// Partners half a metre above the heel shorten the panel to 5 m: EI of the limit is 205 139 N m2.
TEST(PanelOverloaded, BeginsAtThePartnersOfAMastOnTheKeel) {
  const std::string keel = " step: keel\n bending-stiffness-across: 205.2 kNm2\n";
  EXPECT_EQ(result("panel-overloaded", pressed(keel + " partners: 1.7 m\n", by_statics)).outcome,
            CheckOutcome::pass);
  const CheckResult unstated = result("panel-overloaded", pressed(keel, by_statics));
  EXPECT_EQ(unstated.outcome, CheckOutcome::not_checked);
  EXPECT_NE(unstated.words.find("partners"), std::string::npos) << unstated.words;
}

TEST(PanelOverloaded, IsNotCheckedWithoutItsNumbers) {
  EXPECT_EQ(result("panel-overloaded", pressed("", by_statics)).words,
            "bending-stiffness-across is not stated");
  EXPECT_EQ(result("panel-overloaded", pressed("", "")).words,
            "no load-screening by joint-equilibrium gives its compression");
  EXPECT_TRUE(results("panel-overloaded", wire("30 kN", "12 kN")).empty()); // no mast is stated
}

} // namespace
} // namespace sheerpole::strength_test
