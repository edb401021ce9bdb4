#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::restate_for_shop_test {
namespace {

/// Body of a stay of 15 443 mm with an eye of 70 mm and a screw of 320 to 470 mm, half open in the file.
double body_from(const std::string& open) {
  std::string text = "language 1\n"
                     "wire wire-38 {\n  construction: \"1x19\"\n  size: \"3/8 in\"\n}\n"
                     "terminal eye-58 {\n  length: 70 mm\n  lower: wire-socket (inserted: 62 mm)\n}\n"
                     "turnbuckle bottle-58 {\n  shortest: 320 mm\n  longest: 470 mm\n"
                     "  thread: \"5/8-18 UNF\"\n  screw: pair\n  upper: wire-socket (inserted: 62 mm)\n}\n"
                     "stay cap {\n  pin-to-pin: 15_443 mm\n  line: wire-38\n  stack {\n    eye-58\n"
                     "    line\n    bottle-58 (open: 50 %)\n  }\n}\n"
                     "shop loft {\n  delivered-open: " +
                     open + "\n}\n";
  class OneText final : public FileReader {
  public:
    explicit OneText(std::string text) : text_(std::move(text)) {}
    Result<std::string, Failure> read(const std::string&, std::size_t) override { return text_; }

  private:
    std::string text_;
  };
  OneText reader(text);
  const Compilation rig = compile("test.rig", reader, {.settings = {}, .folders = {}, .shop = "loft"});
  for (const Diagnostic& finding : rig.findings)
    EXPECT_NE(finding.severity, Severity::error) << finding.message;
  if (!rig.derived)
    return 0.0;
  EXPECT_NEAR(rig.derived->stays[0].pin_to_pin.known().millimetres(), 15'443.0, 1e-9);
  EXPECT_EQ(rig.rig->differences.size(), 1u);
  return rig.derived->stays[0].body.known().millimetres();
}

// Arithmetic of the range; an invented boat's body of 14 978 mm is that of the screw half open. The shares
// are conventions of the trade: common practice, no source.
TEST(RestateForShop, MovesTheBodyAndNotThePins) {
  EXPECT_NEAR(body_from("50 %"), 14'978.0, 1e-9);
  EXPECT_NEAR(body_from("5/8"), 14'978.0 - 18.75, 1e-9);
  EXPECT_NEAR(body_from("2/3"), 14'978.0 - 25.0, 1e-9);
  EXPECT_NEAR(body_from("75 %"), 14'978.0 - 37.5, 1e-9);
}

} // namespace
} // namespace sheerpole::restate_for_shop_test
