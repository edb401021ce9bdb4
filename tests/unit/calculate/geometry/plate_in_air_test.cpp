// A plate in which stays meet hangs in the air, however near to a mast: it is not one of that mast.
#include "calculate/geometry/spar_lines.hpp"
#include "plugins/dry-fit-card/dry_fit_card.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "wording/model_words.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sheerpole::plate_in_air_test {
namespace {

/// A ketch whose backstay parts 0.3 m before the mizzen. `plate`: where the file says the plate is.
Compilation ketch(const std::string& plate) {
  const Compilation boat = test::compiled(
      "language 1\nboat \"Ray\" { }\nspar mainmast \"Main mast\" {\n  sort: mast\n  heel: (0, 0, 1) m "
      "drawn\n}\nspar mizzen \"Mizzen\" {\n  sort: mast\n  heel: (-4.3, 0, 1) m drawn\n}\n"
      "rope hmpe-9 {\n  construction: \"12-strand HMPE\"\n  size: \"9 mm\"\n}\n"
      "splice long {\n  bury: 72 d practice\n  contraction: 8 % measured\n}\n"
      "thimble eye {\n  length: 20 mm measured\n  wrap: 150 mm measured\n}\n"
      "turnbuckle screw {\n  shortest: 300 mm measured\n  longest: 400 mm measured\n}\n"
      "junction arm {\n  length: 30 mm measured\n}\n"
      "points {\n  main-head: (-0.1, 0, 14) m drawn\n  quarter: (-5.5, 1.2, 1.1) m drawn\n}\n" +
      plate +
      "stay backstay {\n  path: main-head > bridle\n  line: hmpe-9\n  stack {\n    eye (splice: long)\n    "
      "line\n    eye (splice: long)\n    arm\n  }\n}\n"
      "stay leg {\n  path: bridle > quarter\n  line: hmpe-9\n  stack {\n    arm\n    eye (splice: long)\n  "
      "  "
      "line\n    eye (splice: long)\n    screw (open: 50 %)\n  }\n}\n");
  EXPECT_TRUE(boat.checked);
  return boat;
}

TEST(PlateInAir, BelongsToTheMastThatTheStayAboveItComesFrom) {
  const Compilation boat = ketch("points {\n  bridle: (-4, 0, 3) m drawn\n}\n");
  const Rig& rig = boat.checked->rig();
  const Stay& leg = rig.stays.back();
  EXPECT_EQ(where_words(rig, leg, WhichEnd::upper), "at the bridle");
  ASSERT_NE(mast_at(rig, leg, WhichEnd::upper), nullptr);
  EXPECT_EQ(mast_at(rig, leg, WhichEnd::upper)->name, "mainmast");
  EXPECT_EQ(mast_at(rig, leg, WhichEnd::lower)->name, "mainmast");
  EXPECT_EQ(mast_at(rig, rig.stays.front(), WhichEnd::lower)->name, "mainmast");
}

TEST(PlateInAir, IsOfAMastWhereTheFileSaysSo) {
  const Compilation boat = ketch("points on mizzen {\n  bridle: (0.3, 0, 2) m drawn\n}\n");
  const Rig& rig = boat.checked->rig();
  EXPECT_EQ(where_words(rig, rig.stays.back(), WhichEnd::upper), "at the bridle of the mizzen");
}

// Without its other stays the plate is nowhere, so nothing can hang beside its place.
TEST(PlateInAir, NoHoistedDryFitIsAskedForAtIt) {
  const Compilation boat = ketch("points {\n  bridle: (-4, 0, 3) m drawn\n}\n");
  for (const StayFit& fit : stay_fits(*boat.checked))
    EXPECT_TRUE(hoisted_pages(fit, "Ray", PaperSize::a4).empty()) << fit.stay->name;
}

} // namespace
} // namespace sheerpole::plate_in_air_test
