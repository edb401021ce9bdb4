#include "calculate/length/body.hpp"

#include "calculate/calculate.hpp"
#include "service/compile.hpp"
#include "unit/calculate/rig_builder.hpp"
#include "wording/length_words.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <filesystem>

namespace sheerpole::body_test {
namespace {

using namespace build;

// Hand sum: 11642 - 16 - 38 - 160 - 46 = 11382.
TEST(Body, IsPinToPinLessEachPartByName) {
  RigBuilder builder;
  const PartId tang = builder.add(fitting("tang-10"));
  const PartId thimble = builder.add(fixed("thimble-9", mm(16)));
  const PartId deadeye = builder.add(fixed("deadeye-9", mm(38)));
  const PartId lashing = builder.add(adjuster("lashing", "lashing-9", mm(60), mm(260)));
  const PartId block = builder.add(fixed("lash-block", mm(46)));
  builder.add(stay(
      "cap-shroud", mm(11642), builder.add(rope("hmpe-9", mm(9))),
      {item(tang), item(thimble), line(), item(deadeye), set(lashing, mm(160), "160 mm"), item(block)}));
  const Derived derived = calculate(builder.rig);
  const LengthSum& body = derived.stays[0].body;
  ASSERT_EQ(body.terms.size(), 5u);
  EXPECT_EQ(term_name(builder.rig, body.terms[0]), "pin-to-pin");
  EXPECT_EQ(term_name(builder.rig, body.terms[1]), "thimble-9");
  EXPECT_EQ(term_name(builder.rig, body.terms[2]), "deadeye-9");
  EXPECT_EQ(term_name(builder.rig, body.terms[3]), "lashing-9, gap 160 mm");
  EXPECT_EQ(term_name(builder.rig, body.terms[4]), "lash-block");
  EXPECT_NEAR(body.terms[3].amount.millimetres(), -160, 1e-9);
  EXPECT_EQ(body.terms[1].provenance.source_class, SourceClass::maker);
  EXPECT_NEAR(body.known().millimetres(), 11382, 1e-9);
  ASSERT_EQ(derived.stays[0].pieces.size(), 1u);
  EXPECT_NEAR(derived.stays[0].pieces[0].body.known().millimetres(), 11382, 1e-9);
}

TEST(Body, CountsRepeatedPartsAndSaysHowFarAnAdjusterIsOpen) {
  RigBuilder builder;
  const PartId toggle = builder.add(fixed("toggle-12", inches(2.25)));
  const PartId screw = builder.add(adjuster("turnbuckle", "turnbuckle-58", mm(320), mm(470)));
  builder.add(stay("forestay", mm(15780), builder.add(wire("wire-38", mm(9.525))),
                   {item(toggle, 2), line(), open(builder.rig, screw, 0.5)}));
  const Derived derived = calculate(builder.rig);
  const LengthSum& body = derived.stays[0].body;
  ASSERT_EQ(body.terms.size(), 3u);
  EXPECT_EQ(term_name(builder.rig, body.terms[1]), "2 x toggle-12");
  EXPECT_EQ(say(builder.rig, body.terms[1].how), "2 x 57.15 mm");
  EXPECT_NEAR(body.terms[1].amount.inches(), -4.5, 1e-12);
  EXPECT_EQ(term_name(builder.rig, body.terms[2]), "turnbuckle-58, 50 % open");
  EXPECT_NEAR(body.terms[2].amount.millimetres(), -395, 1e-9);
}

TEST(Body, NamesTheSettingOfOtherAdjusters) {
  RigBuilder builder;
  const PartId tackle = builder.add(adjuster("tackle", "runner-tackle", mm(400), mm(1900)));
  builder.add(
      stay("runner", mm(12084), builder.add(rope("hmpe-9", mm(9))), {line(), set(tackle, mm(600))}));
  const Derived derived = calculate(builder.rig);
  EXPECT_EQ(term_name(builder.rig, derived.stays[0].body.terms[1]), "runner-tackle, set to 600 mm");
}

// The backstay of Grisolde with insulator centres 600 mm below the masthead pin and 1 200 mm above the
// plate, by hand: pieces 600 - 70 - 75 = 455; 12 969 - 600 - 1 200 - 150 = 11 019; 1 200 - 30 - 70 - 75 = 1
// 025; sum 12 499.
TEST(Body, InsulatorsMakeThreePieces) {
  RigBuilder builder;
  const PartId eye = builder.add(fixed("marine-eye", mm(70)));
  const PartId insulator = builder.add(fixed("insulator", mm(150)));
  const PartId plate = builder.add(fixed("plate-link", mm(30)));
  builder.add(stay("backstay-upper", mm(12969), builder.add(wire("wire-38", mm(9.525))),
                   {item(eye), line(mm(455)), item(insulator), line(), item(insulator), line(mm(1025)),
                    item(eye), item(plate)}));
  const Derived derived = calculate(builder.rig);
  const std::vector<Piece>& pieces = derived.stays[0].pieces;
  ASSERT_EQ(pieces.size(), 3u);
  EXPECT_EQ(pieces[0].name, "backstay-upper 1 of 3");
  EXPECT_EQ(pieces[1].name, "backstay-upper 2 of 3");
  EXPECT_EQ(pieces[1].number, 2);
  EXPECT_EQ(pieces[1].of, 3);
  EXPECT_NEAR(pieces[0].body.known().millimetres(), 455, 1e-9);
  EXPECT_EQ(pieces[0].body.terms.size(), 1u);
  EXPECT_NEAR(pieces[1].body.known().millimetres(), 11019, 1e-9);
  EXPECT_EQ(term_name(builder.rig, pieces[1].body.terms.back()), "line 3 of 3");
  EXPECT_NEAR(pieces[2].body.known().millimetres(), 1025, 1e-9);
  EXPECT_NEAR(derived.stays[0].body.known().millimetres(), 12499, 1e-9);
}

TEST(Body, OfAnUnknownLengthIsXLessTheHardware) {
  RigBuilder builder;
  const PartId toggle = builder.add(fixed("toggle", inches(12)));
  builder.add(stay("shroud", builder.add(rope("hmpe-9", mm(9))), {line(), item(toggle, 2)}));
  const Derived derived = calculate(builder.rig);
  EXPECT_TRUE(derived.stays[0].body.unknown);
  EXPECT_NEAR(derived.stays[0].body.known().inches(), -24, 1e-12);
  EXPECT_TRUE(derived.stays[0].pieces[0].body.unknown);
}

TEST(Body, OfAStackWithoutASettingIsMissingSomething) {
  RigBuilder builder;
  const PartId screw = builder.add(adjuster("turnbuckle", "turnbuckle-58", mm(320), mm(470)));
  builder.add(stay("forestay", mm(15780), builder.add(wire("wire", mm(9.525))), {line(), item(screw)}));
  const Derived derived = calculate(builder.rig);
  ASSERT_FALSE(derived.stays[0].pieces[0].missing.empty());
  EXPECT_EQ(say(builder.rig, derived.stays[0].pieces[0].missing[0].what), "setting of turnbuckle-58");
}

// What a part takes is summed in two ways: as terms with names, and as one length for the marks on the
// bench, the dry fit and the pairs. Whatever a part takes must be in both.
TEST(Body, TakesInTermsWhatItTakesInOneLength) {
  std::size_t stacks = 0;
  for (const auto& entry : std::filesystem::directory_iterator(SHEERPOLE_EXAMPLES_DIR)) {
    if (entry.path().extension() != ".rig")
      continue;
    DiskFileReader reader;
    const Compilation compiled = compile(entry.path().string(), reader);
    if (!compiled.rig)
      continue; // parts for other files
    for (const Stay& stay : compiled.rig->stays) {
      const Hardware taken = hardware(*compiled.rig, stay);
      if (!taken.missing.empty())
        continue;
      Length terms;
      for (const Term& term : taken.terms)
        terms = terms + term.amount;
      Length lengths;
      for (const StackItem& item : stay.stack)
        if (item.kind == StackItem::Kind::part &&
            (*compiled.rig)[item.part].role != Part::Role::boat_fitting)
          lengths = lengths + taken_length(*compiled.rig, item).value_or(Length{});
      EXPECT_NEAR(terms.metres(), -lengths.metres(), 1e-12) << entry.path() << " " << stay.name;
      ++stacks;
    }
  }
  EXPECT_GT(stacks, 50u);
}

TEST(Body, CarriesTheAssumptionsOfPinToPin) {
  RigBuilder builder;
  const PartId toggle = builder.add(fixed("toggle", mm(80)));
  Stay made = stay("forestay", builder.add(wire("wire", mm(6))), {item(toggle), line()});
  made.path = path({builder.point("tang", 0, 0, 9000, assumed("tang")), builder.point("tip", 0, 700, 5000),
                    builder.point("plate", 0, 900, 0, assumed("plate"))});
  builder.add(made);
  const Derived derived = calculate(builder.rig);
  EXPECT_EQ(derived.stays[0].body.terms[0].provenance.assumptions,
            (std::vector<std::string>{"tang", "plate"}));
  EXPECT_EQ(derived.stays[0].pieces[0].cut.terms[0].provenance.assumptions,
            (std::vector<std::string>{"tang", "plate"}));
}

RC_GTEST_PROP(Body, PlusHardwareIsPinToPin, ()) {
  RigBuilder builder;
  const Length pin_to_pin = mm(*rc::gen::inRange(500'000, 30'000'000) / 1000.0);
  std::vector<StackItem> stack{line()};
  Length taken;
  Length others;
  const auto parts = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 400'000));
  for (const int micrometres : parts) {
    const Length length = mm(micrometres / 1000.0);
    const int count = *rc::gen::inRange(1, 4);
    stack.push_back(item(builder.add(fixed("part", length)), count));
    taken += length * count;
    if (micrometres % 3 == 0) {
      stack.push_back(line(length));
      others += length;
    }
  }
  builder.add(stay("stay", pin_to_pin, builder.add(wire("wire", mm(6))), stack));
  const Derived derived = calculate(builder.rig);
  RC_ASSERT(std::abs((derived.stays[0].body.known() + taken - pin_to_pin).millimetres()) < 1e-6);
  RC_ASSERT(
      std::abs((derived.stays[0].pieces[0].body.known() + others + taken - pin_to_pin).millimetres()) <
      1e-6);
  Length all_pieces;
  for (const Piece& piece : derived.stays[0].pieces) {
    all_pieces += piece.body.known();
    Length sum;
    for (const Term& term : piece.cut.terms)
      sum += term.amount;
    RC_ASSERT(sum == piece.cut.known());
  }
  RC_ASSERT(std::abs((all_pieces - derived.stays[0].body.known()).millimetres()) < 1e-6);
}

} // namespace
} // namespace sheerpole::body_test
