#include "backend/json/json.hpp"
#include "plugins/echo/echo.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::echo_test {
namespace {

TEST(EchoBackEnd, GivesTheRequestBack) {
  SampleRig sample;
  sample.add_cap_shroud(Side::port);
  const CheckedRig checked = sample.checked();
  const OutputBundle bundle = Echo().generate({checked});
  ASSERT_EQ(bundle.files.size(), 1u);
  EXPECT_EQ(bundle.files[0].name, "echo.json");
  EXPECT_EQ(Json::parse(bundle.files[0].bytes), request_json(checked));
}

} // namespace
} // namespace sheerpole::echo_test
