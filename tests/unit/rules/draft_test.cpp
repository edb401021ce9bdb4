#include "rules/check.hpp"
#include "unit/rules/rule_fixture.hpp"

#include <gtest/gtest.h>

namespace sheerpole::draft_test {
namespace {

using namespace build;

/// A pair of lowers and a backstay that share a thimble, a splice and a rope.
Rig rig_with(Splice splice, LineMaterial material = rope("hmpe-9", mm(9))) {
  RigBuilder builder;
  splice.name = "long-bury";
  splice.place = at(300);
  const SpliceId id = builder.add(std::move(splice));
  Part thimble = fixed("thimble-9", mm(16));
  thimble.wrap = sourced(mm(159));
  const PartId part = builder.add(thimble);
  const MaterialId line_material = builder.add(std::move(material));
  add_pair(builder,
           stay("lower-shroud", mm(4453), line_material, {spliced(part, id), line(), spliced(part, id)}));
  builder.add(stay("backstay", mm(14559), line_material, {spliced(part, id), line(), spliced(part, id)}));
  return builder.rig;
}

Splice complete() {
  Splice splice;
  splice.bury = diameters(72);
  splice.contraction = sourced(0.08);
  return splice;
}

TEST(CutIsDraft, SaysOnceAPieceWhatIsMissingAndHowToMendIt) {
  Splice splice;
  splice.bury = diameters(72);
  const auto found = found_by("cut-is-draft", rig_with(splice));
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].severity, Severity::note);
  EXPECT_EQ(found[0].subject, "lower-shroud");
  EXPECT_EQ(found[0].message,
            "the cut length of lower-shroud is a DRAFT: contraction of splice long-bury not stated");
  ASSERT_EQ(found[0].others.size(), 1u);
  EXPECT_EQ(found[0].others[0].span, at(300));
  EXPECT_EQ(found[0].others[0].text,
            "make a test splice on this rope, measure how much shorter it got and state contraction");
  EXPECT_EQ(found[1].subject, "backstay");
  EXPECT_TRUE(found_by("cut-is-draft", rig_with(complete())).empty());
}

TEST(CutIsDraft, NamesThePieceOfSeveral) {
  RigBuilder builder;
  Part insulator = fixed("insulator", mm(150));
  insulator.upper = end("wire-socket", {{"inserted", mm(40)}});
  Part eye = fixed("marine-eye", mm(70));
  const PartId middle = builder.add(insulator);
  const PartId edge = builder.add(eye);
  builder.add(stay("backstay-upper", mm(12969), builder.add(wire("wire", mm(9.525))),
                   {line(mm(455)), item(middle), line(), item(edge)}));
  const auto found = found_by("cut-is-draft", builder.rig);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].message,
            "the cut length of backstay-upper 2 of 2 is a DRAFT: insertion depth of marine-eye not stated");
}

TEST(AssumedInput, SaysOnceAValueWhichPiecesItReaches) {
  Splice splice = complete();
  splice.contraction = sourced(0.08, assumed("long-bury.contraction", 310));
  const auto found = found_by("assumed-input", rig_with(splice));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::note);
  EXPECT_EQ(found[0].subject, "long-bury.contraction");
  EXPECT_EQ(found[0].message,
            "long-bury.contraction is assumed, and the cut of lower-shroud on both sides and "
            "backstay rests on it");
  EXPECT_EQ(found[0].primary->span, at(310));
}

TEST(AssumedInput, FollowsAPointThroughTheBodyToOneSide) {
  Rig rig = rig_with(complete());
  Point tang, plate;
  tang.base = tang.name = "tang";
  tang.position = {mm(0), mm(0), mm(5000)};
  plate.base = "plate";
  plate.name = "plate.port";
  plate.provenance = assumed("plate.port", 77);
  rig.points = {tang, plate};
  rig.stays[0].stated_pin_to_pin.reset();
  rig.stays[0].path = path({PointId{0}, PointId{1}});
  const auto found = found_by("assumed-input", rig);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].message, "plate.port is assumed, and the cut of lower-shroud.port rests on it");
  EXPECT_EQ(found[0].primary->span, at(77));
}

TEST(AssumedInput, AValueThatRestsOnAnAssumptionMadeElsewhereStandsInForItsPlace) {
  LineMaterial material = rope("hmpe-9", mm(9));
  material.diameter.provenance = {SourceClass::computed, "", "", LengthUnit::none, at(88),
                                  {"worn-diameter"},     {}};
  const auto found = found_by("assumed-input", rig_with(complete(), material));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subject, "worn-diameter");
  EXPECT_EQ(found[0].primary->span, at(88));
}

