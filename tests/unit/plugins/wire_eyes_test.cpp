// A wire that goes round a mast or a dead-eye and back along itself is an eye, and no wire in a terminal.

#include "plugins/bench-card/bench_card.hpp"
#include "plugins/sign-off/sign_off.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/plugins/paper_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace sheerpole::wire_eyes_test {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

constexpr const char* gaff_shroud = R"(language 1
wire galvanised-10 {
  construction: "7x7"
  size: "10 mm"
}
soft-eye hounds-eye "Soft eye over the hounds" {
  length: 0 mm measured
  lower: wire-socket (construction: "7x7", size: "10 mm", inserted: 1_000 mm measured)
}
deadeye upper-deadeye "Upper dead-eye" {
  length: 95 mm measured
  upper: wire-socket (construction: "7x7", size: "10 mm", inserted: 640 mm measured)
  lower: holes (count: 3, diameter: 20 mm)
}
stay shroud {
  line: galvanised-10
  stack {
    hounds-eye
    line
    upper-deadeye
  }
}
reading of shroud {
  method: tape
  runs: 6_850 mm, 6_852 mm
  date: 2026-04-11
}
)";

template <class Backend>
std::string paper(const Compilation& boat) {
  const OutputFile file = Backend().generate({*boat.checked}).files.front();
  return test::one_blank_between(test::words_of_markup(without_thin_blanks(test::plainly_set(file.bytes))));
}

// Pin to pin 6851, the dead-eye 95: 6756 from crown to crown; with 1000 and 640 beyond them a cut of 8396.
// The legs of an eye are longer than the straight way, so what is set is that length and no mark at a
// crown.
TEST(WireEyes, TheCardTellsHowAnEyeIsLaidRoundWhatItHolds) {
  const Compilation boat = test::compiled(gaff_shroud);
  ASSERT_TRUE(boat.checked);
  const std::string bench = paper<BenchCard>(boat);
  EXPECT_THAT(
      bench,
      AllOf(
          HasSubstr("lay the wire round hounds-eye"),
          HasSubstr("so that it is 6756 mm from its crown to mark 3. The 1000 mm beyond mark 2 go round it "
                    "and back along the wire"),
          HasSubstr("so that it is 6756 mm from its crown to the bearing aloft. The 640 mm"),
          HasSubstr("while the eye is tucked or seized"), HasSubstr("tucks or seizing")));
  EXPECT_THAT(bench, AllOf(Not(HasSubstr("put the wire into")), Not(HasSubstr("terminal is closed")),
                           Not(HasSubstr("mouth of the terminal"))));
  EXPECT_THAT(bench, HasSubstr("8396 mm"));
}

TEST(WireEyes, TheSignOffLooksAtTucksAndNotForATerminal) {
  const Compilation boat = test::compiled(gaff_shroud);
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(paper<SignOff>(boat),
              AllOf(HasSubstr("look at its tucks or seizing"), Not(HasSubstr("terminal: look"))));
}

} // namespace
} // namespace sheerpole::wire_eyes_test
