#include "calculate/strength/stay_stiffness.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/rules/rule_fixture.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::line_material_test {
namespace {

std::vector<CheckResult> results(std::string_view check, const std::string& text) {
  const Compilation compiled = test::compiled(text);
  if (!compiled.rig) {
    ADD_FAILURE() << "no rig";
    return {};
  }
  return build::results_of(check, *compiled.rig);
}

CheckResult result(std::string_view check, const std::string& text) {
  const auto all = results(check, text);
  EXPECT_EQ(all.size(), 1u);
  return all.empty() ? CheckResult{} : all.front();
}

CheckOutcome outcome(std::string_view check, const std::string& text) {
  return result(check, text).outcome;
}

/// A wire of 6 mm of which `line` states more, in a stay of which `stay` does.
std::string wire(const std::string& line, const std::string& stay = "", const std::string& limits = "",
                 const std::string& construction = "1x19") {
  return "language 1\n" + limits + "wire wire-6 {\n construction: \"" + construction +
         "\"\n size: \"6 mm\"\n" + line + "}\n" +
         "stay shroud {\n sides: port, starboard\n pin-to-pin: 10 m\n line: wire-6\n" + stay +
         " stack {\n  line\n }\n}\n";
}

std::string rope(const std::string& line, const std::string& stay, const std::string& limits = "",
                 const std::string& construction = "12-strand HMPE heat-set") {
  return "language 1\n" + limits + "rope hmpe-10 {\n construction: \"" + construction +
         "\"\n size: \"10 mm\"\n" + line + "}\n" + "stay shroud {\n pin-to-pin: 10 m\n line: hmpe-10\n" +
         stay + " stack {\n  line\n }\n}\n";
}

TEST(PairStretchDiffers, ComparesEAToTheLimit) {
  const auto pair = [](const std::string& one, const std::string& other, const std::string& kind = "wire") {
    return "language 1\nwire one {\n construction: \"1x19\"\n size: \"6 mm\"\n" + one + "}\n" + kind +
           " other {\n construction: \"1x19\"\n size: \"6 mm\"\n" + other +
           "}\nstay shroud {\n sides: port, starboard\n pin-to-pin: 10 m\n line: one\n stack {\n  line\n "
           "}\n}\n"
           "stay shroud.port {\n line: other\n}\n";
  };
  const auto check = "pair-stretch-differs";
  EXPECT_EQ(outcome(check, pair(" stiffness: 3_000 kN\n", " stiffness: 2_700 kN\n")), CheckOutcome::pass);
  EXPECT_EQ(outcome(check, pair(" stiffness: 3_000 kN\n", " stiffness: 2_699 kN\n")),
            CheckOutcome::finding);
  const CheckResult unknown = result(check, pair(" stiffness: 3_000 kN\n", ""));
  EXPECT_EQ(unknown.outcome, CheckOutcome::not_checked);
  EXPECT_NE(unknown.words.find("stiffness of other is not stated"), std::string::npos) << unknown.words;
  // Rope against wire is found without a number.
  EXPECT_EQ(outcome(check, pair("", "", "rope")), CheckOutcome::finding);
  EXPECT_EQ(outcome(check, wire("")), CheckOutcome::pass); // one and the same line on both sides
  EXPECT_TRUE(results(check, rope("", "")).empty());       // on the centreline there is no other side
}

TEST(CreepLoadHigh, IsAboutHmpeAlone) {
  const auto check = "creep-load-high";
  const std::string load = " break-load: 100 kN\n";
  EXPECT_EQ(outcome(check, rope(load, " dock-tension: 15 kN\n")), CheckOutcome::pass);
  EXPECT_EQ(outcome(check, rope(load, " dock-tension: 15.1 kN\n")), CheckOutcome::finding);
  const CheckResult usual_off =
      result(check, rope(load, " dock-tension: 16 kN\n", "limits {\n creep-load: off\n}\n"));
  EXPECT_EQ(usual_off.outcome, CheckOutcome::pass);
  EXPECT_EQ(usual_off.words, "dock tension 16 kN is 16 % of the 100 kN of hmpe-10; at most 20 %");
  EXPECT_EQ(result(check, rope(load, "")).words, "dock-tension is not stated");
  EXPECT_EQ(result(check, rope("", " dock-tension: 16 kN\n")).words, "break-load of hmpe-10 is not stated");
  EXPECT_TRUE(results(check, rope(load, " dock-tension: 40 kN\n", "", "polyester braid")).empty());
}

TEST(RopeHot, DrawsTheLineAtTheLimit) {
  EXPECT_EQ(outcome("rope-hot", rope("", " hottest: 50 degC\n")), CheckOutcome::pass);
  EXPECT_EQ(outcome("rope-hot", rope("", " hottest: 51 degC\n")), CheckOutcome::finding);
  EXPECT_EQ(result("rope-hot", rope("", "")).words, "hottest is not stated");
  EXPECT_TRUE(results("rope-hot", wire("", " hottest: 90 degC\n")).empty());
}

// 150 GPa x pi/4 x 36 mm2 = 4241.15 kN by hand.
TEST(ModulusOnWrongArea, FindsTheSolidModulusOnTheFullCircle) {
  const auto check = "modulus-on-wrong-area";
  EXPECT_EQ(outcome(check, wire(" modulus: 193 GPa\n metallic-area: 28.27 mm2\n")), CheckOutcome::finding);
  EXPECT_EQ(outcome(check, wire(" stiffness: 4_241.1 kN\n")), CheckOutcome::pass);
  EXPECT_EQ(outcome(check, wire(" stiffness: 4_241.2 kN\n")), CheckOutcome::finding);
  // The same modulus on the metal alone is right: 141 GPa x 0.76 is the 107.5 GPa of the trade.
  EXPECT_EQ(outcome(check, wire(" modulus: 141 GPa\n metallic-area: 21.49 mm2\n")), CheckOutcome::pass);
  EXPECT_EQ(outcome(check, wire(" stiffness: 5_400 kN\n", "", "", "7x7")), CheckOutcome::finding);
  EXPECT_TRUE(results(check, wire(" stiffness: 5_400 kN\n", "", "", "solid")).empty());
  EXPECT_EQ(result(check, wire("")).words, "stiffness is not stated");
}

// 0.3 and 2 kN/mm2 on 36 mm2: 10.8 and 72 kN.
TEST(BreakLoadUnlikely, TakesWhatLinesHave) {
  const auto check = "break-load-unlikely";
  EXPECT_EQ(outcome(check, wire(" break-load: 10.8 kN\n")), CheckOutcome::pass);
  EXPECT_EQ(outcome(check, wire(" break-load: 10.79 kN\n")), CheckOutcome::finding);
  EXPECT_EQ(outcome(check, wire(" break-load: 72 kN\n")), CheckOutcome::pass);
  EXPECT_EQ(outcome(check, wire(" break-load: 72.1 kN\n")), CheckOutcome::finding);
  EXPECT_EQ(outcome(check, wire(" break-load: 5 kN\n", "", "limits {\n break-load-low: off\n}\n")),
            CheckOutcome::pass);
  EXPECT_EQ(outcome(check, wire("")), CheckOutcome::not_checked);
}

// ISO 1141, 3-strand polyester of 12 mm, from memory: about 22 kN, half of what the least HMPE holds. The
// same number of kgf or lbf written as newtons lies below a third of the bound as well.
TEST(BreakLoadUnlikely, LaidPolyesterHoldsAThird) {
  const auto laid = [](const std::string& fibre, const std::string& load) {
    return outcome("break-load-unlikely", "language 1\nrope one {\n construction: \"3-strand " + fibre +
                                              "\"\n size: \"12 mm\"\n break-load: " + load +
                                              "\n}\nstay shroud {\n pin-to-pin: 10 m\n line: one\n stack "
                                              "{\n  line\n }\n}\n");
  };
  EXPECT_EQ(laid("polyester", "22 kN"), CheckOutcome::pass);
  EXPECT_EQ(laid("polyester", "2_243 N"), CheckOutcome::finding);
  EXPECT_EQ(laid("polyester", "4_946 N"), CheckOutcome::finding);
  EXPECT_EQ(laid("polyester", "100 kN"), CheckOutcome::finding);
  EXPECT_EQ(laid("HMPE", "22 kN"), CheckOutcome::finding);
}

// The published least strengths of 7x19 of corrosion-resistant steel, FAA AC 43.13-1B table 7-3 (1/8 in
// 1760 lbf, 1/4 in 6400 lbf, 3/8 in 12 000 lbf), lie within; the same numbers taken for newtons do not.
TEST(BreakLoadUnlikely, KnowsPublishedWires) {
  const auto published = [](const std::string& size, const std::string& load) {
    return "language 1\nwire one {\n construction: \"7x19\"\n size: \"" + size +
           "\"\n break-load: " + load +
           "\n}\nstay shroud {\n pin-to-pin: 10 m\n line: one\n stack {\n  line\n }\n}\n";
  };
  for (const auto& [size, load] :
       {std::pair{"1/8 in", "1_760"}, {"1/4 in", "6_400"}, {"3/8 in", "12_000"}}) {
    EXPECT_EQ(outcome("break-load-unlikely", published(size, std::string(load) + " lbf")),
              CheckOutcome::pass);
    EXPECT_EQ(outcome("break-load-unlikely", published(size, std::string(load) + " N")),
              CheckOutcome::finding);
  }
}

TEST(Pretension, HasALimitEitherWay) {
  const auto pulled = [](const std::string& tension) {
    return wire(" break-load: 30 kN\n", " dock-tension: " + tension + "\n bench-tension: 100 N\n");
  };
  EXPECT_EQ(outcome("pretension-low", pulled("1.5 kN")), CheckOutcome::pass);
  EXPECT_EQ(outcome("pretension-low", pulled("1.49 kN")), CheckOutcome::finding);
  EXPECT_EQ(outcome("pretension-high", pulled("7.5 kN")), CheckOutcome::pass);
  EXPECT_EQ(outcome("pretension-high", pulled("7.51 kN")), CheckOutcome::finding);
  EXPECT_EQ(result("pretension-low", wire(" break-load: 30 kN\n")).words, "dock-tension is not stated");
  EXPECT_TRUE(results("pretension-low", rope(" break-load: 92 kN\n", " dock-tension: 1 kN\n")).empty());
}

Particular fact(const std::string& name, double si) {
  Particular result;
  result.name = name;
  result.value.value.si = si;
  return result;
}

// Pellimoor on her cold day, 25 to 5 degC: the path of the cap shroud gets 5.3 mm shorter and its rope 2.7
// mm longer, computed outside the project, so that it gains 8.0 mm. With an EA of 3200 kN over 11.38 m that
// is 8.0e-3 x 3200 / 11.38 = 2.25 kN by hand, 56 % of a dock tension of 4 kN.
TEST(ColdLoss, OfPellimoorByHand) {
  DiskFileReader reader;
  const Compilation compiled = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/pellimoor.rig", reader);
  ASSERT_TRUE(compiled.rig);
  Rig rig = *compiled.rig;
  for (LineMaterial& material : rig.materials)
    material.particulars.push_back(fact("stiffness", 3'200e3));
  for (Stay& stay : rig.stays)
    stay.particulars.push_back(fact("dock-tension", 4'000));
  EXPECT_FALSE(stated_coldest(rig));
  const Derived derived = calculate(rig);
  std::size_t met = 0;
  for (const DerivedStay& stay : derived.stays) {
    if (rig[stay.stay].base != "cap-shroud")
      continue;
    const ColdLoss loss = cold_loss(rig, stay, 5.0 + 273.15);
    ASSERT_TRUE(loss.not_checked.empty()) << say(rig, loss.not_checked.front());
    EXPECT_NEAR(loss.slack.millimetres(), 8.0, 0.1);
    EXPECT_NEAR(loss.lost.kilonewtons(), 2.25, 0.03);
    EXPECT_NEAR(loss.share, 0.5625, 0.0075);
    ++met;
  }
  EXPECT_EQ(met, 2u);
}

TEST(ColdSlack, SaysWhatIsNotStated) {
  const CheckResult no_day = result("cold-slack", wire(""));
  EXPECT_EQ(no_day.outcome, CheckOutcome::not_checked);
  EXPECT_EQ(no_day.words, "coldest of take-up is not stated");
  const CheckResult nothing = result("cold-slack", wire("", "", "take-up {\n coldest: 0 degC\n}\n"));
  EXPECT_EQ(nothing.subject, "shroud");
  EXPECT_NE(nothing.words.find("dock-tension is not stated; stiffness of wire-6 is not stated"),
            std::string::npos)
      << nothing.words;
}

} // namespace
} // namespace sheerpole::line_material_test
