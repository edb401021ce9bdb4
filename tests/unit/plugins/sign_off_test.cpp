#include "plugins/sign-off/sign_off.hpp"

#include "driver/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/page/page_boxes.hpp"

#include <gtest/gtest.h>

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole::sign_off_test {
namespace {

class OneText final : public FileReader {
public:
  explicit OneText(std::string text) : text_(std::move(text)) {}
  Result<std::string, Failure> read(const std::string& /*path*/, std::size_t /*most*/) override {
    return text_;
  }

private:
  std::string text_;
};

Compilation example(const std::string& name) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader);
}

/// A boat with this many stays, each with a pin above and below and a turnbuckle, and names as long as
/// people make them.
Compilation many_stays(int count) {
  std::string text =
      "language 1\nboat \"Ærøskøbing-Ølnessund, the second of her name, of the long pier\" {\n}\n"
      "wire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
      "tang masthead-plate-with-a-long-name {\n  lower: jaw (gap: 12 mm, pin: \"12 mm\")\n}\n"
      "terminal eye-62 {\n  length: 62 mm\n  upper: eye (hole: 12.3 mm, thickness: 10 mm)\n"
      "  lower: wire-socket (inserted: 50 mm)\n}\n"
      "turnbuckle bottle-12 {\n  shortest: 200 mm\n  longest: 300 mm\n"
      "  upper: wire-socket (inserted: 50 mm)\n  lower: jaw (gap: 12 mm, pin: \"12 mm\")\n}\n"
      "chainplate plate-12 {\n  upper: eye (hole: 12.3 mm, thickness: 10 mm)\n}\n";
  for (int i = 0; i < count; ++i)
    text +=
        fmt::format("stay the-stay-with-a-name-that-goes-on-{} \"Stay ünder the spreader {}\" {{\n"
                    "  pin-to-pin: {} m\n  line: wire-6\n  stack {{\n    masthead-plate-with-a-long-name\n"
                    "    eye-62\n    line\n    bottle-12 (open: 50 %)\n    plate-12\n  }}\n}}\n",
                    i, i, 10 + i);
  OneText reader(text);
  return compile("many.rig", reader);
}

TEST(SignOff, ListsEveryPinAndThreadFromAloftToDeck) {
  const Compilation grisolde = example("grisolde");
  ASSERT_TRUE(grisolde.checked);
  const std::vector<Fastening> list = pin_list(*grisolde.checked);
  std::size_t screws = 0;
  for (const DerivedStay& stay : grisolde.checked->derived().stays)
    for (const TakeUp& adjuster : stay.adjusters)
      screws += grisolde.checked->rig()[adjuster.part].kind == PartKind::turnbuckle ? 1 : 0;
  EXPECT_EQ(
      static_cast<std::size_t>(std::count_if(
          list.begin(), list.end(), [](const Fastening& one) { return one.what.starts_with("thread"); })),
      screws);
  for (std::size_t i = 1; i < list.size(); ++i)
    EXPECT_GE(*list[i - 1].height, *list[i].height) << list[i].joint;
  EXPECT_TRUE(list.front().aloft);
  EXPECT_FALSE(list.back().aloft);
}

// A stack that ends with a jaw hangs by a pin, whatever it hangs on; a part that is used the other way
// round has its jaw at the other end.
TEST(SignOff, ListsThePinsOfOutermostJaws) {
  OneText reader("language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
                 "toggle toggle-12 {\n  length: 60 mm\n  upper: jaw (gap: 12 mm, pin: \"12 mm\")\n"
                 "  lower: wire-socket (inserted: 50 mm)\n}\n"
                 "stay forestay {\n  pin-to-pin: 10 m\n  line: wire-6\n  stack {\n    toggle-12\n    line\n"
                 "    toggle-12\n  }\n}\n");
  const Compilation boat = compile("outer.rig", reader);
  ASSERT_TRUE(boat.checked);
  const std::vector<Fastening> list = pin_list(*boat.checked);
  ASSERT_EQ(list.size(), 2u);
  EXPECT_EQ(list[0].what, "pin 12 mm");
  EXPECT_EQ(list[0].joint, "what it hangs on to toggle-12");
  EXPECT_EQ(list[1].joint, "toggle-12 to what holds it");
}

TEST(SignOff, IsWellSetForTheBoatsAndForFortyStaysWithLongNames) {
  const std::vector<Compilation> boats = [] {
    std::vector<Compilation> all;
    for (const char* name : {"pellimoor", "grisolde", "smidgeon", "oddnys-wager"})
      all.push_back(example(name));
    all.push_back(many_stays(40));
    return all;
  }();
  for (const Compilation& boat : boats) {
    ASSERT_TRUE(boat.checked);
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
      const std::string& title = boat.checked->rig().boat.title;
      expect_well_set(sign_off_pages(*boat.checked, title, size));
      expect_well_set(replacement_pages(*boat.checked, title, size));
    }
  }
  EXPECT_EQ(pin_list(*boats.back().checked).size(), 120u) << "two pins and a thread each";
}

} // namespace
} // namespace sheerpole::sign_off_test
