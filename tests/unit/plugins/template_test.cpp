#include "plugins/template/template.hpp"

#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::template_test {
namespace {

// The test to copy with the back end: a rig whose lengths are worked on paper, and the very bytes that must
// come out: the cut as the cut list prints it, the sum of its rounded rows. The exact one would be 12997.7.
TEST(TemplateBackEnd, OneLineForEachPiece) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  const CheckedRig checked = sample.checked();
  const OutputBundle bundle = Template().generate({checked});
  ASSERT_EQ(bundle.files.size(), 1U);
  EXPECT_EQ(bundle.files[0].name, "template.txt");
  EXPECT_EQ(bundle.files[0].bytes, "piece            line     cut mm\n"
                                   "---------------  ------  -------\n"
                                   "cap-shroud.port  hmpe-9  12997.6\n");
}

// What is to be added to a length that nobody has measured yet keeps its sign: 52 mm go in, 314 mm are
// hardware.
TEST(TemplateBackEnd, LessThanAnUnknownLengthIsSubtracted) {
  SampleRig sample;
  sample.add_unknown_stay(314.0);
  const OutputBundle bundle = Template().generate({sample.checked()});
  EXPECT_NE(bundle.files.at(0).bytes.find("  X - 262.0\n"), std::string::npos) << bundle.files[0].bytes;
}

} // namespace
} // namespace sheerpole::template_test
