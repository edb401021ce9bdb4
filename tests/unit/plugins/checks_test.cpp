#include "plugins/checks/checks.hpp"
#include "rules/check_table.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sheerpole::checks_test {
namespace {

using testing::HasSubstr;

TEST(ChecksBackEnd, WritesEveryResultAndTheirTotals) {
  SampleRig sample;
  const CheckResults results{{
      {"pin-loose", "cap-shroud", CheckOutcome::pass, "pin 12 mm in a hole of 12.3 mm"},
      {"pin-loose", "forestay", CheckOutcome::not_checked, "the hole of the eye is not stated"},
      {"no-toggle-below", "forestay", CheckOutcome::waived, "forestay has no toggle"},
  }};
  const auto checked =
      CheckedRig::make(std::make_shared<SourceSet>(sample.sources), std::make_shared<const Rig>(sample.rig),
                       std::make_shared<const Derived>(sample.derived), sample.findings,
                       std::make_shared<const CheckResults>(results), limit_uses());
  ASSERT_TRUE(checked);
  const OutputBundle bundle = Checks().generate({*checked});
  ASSERT_EQ(bundle.files.size(), 4u);
  EXPECT_THAT(bundle.files[0].bytes, HasSubstr("1 pass, 0 findings, 1 not checked, 1 waived."));
  EXPECT_THAT(bundle.files[0].bytes, HasSubstr("pin-play 0.5 mm, pin-play-share 5 %"));
  EXPECT_THAT(bundle.files[1].bytes,
              HasSubstr("check,about,result,what\r\n"
                        "pin-loose,cap-shroud,pass,pin 12 mm in a hole of 12.3 mm\r\n"
                        "pin-loose,forestay,not checked,the hole of the eye is not "
                        "stated\r\nno-toggle-below,forestay,waived,"));
}

} // namespace
} // namespace sheerpole::checks_test
