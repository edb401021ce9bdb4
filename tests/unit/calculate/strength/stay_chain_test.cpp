#include "calculate/strength/stay_chain.hpp"
#include "wording/say.hpp"
#include "wording/strength_words.hpp"

#include "rules/check_report.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "units/quantity_text.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::stay_chain_test {
namespace {

/// A shroud of rope on a lashing, as on the example boat Pellimoor. `more` goes into the parts.
std::string lashed(const std::string& splice, const std::string& lashing, const std::string& limits = "") {
  return "language 1\n" + limits +
         "rope hmpe-9 {\n construction: \"12-strand HMPE heat-set\"\n size: \"9 mm\"\n break-load: 92 "
         "kN\n}\n"
         "rope cord-4 {\n construction: \"HMPE cord\"\n size: \"4 mm\"\n break-load: 15 kN\n}\n"
         "splice long-bury {\n bury: 72 d\n eye-allowance: 12 d\n contraction: 8 %\n" +
         splice +
         "}\n"
         "tang tang-10 {\n lower: jaw (gap: 12 mm, pin: \"10 mm\")\n}\n"
         "thimble thimble-16 {\n length: 16 mm\n upper: eye (hole: 10.3 mm, thickness: 10 mm)\n"
         " lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}\n"
         "deadeye deadeye-38 {\n length: 38 mm\n upper: rope-seat (diameter: 40 mm, throat: 60 mm)\n"
         " lower: holes (count: 5, diameter: 16 mm)\n}\n"
         "lashing lashing-260 {\n shortest: 60 mm\n longest: 260 mm\n" +
         lashing +
         "}\n"
         "link lash-block-46 {\n length: 46 mm\n upper: holes (count: 6, diameter: 14 mm)\n"
         " lower: jaw (gap: 9 mm, pin: \"10 mm\")\n pin-stress: 300 MPa\n}\n"
         "chainplate plate-10 {\n upper: eye (hole: 10.3 mm, thickness: 8 mm)\n bearing-stress: 400 "
         "MPa\n}\n"
         "stay shroud {\n pin-to-pin: 11 m\n line: hmpe-9\n stack {\n  tang-10\n  thimble-16 (splice: "
         "long-bury)\n  line\n  deadeye-38 (splice: long-bury)\n  lashing-260 (gap: 160 mm, passes: 6)\n"
         "  lash-block-46\n  plate-10\n }\n}\n";
}

const std::string lashed_with = " cord: cord-4\n knot-factor: 50 %\n";

/// The chain of a stay with the rig that its links speak of.
struct ChainOfRig : StayChain {
  ChainOfRig(Rig of, StayChain chain) : StayChain(std::move(chain)), rig(std::move(of)) {}
  std::string said(const Remark& remark) const { return say(rig, remark); }

