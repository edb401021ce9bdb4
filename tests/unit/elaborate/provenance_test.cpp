#include "unit/elaborate/understood.hpp"
#include "wording/print_phases.hpp"

#include <gmock/gmock.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace sheerpole::provenance_test {
namespace {

using rig_test::Understood;
using testing::ElementsAre;
using testing::IsEmpty;

/// How the length of the toggle at the end of the text is known.
Provenance known_as(const std::string& value, const std::string& lets) {
  const Understood rig("language 1\n" + lets + "toggle toggle-12 {\n  length: " + value + "\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty()) << value;
  return rig.rig.parts.at(0).length->provenance;
}

TEST(Sources, AreThoseOfTheFile) {
  const Provenance stated = known_as("82 mm maker \"sheet 4\"", "");
  EXPECT_EQ(stated.source_class, SourceClass::maker);
  EXPECT_EQ(stated.note, "sheet 4");
  EXPECT_EQ(stated.written, "82 mm");
  EXPECT_THAT(stated.assumptions, IsEmpty());
  EXPECT_EQ(known_as("82 mm", "").source_class, SourceClass::unstated);
}

TEST(Sources, AnAssumedNumberIsItsOwnAssumption) {
  const Provenance assumed = known_as("82 mm assumed", "");
  EXPECT_EQ(assumed.source_class, SourceClass::assumed);
  EXPECT_THAT(assumed.assumptions, ElementsAre("length of toggle-12"));
}

TEST(Sources, ANameCarriesTheSourceOfItsValue) {
  const Provenance named = known_as("drop", "let drop = 12 mm measured \"tape\"\n");
  EXPECT_EQ(named.source_class, SourceClass::measured);
  EXPECT_EQ(named.note, "tape");
  EXPECT_EQ(known_as("drop", "let drop = 12 mm\n").note, "from drop");
}

TEST(Sources, AssumptionsReachThroughWhatIsComputed) {
  const std::string lets =
      "let a = 12 mm assumed\nlet b = 5 mm measured\nlet c = a + b\nlet d = 2 mm assumed\n";
  const Provenance computed = known_as("c * 2 + d", lets);
  EXPECT_EQ(computed.source_class, SourceClass::computed);
  EXPECT_EQ(computed.note, "from c * 2 + d");
  EXPECT_THAT(computed.assumptions, ElementsAre("value of a", "value of d"));
}

TEST(Sources, AStatedSourceOfAComputedValueVouchesForIt) {
  const std::string lets = "let a = 12 mm assumed\n";
  const Provenance measured = known_as("a + 5 mm measured \"tape\"", lets);
  EXPECT_EQ(measured.source_class, SourceClass::measured);
  EXPECT_THAT(measured.assumptions, IsEmpty());
  EXPECT_THAT(known_as("a + 5 mm computed", lets).assumptions, ElementsAre("value of a"));
}

TEST(Sources, ASettingRestsOnTheRangeAndOnTheShare) {
  const Understood rig(
      "language 1\nrope cord { construction: \"12-strand\" \n size: \"9 mm\" }\n"
      "turnbuckle bottle-12 {\n  shortest: 265 mm assumed\n  longest: 395 mm maker\n}\n"
      "stay forestay {\n  line: cord\n  stack {\n    line\n    bottle-12 (open: 50 % assumed)\n  }\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  const Provenance& set = rig.rig.stays.at(0).stack.at(1).set_length->provenance;
  EXPECT_EQ(set.source_class, SourceClass::computed);
  EXPECT_THAT(set.assumptions, ElementsAre("shortest of bottle-12", "open of bottle-12 in forestay"));
}

TEST(Sources, OfASizeIsThatOfTheDiameter) {
  const Understood rig(
      "language 1\nrope cord {\n  construction: \"12-strand\"\n  size: \"9 mm\" assumed\n}\n"
      "rope line-8 {\n  construction: \"12-strand\"\n  size: \"8 mm\"\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  EXPECT_THAT(rig.rig.materials.at(0).diameter.provenance.assumptions, ElementsAre("size of cord"));
  EXPECT_EQ(rig.rig.materials.at(1).diameter.provenance.source_class, SourceClass::computed);
  EXPECT_DOUBLE_EQ(rig.rig.materials.at(1).diameter.value.millimetres(), 8.0);
}

const std::vector<std::string> declarations = {
    "let drop = 12 mm assumed\n",
    "let edge = drop * 2\n",
    "boat \"Tern\" {\n  beam: 3.20 m drawn\n}\n",
    "points {\n  tang-pin: (0, 0.1, 10) m mirrored\n  plate-pin: tang-pin + (0 m, 1 m, -9 m) mirrored\n}\n",
    "points {\n  plate-pin.port: (0, -1.41, 1) m measured\n}\n",
    "rope cord { construction: \"12-strand\"\n  size: \"9 mm\" }\n",
    "toggle toggle-12 {\n  length: 82 mm + edge\n}\n",
    "toggle long from toggle-12 {\n  wrap: 159 mm\n}\n",
    "stay shroud {\n  sides: port, starboard\n  path: tang-pin > plate-pin\n  line: cord\n  stack {\n    "
    "long\n    line\n"
    "  }\n}\n",
    "reading of shroud.port {\n  method: tape\n  runs: 9_101 mm\n}\n",
};

/// The facts of a rig without the order of the things in it: a head line with what is indented below it is
/// one thing.
std::vector<std::string> sorted_things(const std::string& printed) {
  std::vector<std::string> things;
  std::size_t at = 0;
  while (at < printed.size()) {
    const std::size_t end = printed.find('\n', at) + 1;
    if (printed[at] == ' ' && !things.empty())
      things.back() += printed.substr(at, end - at);
    else
      things.push_back(printed.substr(at, end - at));
    at = end;
  }
  std::sort(things.begin(), things.end());
  return things;
}

RC_GTEST_PROP(Order, OfDeclarationsChangesNothing, ()) {
  std::string straight = "language 1\n";
  for (const std::string& declaration : declarations)
    straight += declaration;
  std::vector<std::string> left = declarations;
  std::string shuffled = "language 1\n";
  while (!left.empty()) {
    const auto index = static_cast<std::size_t>(*rc::gen::inRange<std::size_t>(0, left.size()));
    shuffled += left[index];
    left.erase(left.begin() + static_cast<std::ptrdiff_t>(index));
  }
  const Understood one(straight);
  const Understood other(shuffled);
  RC_ASSERT(one.findings().empty());
  RC_ASSERT(other.findings().empty());
  RC_ASSERT(one.rig.stays.size() == 2u);
  RC_ASSERT(sorted_things(print_rig(one.rig)) == sorted_things(print_rig(other.rig)));
}

TEST(PrintRig, ShowsEveryNumberAsWrittenAndAsUnderstood) {
  const Understood rig(
      "language 1\n"
      "boat \"Tern\" {\n  beam: 10' 6\" drawn\n}\n"
      "points {\n  tang-pin \"Tang\": (0, 0.1, 10) m mirrored drawn \"sail plan\"\n}\n"
      "rope cord {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n  break-load: 92 kN maker\n}\n"
      "turnbuckle bottle-12 {\n  shortest: 265 mm ± 1 mm measured\n  longest: 395 mm assumed\n"
      "  thread: \"M12\"\n  screw: pair\n  upper: jaw (gap: 1/2 in, pin: \"12 mm\")\n}\n"
      "stay forestay {\n  pin-to-pin: 9 m measured \"tape\"\n  line: cord\n  stack {\n    line\n"
      "    bottle-12 (open: 50 %)\n  }\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  // 10 ft 6 in is 126 in of 25.4 mm; M12 has a pitch of 1.75 mm (ISO 261).
  EXPECT_EQ(print_rig(rig.rig),
            R"(boat: Tern
  beam: 10' 6" (written 10' 6"; drawn)
point tang-pin.port "Tang"
  base: tang-pin
  side: port
  position: (0.000 mm, -100.000 mm, 10000.000 mm)
  provenance: (written (0, 0.1, 10) m; drawn, sail plan)
  twin: tang-pin.starboard
point tang-pin.starboard "Tang"
  base: tang-pin
  side: starboard
  position: (0.000 mm, 100.000 mm, 10000.000 mm)
  provenance: (written (0, 0.1, 10) m; drawn, sail plan)
  twin: tang-pin.port
rope cord
  kind: rope
  construction: 12-strand
  size: 9 mm
  diameter: 9.000 mm (written 9 mm; computed, from the size 9 mm)
  break-load: 92.000 kN (written 92 kN; maker)
turnbuckle bottle-12
  kind: turnbuckle
  role: adjuster
  shortest: 265.000 mm +- 1.000 mm (written 265 mm ± 1 mm; measured)
  longest: 395.000 mm (written 395 mm; assumed; assumes longest of bottle-12)
  thread: M12 (written M12; standard, ISO 261)
    thread: M12, diameter 12.000 mm, pitch 1.750 mm
    screw: yes
    provenance: (written M12; standard, ISO 261)
  upper: jaw
    gap: 12.700 mm (written 1/2 in; no source given)
    pin: 12.000 mm (written 12 mm; no source given)
stay forestay
  base: forestay
  sides: centre
  line: cord
  pin-to-pin: 9000.000 mm (written 9 m; measured, tape)
  stack: line
  stack: bottle-12
    length: 330.000 mm +- 0.500 mm (written 50 % open; computed, from the range of bottle-12; assumes longest of bottle-12)
    open: 0.5 (written 50 %; no source given)
bound of shortest of bottle-12
  bound: 0.001
)");
}

} // namespace
} // namespace sheerpole::provenance_test