TEST(AssumedInput, PointsAtTheAssumedValueItselfWhereverInTheModelItStands) {
  Rig rig = rig_with(complete());
  Spar mast;
  mast.name = "mast";
  mast.provenance = assumed("heel of mast", 500);
  rig.spars = {mast};
  Point tang, plate;
  tang.base = tang.name = "tang";
  tang.position = {mm(0), mm(0), mm(5000)};
  tang.provenance = {SourceClass::computed, "", "", LengthUnit::none, at(77), {"heel of mast"}, {}};
  plate.base = plate.name = "plate";
  rig.points = {tang, plate};
  rig.stays[0].stated_pin_to_pin.reset();
  rig.stays[0].path = path({PointId{0}, PointId{1}});
  const auto found = found_by("assumed-input", rig);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subject, "heel of mast");
  EXPECT_EQ(found[0].primary->span, at(500)); // not at the point, which rests on it
  EXPECT_EQ(found[0].primary->text, "assumed here");
}

TEST(AssumedInput, TellsMoreThanThreeAsOneByTheNamesOfTheFirst) {
  Splice splice = complete();
  splice.bury = diameters(72, assumed("long-bury.bury", 301));
  splice.contraction = sourced(0.08, assumed("long-bury.contraction", 310));
  LineMaterial material = rope("hmpe-9", mm(9));
  material.diameter.provenance = assumed("hmpe-9.diameter", 88);
  EXPECT_EQ(found_by("assumed-input", rig_with(splice, material)).size(), 3u);
  Rig rig = rig_with(splice, material);
  rig.stays[2].stated_pin_to_pin->provenance = assumed("backstay.pin-to-pin", 400);
  const auto found = found_by("assumed-input", rig);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subject, "this rig");
  EXPECT_NE(found[0].message.find(" and 1 more are assumed, and the cut of every piece rests on them"),
            std::string::npos)
      << found[0].message;
  EXPECT_EQ(found[0].others.size(), 2u); // the places of the second and the third
}

TEST(Check, RunsEveryCheckAndACompleteRigIsClean) {
  DiagnosticSink clean;
  Rig rig = rig_with(complete());
  rig.limits.state(StatedSecondMeasure{SecondMeasure::off, {}});
  check(rig, calculate(rig), clean);
  EXPECT_TRUE(clean.all().empty());

  Splice splice;
  splice.bury = diameters(72, assumed("long-bury.bury", 301));
  Rig faulty = rig_with(splice);
  faulty.stays[2].stated_pin_to_pin = sourced(mm(20));
  faulty.limits.state(StatedSecondMeasure{SecondMeasure::off, {}});
  DiagnosticSink sink;
  check(faulty, calculate(faulty), sink);
  std::vector<std::string> slugs;
  for (const Diagnostic& finding : sink.all())
    slugs.push_back(finding.slug);
  EXPECT_EQ(slugs,
            (std::vector<std::string>{"negative-body", "cut-is-draft", "cut-is-draft", "assumed-input"}));
}

/// What a waiver speaks of: a stay is itself, its sides and its pieces, and none whose name begins alike.
TEST(Waivers, SpeakOfAStayWithItsSidesAndOfNoOther) {
  Splice splice;
  splice.bury = diameters(72);
  Rig rig = rig_with(splice);
  rig.boat.report_date = "2026-06-01";
  const auto waiver = [](const std::string& stay, std::size_t place) {
    Waiver made;
    made.slug = "cut-is-draft";
    made.stay = stay;
    made.reason = "known";
    made.by = "me";
    made.until = "2027-01-01";
    made.place = at(place);
    return made;
  };
  const auto waived = [&](const std::vector<Waiver>& waivers) {
    rig.waivers = waivers;
    DiagnosticSink sink;
    check(rig, calculate(rig), sink);
    std::string text;
    for (const Diagnostic& finding : sink.all())
      if (finding.slug == "cut-is-draft")
        text += finding.subject + (finding.waived.empty() ? " stands; " : " is waived; ");
      else if (finding.slug == "waiver-without-finding")
        text += "none at " + std::to_string(finding.primary->span.begin) + "; ";
    return text;
  };
  EXPECT_EQ(waived({}), "lower-shroud stands; backstay stands; ");
  EXPECT_EQ(waived({waiver("backstay", 700)}), "lower-shroud stands; backstay is waived; ");
  EXPECT_EQ(waived({waiver("", 700)}), "lower-shroud is waived; backstay is waived; ");
  EXPECT_EQ(waived({waiver("lower", 700), waiver("back", 710)}),
            "lower-shroud stands; backstay stands; none at 700; none at 710; ");
  EXPECT_EQ(waived({waiver("lower-shroud", 700), waiver("backstay", 710)}),
            "lower-shroud is waived; backstay is waived; ");
}

} // namespace
} // namespace sheerpole::draft_test
