#include "calculate/calculate.hpp"
#include "unit/calculate/rig_builder.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

namespace sheerpole::wire_cut_test {
namespace {

using namespace build;

Part terminal(const char* name, double length, double inserted) {
  Part part = fixed(name, mm(length));
  part.upper = end("eye", {{"hole", mm(16)}});
  part.lower = end("wire-socket", {{"inserted", mm(inserted)}});
  return part;
}

// Hand sum: body 15 443 - 70 - 395 = 14 978; cut 14 978 + 62 + 58 = 15 098. The screw takes the wire at its
// upper end; the eye is used either way round.
TEST(WireCut, IsTheBodyAndTheDepthInEachTerminal) {
  RigBuilder builder;
  const PartId eye = builder.add(terminal("marine-eye", 70, 62));
  Part screw = adjuster("turnbuckle", "turnbuckle-58", mm(320), mm(470));
  screw.upper = end("wire-socket", {{"inserted", mm(58)}});
  const PartId bottle = builder.add(screw);
  builder.add(stay("cap-shroud", mm(15443), builder.add(wire("wire-38", mm(9.525))),
                   {item(eye), line(), open(builder.rig, bottle, 0.5)}));
  const Derived derived = calculate(builder.rig);
  const Piece& piece = derived.stays[0].pieces[0];
  ASSERT_EQ(piece.cut.terms.size(), 3u);
  EXPECT_EQ(piece.cut.terms[1].kind, TermKind::inserted);
  EXPECT_TRUE(piece.cut.terms[1].is_of(WhichEnd::upper));
  EXPECT_EQ(piece.cut.terms[2].kind, TermKind::inserted);
  EXPECT_TRUE(piece.cut.terms[2].is_of(WhichEnd::lower));
  EXPECT_EQ(piece.cut.terms[1].provenance.source_class, SourceClass::maker);
  EXPECT_NEAR(piece.cut.known().millimetres(), 15098, 1e-9);
  EXPECT_TRUE(piece.missing.empty());
  EXPECT_EQ(piece.lower.part_name(builder.rig), "turnbuckle-58");
  EXPECT_FALSE(piece.upper.splice);
}

TEST(WireCut, APartMayBeUsedEitherWayRound) {
  RigBuilder builder;
  const PartId eye = builder.add(terminal("marine-eye", 70, 62));
  builder.add(stay("leg", mm(5000), builder.add(wire("wire", mm(8))), {item(eye), line(), item(eye)}));
  const Derived derived = calculate(builder.rig);
  EXPECT_NEAR(derived.stays[0].pieces[0].cut.known().millimetres(), 5000 - 140 + 124, 1e-9);
}

TEST(WireCut, TheEndThatFacesTheWireComesFirst) {
  RigBuilder builder;
  Part insulator = fixed("insulator", mm(150));
  insulator.upper = end("wire-socket", {{"inserted", mm(40)}});
  insulator.lower = end("wire-socket", {{"inserted", mm(44)}});
  const PartId id = builder.add(insulator);
  builder.add(
      stay("backstay", mm(5000), builder.add(wire("wire", mm(8))), {line(mm(1000)), item(id), line()}));
  const Derived derived = calculate(builder.rig);
  EXPECT_NEAR(derived.stays[0].pieces[0].cut.known().millimetres(), 1040, 1e-9);
  EXPECT_NEAR(derived.stays[0].pieces[1].cut.known().millimetres(), 5000 - 1000 - 150 + 44, 1e-9);
}

TEST(WireCut, ADepthThatIsNotStatedIsMissing) {
  RigBuilder builder;
  Part eye = fixed("marine-eye", mm(70));
  eye.lower = end("wire-socket");
  eye.lower.place = at(77);
  const PartId socket = builder.add(eye);
  Part shackle = fixed("shackle", mm(50));
  shackle.place = at(78);
  const PartId none = builder.add(shackle);
  builder.add(stay("leg", mm(5000), builder.add(wire("wire", mm(8))), {item(socket), line(), item(none)}));
  const Derived derived = calculate(builder.rig);
  const Piece& piece = derived.stays[0].pieces[0];
  ASSERT_EQ(piece.missing.size(), 2u);
  EXPECT_EQ(say(builder.rig, piece.missing[0].what), "insertion depth of marine-eye");
  EXPECT_EQ(piece.missing[0].place, at(77));
  EXPECT_EQ(say(builder.rig, piece.missing[1].what), "insertion depth of shackle");
  EXPECT_EQ(piece.missing[1].place, at(78));
}

} // namespace
} // namespace sheerpole::wire_cut_test
