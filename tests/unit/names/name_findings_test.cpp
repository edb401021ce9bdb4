#include "unit/elaborate/understood.hpp"

#include <gmock/gmock.h>

namespace sheerpole::name_findings_test {
namespace {

using rig_test::Understood;
using testing::ElementsAre;
using testing::IsEmpty;

/// The findings of a text behind the language line; its first line is line 2.
std::vector<std::string> found_in(const std::string& text) {
  return Understood("language 1\n" + text).findings();
}

TEST(NameFindings, ATypingSlipOffersTheNameThatWasMeant) {
  EXPECT_THAT(
      found_in("let cap-drop = 12 mm\n"
               "let sum = cap-dorp + 3 mm\n"),
      ElementsAre("3:11 `cap-dorp` unknown-name: a named value (`let`) or a point called cap-dorp is not "
                  "declared anywhere\n"
                  "  2:5: `cap-drop` is declared here\n"
                  "  write `cap-drop` -> let sum = cap-drop + 3 mm"));
}

TEST(NameFindings, AMissingDeclarationIsOneFindingHoweverOftenItIsUsed) {
  EXPECT_THAT(found_in("rope cord { construction: \"12-strand\" \n size: \"9 mm\" }\n"
                       "stay forestay {\n"
                       "  pin-to-pin: 11_642 mm\n"
                       "  line: cord\n"
                       "  stack {\n"
                       "    toggle-12\n"
                       "    line\n"
                       "    2 x toggle-12\n"
                       "  }\n"
                       "}\n"),
              ElementsAre("8:5 `toggle-12` unknown-name: a part called toggle-12 is not declared anywhere\n"
                          "  10:9: used here too"));
}

TEST(NameFindings, ANameOfAnotherKindIsNamedAsWhatItIs) {
  EXPECT_THAT(found_in("toggle toggle-12 { length: 82 mm }\n"
                       "stay forestay {\n"
                       "  line: toggle-12\n"
                       "  stack { \n line \n }\n"
                       "}\n"),
              ElementsAre("4:9 `toggle-12` wrong-kind-of-name: toggle-12 is a part; a rope, wire, rod or "
                          "chain belongs here\n"
                          "  2:8: declared here"));
}

TEST(NameFindings, AMinusWithoutBlanksIsSeenWhenBothHalvesAreKnown) {
  EXPECT_THAT(
      found_in("let upper-edge = 30 mm\n"
               "let b = 12 mm\n"
               "let c = upper-edge-b\n"),
      ElementsAre(
          "4:9 `upper-edge-b` minus-needs-blanks: upper-edge-b is read as one name, not as upper-edge "
          "less b\n  write `upper-edge - b` -> let c = upper-edge - b"));
}

TEST(NameFindings, TwoThingsOfOneNameShowBothPlaces) {
  const Understood rig(std::map<std::string, std::string>{
      {"boat.rig", "language 1\nuse \"parts.rig\"\nlet toggle-12 = 82 mm\n"},
      {"parts.rig", "language 1\ntoggle toggle-12 { length: 82 mm }\n"}});
  EXPECT_THAT(rig.findings(),
              ElementsAre("3:5 `toggle-12` duplicate-name: toggle-12 is declared twice: as a part and "
                          "again as a named value\n  here: declared again here\n"
                          "  parts.rig:2:8: declared here first"));
}

TEST(NameFindings, NamesAreWrittenInSmallLetters) {
  EXPECT_THAT(
      found_in("let Sheer = 1.120 m\nlet top = Sheer + 1 m\n"),
      ElementsAre(
          "2:5 `Sheer` capital-in-name: the name Sheer has a sign other than small letters, figures "
          "and hyphens\n  write `sheer` -> let sheer = 1.120 m"));
}

TEST(NameFindings, ADeclarationNeedsItsName) {
  EXPECT_THAT(found_in("toggle {\n  length: 82 mm\n}\n"),
              ElementsAre("2:1 `toggle` name-missing: this toggle has no name"));
}

TEST(KindFindings, AnUnknownKindOffersTheNearestWord) {
  EXPECT_THAT(
      found_in("turnbukle bottle-12 {\n  shortest: 265 mm\n}\n"),
      ElementsAre("2:1 `turnbukle` unknown-kind: turnbukle is not a kind of thing that a rig is made of\n"
                  "  write `turnbuckle` -> turnbuckle bottle-12 {"));
}

TEST(KindFindings, AMisspeltPropertyIsNotMissedAsWell) {
  EXPECT_THAT(found_in("toggle toggle-12 {\n  lenght: 82 mm\n}\n"),
              ElementsAre("3:3 `lenght` unknown-property: lenght is not a property of a toggle\n"
                          "  write `length` ->   length: 82 mm"));
}

TEST(KindFindings, APropertyIsStatedOnce) {
  EXPECT_THAT(found_in("toggle toggle-12 {\n  length: 82 mm\n  length: 85 mm\n}\n"),
              ElementsAre("4:3 `length` property-twice: length is stated twice\n  here: stated again here\n"
                          "  3:3: stated here first"));
}

TEST(KindFindings, AChoiceListsItsWords) {
  EXPECT_THAT(
      found_in("boat \"Tern\" {\n  measured-where: aflaot\n}\n"),
      ElementsAre(
          "3:19 `aflaot` unknown-choice: `aflaot` is not one of the words for measured-where: afloat, "
          "ashore\n  write `afloat` ->   measured-where: afloat"));
}

TEST(KindFindings, AnEndListsItsTypes) {
  EXPECT_THAT(
      found_in("toggle toggle-12 {\n  length: 82 mm\n  upper: jaws (gap: 12 mm)\n}\n"),
      ElementsAre(
          "4:10 `jaws` unknown-end: `jaws` is not a kind of end for upper: jaw, eye, stud, socket, "
          "rope-seat, hook, wire-socket, tee, slot, holes\n  write `jaw` ->   upper: jaw (gap: 12 mm)"));
}

TEST(KindFindings, ADimensionOfAnotherEndIsNamedWithThoseThatThereAre) {
  EXPECT_THAT(
      found_in("toggle toggle-12 {\n  length: 82 mm\n  upper: jaw (thickness: 12 mm)\n}\n"),
      ElementsAre("4:15 `thickness` unknown-setting: thickness cannot be stated here for a jaw; what can: "
                  "gap, depth, pin, outside, grip, split-pin"));
}

TEST(KindFindings, BlocksItemsAndOfHaveTheirPlaces) {
  EXPECT_THAT(found_in("stack { \n line \n }\n"),
              ElementsAre("2:1 `stack` block-not-here: a stack does not belong here"));
  EXPECT_THAT(
      found_in("toggle toggle-12 {\n  length: 82 mm\n  wrap\n}\n"),
      ElementsAre("4:3 `wrap` item-not-here: wrap is alone in a toggle, without a colon and a value"));
  EXPECT_THAT(found_in("toggle toggle-12 of stay-1 {\n  length: 82 mm\n}\n"),
              ElementsAre("2:21 `stay-1` of-not-here: a toggle is not of anything"));
  EXPECT_THAT(
      found_in("reading {\n  runs: 11_640 mm\n}\n"),
      ElementsAre(
          "2:1 `reading` of-missing: this reading does not say what it is of; a stay belongs behind "
          "`of`"));
}

TEST(KindFindings, ASideIsPortOrStarboard) {
  EXPECT_THAT(found_in("points {\n  plate-a: (0, 1, 1) m mirrored\n  plate-a.stbd: (0, 1.1, 1) m\n}\n"),
              ElementsAre("4:11 `stbd` unknown-side: stbd is not a side; the sides are port and starboard\n"
                          "  write `starboard` ->   plate-a.starboard: (0, 1.1, 1) m"));
  EXPECT_THAT(
      found_in("points {\n  plate-a: (0, 1, 1) m mirrored\n}\nlet place = plate-a.larboard\n"),
      ElementsAre(
          "5:21 `larboard` unknown-side: larboard is not a side; the sides are port and starboard"));
  EXPECT_THAT(found_in("rope cord { construction: \"12-strand\" \n size: \"9 mm\" }\n"
                       "stay forestay {\n  line: cord.port\n  stack { \n line \n }\n}\n"),
              ElementsAre("5:14 `port` side-not-here: cord is a rope, wire, rod or chain and has no sides\n"
                          "  write `cord` ->   line: cord"));
}

TEST(Bases, ACopyStatesOnlyWhatDiffers) {
  const Understood rig(
      "language 1\n"
      "toggle long from toggle-12 {\n  length: 112 mm\n}\n"
      "toggle toggle-12 from toggle-any {\n  length: 82 mm\n}\n"
      "toggle toggle-any {\n  length: 1 mm\n  wrap: 159 mm measured\n  upper: jaw (gap: 12 mm)\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  ASSERT_EQ(rig.rig.parts.size(), 3u);
  const Part& part = rig.rig.parts[0];
  EXPECT_EQ(part.name, "long");
  EXPECT_DOUBLE_EQ(part.length->value.millimetres(), 112.0);
  EXPECT_DOUBLE_EQ(part.wrap->value.millimetres(), 159.0);
  EXPECT_EQ(part.wrap->provenance.source_class, SourceClass::measured);
  EXPECT_EQ(part.upper.type, EndType::jaw);
}

TEST(Bases, ASlipInTheBaseIsNotToldAgainForEachCopy) {
  EXPECT_THAT(found_in("toggle toggle-12 {\n  length: 82\n}\n"
                       "toggle a from toggle-12 {\n  wrap: 159 mm\n}\n"
                       "toggle b from toggle-12 {\n  wrap: 160 mm\n}\n"),
              ElementsAre("3:11 `82` missing-unit: `82` has no unit; the length of toggle-12 needs one\n"
                          "  if mm is meant, write `82 mm` ->   length: 82 mm"));
}

TEST(Bases, OfAnotherKindUnknownOrInACircle) {
  EXPECT_THAT(
      found_in("toggle toggle-12 {\n  length: 82 mm\n}\nshackle long from toggle-12 {\n}\n"),
      ElementsAre("5:19 `toggle-12` base-of-other-kind: toggle-12 is a toggle, so a shackle cannot be made "
                  "from it\n  2:8: declared here"));
  EXPECT_THAT(
      found_in("toggle toggle-12 {\n  length: 82 mm\n}\ntoggle long from toggle-13 {\n}\n"),
      ElementsAre("5:18 `toggle-13` unknown-name: a part called toggle-13 is not declared anywhere\n"
                  "  2:8: `toggle-12` is declared here\n"
                  "  write `toggle-12` -> toggle long from toggle-12 {"));
  EXPECT_THAT(
      found_in("toggle one from two {\n}\ntoggle two from one {\n}\n"),
      ElementsAre(
          "4:17 `one` base-cycle: one is made from itself, by way of the declarations behind `from`\n"
          "  here: the chain comes back here\n  2:8: declared here"));
}

TEST(NameFindings, SeveralSlipsAreFoundInOneRun) {
  const Understood rig("language 1\n"
                       "let drop = 12\n"
                       "boat \"Tern\" {\n"
                       "  beem: 3.20 m\n"
                       "  displacement: 4_100 mm\n"
                       "}\n"
                       "points {\n"
                       "  masthead: (0, 0, 12) m mirrored\n"
                       "  tip: (0, 1) \n"
                       "}\n"
                       "tang tang-10 {\n"
                       "  lower: jaw (gap: 12)\n"
                       "}\n");
  EXPECT_THAT(rig.slugs(), ElementsAre("unknown-property", "wrong-dimension", "mirrored-on-centreline",
                                       "place-needs-three-numbers", "missing-unit"));
}

TEST(PrintNames, ShowsEachNameItsPlaceAndItsUses) {
  const Understood rig("language 1\n"
                       "let drop = 12 mm\n"
                       "points {\n"
                       "  tip: (0, 1, 2) m + (drop, drop, gone)\n"
                       "}\n"
                       "toggle toggle-12 {\n"
                       "  length: drop\n"
                       "}\n");
  EXPECT_EQ(print_names(rig.tree, rig.sources), "let drop at boat.rig:2:5\n"
                                                "  used at boat.rig:4:23\n"
                                                "  used at boat.rig:4:29\n"
                                                "  used at boat.rig:7:11\n"
                                                "point tip at boat.rig:4:3\n"
                                                "toggle toggle-12 at boat.rig:6:8\n"
                                                "unknown\n"
                                                "  used at boat.rig:4:35\n");
}

} // namespace
} // namespace sheerpole::name_findings_test
