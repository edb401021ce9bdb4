#include "plugins/measuring-sheet/measuring_sheet.hpp"

#include "service/compile.hpp"
#include "unit/calculate/compiled_rig.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace sheerpole::measuring_sheet_test {
namespace {

using testing::HasSubstr;
using testing::Not;

/// A backstay in two legs that meet in a plate 30 mm from whose middle each has its hole.
std::string sheet_of(const std::string& stay) {
  const Compilation boat =
      test::compiled("language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
                     "points {\n  masthead: (-0.2, 0, 13) m drawn\n  plate: (-4, 0, 4) m drawn\n  quarter: "
                     "(-5.2, 0, 1.1) m "
                     "drawn\n}\n"
                     "junction arm {\n  length: 30 mm\n}\n" +
                     stay);
  if (!boat.checked) {
    ADD_FAILURE() << stay;
    return {};
  }
  return MeasuringSheet().generate({*boat.checked}).files.front().bytes;
}

// The path of a stay ends in the middle of the plate and its body 30 mm short of it: who measured to the
// hole of the stay would get a line that is too short by the arm of the plate.
TEST(MeasuringSheet, AsksToTheMiddleOfThePlateWhereStaysMeet) {
  const std::string above =
      sheet_of("stay backstay {\n  path: masthead > plate\n  line: wire-6\n  stack {\n    "
               "line\n    arm\n  }\n}\n");
  EXPECT_THAT(above, HasSubstr("from the middle of the pin to the middle of the plate"));
  EXPECT_THAT(above, HasSubstr("not to the hole of this one"));
  EXPECT_THAT(above, HasSubstr("knot down to plate below"));
  EXPECT_THAT(above, HasSubstr("hook or cord end down to pin aloft"));
  const std::string leg =
      sheet_of("stay leg {\n  path: plate > quarter\n  line: wire-6\n  stack {\n    arm\n    "
               "line\n  }\n}\n");
  EXPECT_THAT(leg, HasSubstr("from the middle of the plate to the middle of the pin"));
  EXPECT_THAT(leg, HasSubstr("hook or cord end down to plate aloft"));
  EXPECT_THAT(leg, HasSubstr("knot down to pin below"));
  const std::string plain = sheet_of(
      "stay forestay {\n  path: masthead > quarter\n  line: wire-6\n  stack {\n    line\n  }\n}\n");
  EXPECT_THAT(plain, HasSubstr("from the middle of one pin to the middle of the other"));
  EXPECT_THAT(plain, Not(HasSubstr("plate")));
}

} // namespace
} // namespace sheerpole::measuring_sheet_test