  Rig rig;
};

ChainOfRig chain_of(const std::string& text) {
  const Compilation compiled = test::compiled(text);
  if (!compiled.derived)
    return {{}, {}};
  return {*compiled.rig, compiled.derived->stays.at(0).chain};
}

const ChainLink& link(const ChainOfRig& chain, const std::string& name) {
  for (const ChainLink& one : chain.links)
    if (chain.said(one.name) == name)
      return one;
  ADD_FAILURE() << "no link " << name;
  return chain.links.front();
}

double kilonewtons(const ChainOfRig& chain, const std::string& name) {
  const ChainLink& one = link(chain, name);
  EXPECT_TRUE(one.break_load) << name;
  return one.break_load ? one.break_load->kilonewtons() : 0.0;
}

// By hand: 6 passes, one leg of each, of a cord of 15 kN that its knot halves: 6 x 15 x 0.5 = 45 kN,
// against the rope of 92 kN.
TEST(StayChain, LashingOfPellimoorByHand) {
  const ChainOfRig chain = chain_of(lashed("", lashed_with));
  EXPECT_NEAR(kilonewtons(chain, "cord of lashing-260"), 45.0, 1e-9);
  EXPECT_EQ(chain.said(link(chain, "cord of lashing-260").how),
            "6 passes x 1 leg x 15 kN of cord-4 x 50 % in the knot");
  ASSERT_TRUE(chain.line && chain.weakest);
  EXPECT_NEAR(chain.links[*chain.line].break_load->kilonewtons(), 92.0, 1e-9);
  EXPECT_EQ(chain.said(chain.links[*chain.line].name), "hmpe-9");
}

// Two legs a pass, by the limit: 90 kN.
TEST(StayChain, CountsTheLegsThatTheLimitSays) {
  const ChainOfRig both = chain_of(lashed("", lashed_with, "limits {\n lashing-legs: 200 %\n}\n"));
  EXPECT_NEAR(kilonewtons(both, "cord of lashing-260"), 90.0, 1e-9);
  EXPECT_EQ(both.said(link(both, "cord of lashing-260").how),
            "6 passes x 2 legs x 15 kN of cord-4 x 50 % in the knot");
  const ChainOfRig off = chain_of(lashed("", lashed_with, "limits {\n lashing-legs: off\n}\n"));
  EXPECT_FALSE(link(off, "cord of lashing-260").break_load);
}

// 92 kN x 90 % = 82.8 kN at each splice: the line as spliced.
TEST(StayChain, SpliceTakesItsShareOfTheRope) {
  const ChainOfRig chain = chain_of(lashed(" efficiency: 90 %\n", lashed_with));
  EXPECT_NEAR(kilonewtons(chain, "hmpe-9, long-bury aloft"), 82.8, 1e-9);
  EXPECT_NEAR(kilonewtons(chain, "hmpe-9, long-bury below"), 82.8, 1e-9);
  ASSERT_TRUE(chain.line);
  EXPECT_EQ(chain.said(chain.links[*chain.line].name), "hmpe-9, long-bury aloft");
}

// Double shear of a 10 mm pin at 300 MPa by hand: 2 x pi/4 x 100 mm2 x 300 N/mm2 = 47.12 kN. The hole:
// 10 x 8 x 400 = 32 kN.
TEST(StayChain, PinAndHoleByHand) {
  const ChainOfRig chain = chain_of(lashed("", lashed_with));
  EXPECT_NEAR(kilonewtons(chain, "pin of lash-block-46"), 47.1239, 5e-5);
  EXPECT_NEAR(kilonewtons(chain, "hole of plate-10"), 32.0, 1e-9);
  ASSERT_TRUE(chain.weakest);
  EXPECT_EQ(chain.said(chain.links[*chain.weakest].name), "hole of plate-10");
}

TEST(StayChain, NamesWhatIsNotStatedOnceAndNeverTakesItForStrong) {
  const ChainOfRig chain = chain_of(lashed("", ""));
  EXPECT_EQ(unknown_words(chain.rig, chain),
            "break-load of tang-10, thimble-16, deadeye-38, lash-block-46, plate-10; pin-stress or "
            "pin-break-load of tang-10; efficiency of long-bury; cord of lashing-260; knot-factor of "
            "lashing-260");
  EXPECT_FALSE(link(chain, "cord of lashing-260").break_load);
  // The thimble states no pressure for its hole: the part itself is the link.
  EXPECT_FALSE(link(chain, "hole of thimble-16").counted);
}

TEST(StayChain, GoesFromAloftToDeck) {
  const ChainOfRig chain = chain_of(lashed("", lashed_with));
  std::string order;
  for (const ChainLink& one : chain.links)
    order += chain.said(one.name) + "; ";
  EXPECT_EQ(order, "tang-10; pin of tang-10; hole of thimble-16; thimble-16; hmpe-9, long-bury aloft; "
                   "hmpe-9; hmpe-9, long-bury below; deadeye-38; cord of lashing-260; lash-block-46; "
                   "pin of lash-block-46; hole of plate-10; plate-10; ");
}

// The pin that lies in the joint goes before the one that the jaw came with, and a bush fills the hole.
TEST(StayChain, PinInTheJointGoesBeforeThatOfTheJaw) {
  const std::string rig =
      "language 1\n"
      "wire wire-6 {\n construction: \"1x19\"\n size: \"6 mm\"\n break-load: 30 kN\n}\n"
      "terminal eye-62 {\n length: 62 mm\n lower: wire-socket (inserted: 50 mm)\n break-load: 32 kN\n}\n"
      "toggle toggle-60 {\n length: 60 mm\n upper: wire-socket (inserted: 50 mm)\n"
      " lower: jaw (gap: 14 mm, pin: \"12 mm\")\n pin-stress: 200 MPa\n break-load: 40 kN\n}\n"
      "pin pin-12 {\n size: \"12 mm\"\n pin-stress: 300 MPa\n}\n"
      "pin pin-rated {\n size: \"12 mm\"\n break-load: 50 kN\n}\n"
      "bush bush-12 {\n upper: eye (hole: 12.1 mm)\n}\n"
      "chainplate plate-a {\n upper: eye (hole: 14 mm, thickness: 10 mm)\n bearing-stress: 400 MPa\n"
      " break-load: 60 kN\n}\n"
      "stay one {\n pin-to-pin: 10 m\n line: wire-6\n stack {\n  eye-62\n  line\n  toggle-60\n  pin-12\n"
      "  bush-12\n  plate-a\n }\n}\n"
      "stay two {\n pin-to-pin: 10 m\n line: wire-6\n stack {\n  eye-62\n  line\n  toggle-60\n  pin-rated\n"
      "  bush-12\n  plate-a\n }\n}\n";
  const Compilation compiled = test::compiled(rig);
  ASSERT_TRUE(compiled.derived);
  const ChainOfRig one{*compiled.rig, compiled.derived->stays.at(0).chain};
  // 2 x pi/4 x 144 x 300 = 67.858 kN; a 12 mm pin of 0.6 x 500 MPa carries 67.9 kN (statics by hand).
  EXPECT_NEAR(kilonewtons(one, "pin-12"), 67.858, 5e-4);
  EXPECT_NEAR(kilonewtons(one, "hole of plate-a"), 14.0 * 10.0 * 0.4, 1e-9);
  EXPECT_TRUE(one.unknown.empty());
  EXPECT_EQ(unknown_words(one.rig, one), "");
  EXPECT_NEAR(kilonewtons({*compiled.rig, compiled.derived->stays.at(1).chain}, "pin-rated"), 50.0, 1e-9);
}

TEST(ForceText, IsShort) {
  EXPECT_EQ(force_text(Force::newtons(45'000)), "45 kN");
  EXPECT_EQ(force_text(Force::newtons(47'123.9)), "47.12 kN");
  EXPECT_EQ(force_text(Force::newtons(850.4)), "850 N");
  EXPECT_TRUE(is_below(2.49, 2.5));
  EXPECT_FALSE(is_below(2.5 * (1 - 1e-12), 2.5));
}

} // namespace
} // namespace sheerpole::stay_chain_test
