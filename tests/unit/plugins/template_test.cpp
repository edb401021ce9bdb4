#include "plugins/template/template.hpp"

#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::template_test {
namespace {

// The test to copy with the back end: a rig whose lengths are worked on paper, and the very bytes that must
// come out.
TEST(TemplateBackEnd, OneLineForEachPiece) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  const CheckedRig checked = sample.checked();
  const OutputBundle bundle = Template().generate({checked});
  ASSERT_EQ(bundle.files.size(), 1U);
  EXPECT_EQ(bundle.files[0].name, "template.txt");
  EXPECT_EQ(bundle.files[0].bytes, "piece            line     cut mm\n"
                                   "---------------  ------  -------\n"
                                   "cap-shroud.port  hmpe-9  12997.7\n");
}

} // namespace
} // namespace sheerpole::template_test
