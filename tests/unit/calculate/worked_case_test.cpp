// The worked case of docs/cords.md beyond the bench: what is in hand, the play of screw and toggles, and
// the hoisted dry fit. Numbers of the trade, common practice, no source; worked by hand in the table.
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/reference_rows.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <string>

namespace sheerpole::worked_case_test {
namespace {

constexpr double inch = 25.4;

/// A row of the table, millimetres.
double wanted(const std::string& quantity) {
  for (const auto& row : reference_rows("cord-worked-case", 3))
    if (row[0] == quantity)
      return std::stod(row[1]) * inch;
  ADD_FAILURE() << "no row " << quantity;
  return 0.0;
}

/// The example boat with the lines of her cap shrouds, and the eyes above and below them, stated so.
Compilation quillwort(const std::string& line = "line", const std::string& below = "") {
  std::ifstream in(std::string(SHEERPOLE_EXAMPLES_DIR) + "/quillwort.rig", std::ios::binary);
  std::string text{std::istreambuf_iterator<char>(in), {}};
  const std::string stack = "    line\n    eye-thimble (splice: long-bury)\n";
  const std::size_t at = text.find(stack);
  EXPECT_NE(at, std::string::npos);
  text.replace(at, stack.size(), "    " + line + "\n    eye-thimble (splice: long-bury" + below + ")\n");
  return test::compiled(text);
}

const DerivedStay& cap_shroud(const Compilation& boat) {
  for (const DerivedStay& stay : boat.derived->stays)
    if ((*boat.rig)[stay.stay].name == "cap-shroud.port")
      return stay;
  ADD_FAILURE() << "no cap shroud";
  return boat.derived->stays.front();
}

TEST(WorkedCase, WhatIsInHandIsSharedOutAndNothingIsCut) {
  const Compilation boat = quillwort("line (in-hand-over: 10 ft 9 in measured)");
  const Piece& piece = cap_shroud(boat).pieces.at(0);
  ASSERT_TRUE(piece.in_hand);
  EXPECT_TRUE(piece.in_hand->cut_nothing());
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower})
    EXPECT_NEAR(piece.in_hand->at(end).more.millimetres(), wanted("extra-each-end"), 1e-6);
  EXPECT_TRUE(piece.cut.unknown);
  EXPECT_NEAR(piece.cut.known().millimetres(), wanted("in-hand beyond-x"), 1e-6);
}

TEST(WorkedCase, OneEndOfFiveFeetLeavesTheOtherTheRest) {
  const Compilation boat =
      quillwort("line (in-hand-over: 10 ft 9 in measured)", ", spare-bury: 5 ft measured");
  const Piece& piece = cap_shroud(boat).pieces.at(0);
  ASSERT_TRUE(piece.in_hand);
  EXPECT_NEAR(piece.in_hand->at(WhichEnd::upper).more.millimetres(), wanted("other-end-at-60"), 1e-6);
  EXPECT_NEAR(piece.cut.known().millimetres(), wanted("in-hand beyond-x"), 1e-6);
}

TEST(WorkedCase, TheTogglesAreReserveBesideTheScrew) {
  const Compilation boat = quillwort();
  const DerivedStay& stay = cap_shroud(boat);
  EXPECT_NEAR(stay.play.by_adjusters.millimetres(), wanted("take-up-by-screw"), 1e-6);
  EXPECT_NEAR(stay.play.in_all.millimetres(), wanted("take-up-with-toggles"), 1e-6);
}

TEST(WorkedCase, HoistedItHangsByTheHardwareLessTheGap) {
  const Compilation boat = quillwort();
  const DerivedStay& stay = cap_shroud(boat);
  ASSERT_TRUE(stay.hoisted_fit);
  ASSERT_TRUE(stay.hoisted_fit->hangs_at());
  EXPECT_NEAR(stay.hoisted_fit->hangs_at()->millimetres(), wanted("hangs-at gap 4"), 1e-6);
}

} // namespace
} // namespace sheerpole::worked_case_test
