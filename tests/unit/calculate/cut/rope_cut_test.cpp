#include "calculate/calculate.hpp"
#include "calculate/length/length_sum.hpp"
#include "unit/calculate/rig_builder.hpp"
#include "wording/length_words.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

namespace sheerpole::rope_cut_test {
namespace {

using namespace build;

Splice splice(Sourced<RopeMeasure> bury) {
  Splice result;
  result.name = "long-bury";
  result.bury = std::move(bury);
  result.contraction = sourced(0.0, from(SourceClass::practice));
  result.place = at(300);
  return result;
}

Part thimble() {
  Part part = fixed("thimble-9", mm(16));
  part.lower = end("rope-seat", {{"diameter", mm(28)}, {"throat", mm(38)}});
  part.place = at(200);
  return part;
}

const Term* find(const LengthSum& sum, TermKind kind, WhichEnd end) {
  for (const Term& term : sum.terms)
    if (term.kind == kind && term.is_of(end))
      return &term;
  return nullptr;
}

struct Made {
  Rig rig;
  Piece piece;

  std::string missing(std::size_t i) const { return say(rig, piece.missing[i].what); }
};

/// One rope between two thimbles, pin-to-pin 5 m.
Made made_with(const Splice& made, const Part& seat, std::optional<Length> spare = std::nullopt) {
  RigBuilder builder;
  const SpliceId id = builder.add(made);
  const PartId part = builder.add(seat);
  StackItem above = spliced(part, id);
  if (spare)
    above.spare_bury = sourced(*spare);
  builder.add(
      stay("shroud", mm(5000), builder.add(rope("hmpe-9", mm(9))), {above, line(), spliced(part, id)}));
  const Derived derived = calculate(builder.rig);
  return {builder.rig, derived.stays[0].pieces[0]};
}

// Common practice, no source: 72 d of 9 mm is 648 mm.
TEST(RopeCut, BuryInDiameters) {
  const Made result = made_with(splice(diameters(72)), thimble());
  const Piece& piece = result.piece;
  const Term* bury = find(piece.cut, TermKind::bury, WhichEnd::upper);
  ASSERT_NE(bury, nullptr);
  EXPECT_NEAR(bury->amount.millimetres(), 648, 1e-9);
  EXPECT_EQ(say(result.rig, bury->how), "72 d x 9 mm");
  EXPECT_EQ(bury->provenance.source_class, SourceClass::practice);
  EXPECT_NE(find(piece.cut, TermKind::bury, WhichEnd::lower), nullptr);
}

// Common practice, no source: 9 mm rope, burys of 25 1/2 in, wraps of 6 1/4 in, 24 in of screw and toggles;
// the least cut is X + 39 1/2 in and the rope section X - 24 in.
TEST(RopeCut, XPlusForty) {
  RigBuilder builder;
  const SpliceId id = builder.add(splice(as_length(inches(25.5))));
  Part eye = fixed("thimble-9", Length{});
  eye.wrap = sourced(inches(6.25));
  const PartId seat = builder.add(eye);
  const PartId toggle = builder.add(fixed("toggle", inches(2.25)));
  const PartId screw = builder.add(adjuster("turnbuckle", "screw", inches(14), inches(26)));
  builder.add(
      stay("cap-shroud", builder.add(rope("hmpe-9", mm(9))),
           {spliced(seat, id), line(), spliced(seat, id), item(toggle, 2), set(screw, inches(19.5))}));
  const Derived derived = calculate(builder.rig);
  const Piece& piece = derived.stays[0].pieces[0];
  EXPECT_TRUE(piece.body.unknown);
  EXPECT_NEAR(piece.body.known().inches(), -24.0, 1e-9);
  EXPECT_TRUE(piece.cut.unknown);
  EXPECT_NEAR(piece.cut.known().inches(), 39.5, 1e-9);
  EXPECT_TRUE(piece.missing.empty());
  EXPECT_EQ(say(builder.rig, piece.cut.terms[0].how), "X - 609.6 mm");
  EXPECT_EQ(sum_text(builder.rig, piece.cut), "X + 1003.3 mm");
}

// The geometry gives 139.421 - (14 + 38) = 87.421 mm (a polyline summed outside the project).
TEST(RopeCut, EyeFromTheGeometryOfTheSeat) {
  const Made result = made_with(splice(diameters(72)), thimble());
  const Piece& piece = result.piece;
  const Term* eye = find(piece.cut, TermKind::eye_allowance, WhichEnd::upper);
  ASSERT_NE(eye, nullptr);
  EXPECT_NEAR(eye->amount.millimetres(), 87.421, 0.0006);
  EXPECT_EQ(eye->provenance.source_class, SourceClass::computed);
  EXPECT_TRUE(piece.upper.notes.empty());
  EXPECT_EQ(piece.upper.part_name(result.rig), "thimble-9");
  EXPECT_EQ(piece.upper.splice_name(result.rig), "long-bury");
}

Particular length_fact(std::string name, Length length) {
  Particular fact;
  fact.name = std::move(name);
  fact.value.value = {length.metres(), dimension::length};
  fact.value.provenance = from(SourceClass::measured);
  return fact;
}

// A serving of 3 mm makes the eye of 9 mm rope 12 mm thick round its seat: 144.163 - (14 + 38) = 92.163 mm
// (the same polyline round a circle of 20 mm, summed outside the project).
TEST(RopeCut, ServingMakesTheEyeLonger) {
  Part served = thimble();
  served.particulars.push_back(length_fact("serving", mm(3)));
  const Made result = made_with(splice(diameters(72)), served);
  const Term* eye = find(result.piece.cut, TermKind::eye_allowance, WhichEnd::upper);
  ASSERT_NE(eye, nullptr);
  EXPECT_NEAR(eye->amount.millimetres(), 92.163, 0.0006);
}

// A girth of 28 mm times pi is a seat of 28 mm.
TEST(RopeCut, GirthGivesTheSeatWhereItsDiameterIsNotStated) {
  Part eye_over_spar = thimble();
  eye_over_spar.lower = end("rope-seat", {{"throat", mm(38)}});
  eye_over_spar.particulars.push_back(length_fact("girth", mm(87.964594)));
  const Made result = made_with(splice(diameters(72)), eye_over_spar);
  const Term* eye = find(result.piece.cut, TermKind::eye_allowance, WhichEnd::upper);
  ASSERT_NE(eye, nullptr);
  EXPECT_NEAR(eye->amount.millimetres(), 87.421, 0.0006);
}

TEST(RopeCut, StatedAllowanceWinsOverGeometry) {
  Splice made = splice(diameters(72));
  made.eye_allowance = diameters(12);
  const Made result = made_with(made, thimble());
  const Piece& piece = result.piece;
  EXPECT_NEAR(find(piece.cut, TermKind::eye_allowance, WhichEnd::upper)->amount.millimetres(), 108, 1e-9);
  EXPECT_EQ(joined(say_each(result.rig, piece.upper.notes), Join::semicolon),
            "the geometry of the seat gives 87.42 mm, 20.58 mm less");
}

TEST(RopeCut, MeasuredWrapWinsOverBothAndSaysWhatTheyGive) {
  Splice made = splice(diameters(72));
  made.eye_allowance = diameters(18);
  Part seat = thimble();
  seat.wrap = sourced(mm(159));
  const Made result = made_with(made, seat);
  const Piece& piece = result.piece;
  const Term* eye = find(piece.cut, TermKind::eye_allowance, WhichEnd::lower);
  EXPECT_NEAR(eye->amount.millimetres(), 159, 1e-9);
  EXPECT_EQ(eye->provenance.source_class, SourceClass::measured);
  EXPECT_EQ(joined(say_each(result.rig, piece.lower.notes), Join::semicolon),
            "the allowance of the splice gives 162 mm, 3 mm more; the geometry of the seat gives "
            "87.42 mm, 71.58 mm less");
}

TEST(RopeCut, NoWayToTheEyeIsMissing) {
  Part bare = fixed("thimble-9", mm(16));
  bare.place = at(200);
  const Made result = made_with(splice(diameters(72)), bare);
  const Piece& piece = result.piece;
  EXPECT_EQ(find(piece.cut, TermKind::eye_allowance, WhichEnd::upper), nullptr);
  ASSERT_EQ(piece.missing.size(), 1u);
  EXPECT_EQ(result.missing(0), "eye allowance of splice long-bury at thimble-9");
  EXPECT_EQ(piece.missing[0].place, at(200));
}

// Hand sum: 8 % of 648 = 51.84; 60 % of that back = -31.104.
TEST(RopeCut, ContractionAndWhatSettingGivesBack) {
  Splice made = splice(diameters(72));
  made.contraction = sourced(0.08, assumed("contraction"));
  made.recovered = sourced(0.6, from(SourceClass::measured));
  const Made result = made_with(made, thimble());
  const Piece& piece = result.piece;
  const Term* contraction = find(piece.cut, TermKind::contraction, WhichEnd::upper);
  ASSERT_NE(contraction, nullptr);
  EXPECT_NEAR(contraction->amount.millimetres(), 51.84, 1e-9);
  EXPECT_EQ(say(result.rig, contraction->how), "8 % of 648 mm");
  EXPECT_EQ(contraction->provenance.assumptions, std::vector<std::string>{"contraction"});
  const Term* back = find(piece.cut, TermKind::contraction_given_back, WhichEnd::upper);
  ASSERT_NE(back, nullptr);
  EXPECT_NEAR(back->amount.millimetres(), -31.104, 1e-9);
  EXPECT_EQ(back->provenance.assumptions, std::vector<std::string>{"contraction"});
}

TEST(RopeCut, ContractionNotStatedIsMissingOnceNotZero) {
  Splice made = splice(diameters(72));
  made.contraction.reset();
  const Made result = made_with(made, thimble());
  const Piece& piece = result.piece;
  EXPECT_EQ(find(piece.cut, TermKind::contraction, WhichEnd::upper), nullptr);
  ASSERT_EQ(piece.missing.size(), 1u);
  EXPECT_EQ(result.missing(0), "contraction of splice long-bury");
  EXPECT_EQ(piece.missing[0].place, at(300));
}

// Hand sum: 1200 mm more of rope, and 8 % of it more of contraction = 96.
TEST(RopeCut, SpareBuryContractsTheWeaveToo) {
  Splice made = splice(diameters(72));
  made.contraction = sourced(0.08);
  made.tail_to_trim = as_length(mm(25));
  const Length without = made_with(made, thimble()).piece.cut.known();
  const Made result = made_with(made, thimble(), mm(1200));
  const Piece& piece = result.piece;
  EXPECT_NEAR(find(piece.cut, TermKind::spare_bury, WhichEnd::upper)->amount.millimetres(), 1200, 1e-9);
  EXPECT_EQ(find(piece.cut, TermKind::spare_bury, WhichEnd::lower), nullptr);
  EXPECT_NEAR(find(piece.cut, TermKind::contraction_of_spare, WhichEnd::upper)->amount.millimetres(), 96,
              1e-9);
  EXPECT_NEAR(find(piece.cut, TermKind::tail_to_trim, WhichEnd::lower)->amount.millimetres(), 25, 1e-9);
  EXPECT_NEAR((piece.cut.known() - without).millimetres(), 1296, 1e-9);
}

TEST(RopeCut, AnEndWithoutASpliceIsMissing) {
  RigBuilder builder;
  const PartId part = builder.add(thimble());
  StackItem plain = item(part);
  plain.place = at(42);
  builder.add(stay("shroud", mm(5000), builder.add(rope("hmpe-9", mm(9))), {plain, line()}));
  const Derived derived = calculate(builder.rig);
  const Piece& piece = derived.stays[0].pieces[0];
  ASSERT_EQ(piece.missing.size(), 1u);
  EXPECT_EQ(say(builder.rig, piece.missing[0].what), "splice at thimble-9");
  EXPECT_EQ(piece.missing[0].place, at(42));
  EXPECT_TRUE(piece.lower.bare());
}

TEST(RopeCut, AnAssumedDiameterReachesWhatIsStatedInDiameters) {
  RigBuilder builder;
  const SpliceId id = builder.add(splice(diameters(72)));
  const PartId part = builder.add(thimble());
  LineMaterial material = rope("hmpe-9", mm(9));
  material.diameter.provenance = assumed("hmpe-9.diameter");
  builder.add(stay("shroud", mm(5000), builder.add(material), {spliced(part, id), line()}));
  const Derived derived = calculate(builder.rig);
  EXPECT_EQ(find(derived.stays[0].pieces[0].cut, TermKind::bury, WhichEnd::upper)->provenance.assumptions,
            std::vector<std::string>{"hmpe-9.diameter"});
}

} // namespace
} // namespace sheerpole::rope_cut_test
