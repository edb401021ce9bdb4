#include "plugins/change-sheet/change_sheet.hpp"

#include "backend/json/json.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/page/page_boxes.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sheerpole::change_sheet_test {
namespace {

using testing::HasSubstr;
using testing::Not;

Compilation example(const std::string& name, std::vector<std::string> settings = {}) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader,
                 {.settings = std::move(settings), .folders = {}});
}

OutputBundle sheet(const Compilation& was, const Compilation& is, PaperSize paper = PaperSize::a4) {
  return ChangeSheet().generate({.checked = *is.checked,
                                 .fleet = {},
                                 .paper = paper,
                                 .previous = &*was.checked,
                                 .name = "now",
                                 .previous_name = "before"});
}

std::string file(const OutputBundle& bundle, const std::string& name) {
  for (const OutputFile& one : bundle.files)
    if (one.name == name)
      return one.bytes;
  return {};
}

struct Case {
  const char* boat;
  const char* setting;
};
class ChangeSheets : public testing::TestWithParam<Case> {};
INSTANTIATE_TEST_SUITE_P(Boats, ChangeSheets,
                         testing::Values(Case{"grisolde", "step-packing=25 mm"},
                                         Case{"oddnys-wager", "steeve=2 deg"},
                                         Case{"pellimoor", "hmpe-9.break-load=80 kN"},
                                         Case{"smidgeon", "mast.rake=2 deg"}));

TEST_P(ChangeSheets, PagesAreWellSetOnBothSheets) {
  const Compilation was = example(GetParam().boat);
  const Compilation is = example(GetParam().boat, {GetParam().setting});
  ASSERT_TRUE(was.checked && is.checked);
  for (const PaperSize paper : {PaperSize::a4, PaperSize::letter})
    expect_well_set(sheet(was, is, paper).papers.front().pages);
}

// The text, the JSON and the picture are made of the same comparison: they name the same stays.
TEST_P(ChangeSheets, AllFormsNameTheSameStays) {
  const Compilation was = example(GetParam().boat);
  const Compilation is = example(GetParam().boat, {GetParam().setting});
  const OutputBundle bundle = sheet(was, is);
  const Json json = Json::parse(file(bundle, "change-sheet.json"));
  const std::string text = file(bundle, "change-sheet.txt");
  for (const Stay& stay : is.rig->stays) {
    const bool in_json = std::any_of(json["stays"].begin(), json["stays"].end(),
                                     [&](const Json& one) { return one["stay"] == stay.name; });
    const bool in_text = text.find("\n" + stay.name + " ") != std::string::npos ||
                         text.find("\n" + stay.base + " ") != std::string::npos;
    EXPECT_EQ(in_json, in_text) << stay.name;
  }
  EXPECT_EQ(json["stays"].empty(), text.find("No stay has to be made") != std::string::npos);
}

// Who takes the change back gets the same bytes as before.
TEST_P(ChangeSheets, TakenBackItIsGone) {
  const Compilation was = example(GetParam().boat);
  const Compilation again = example(GetParam().boat);
  EXPECT_EQ(write_json(request_json(*was.checked)), write_json(request_json(*again.checked)));
  const std::string text = file(sheet(was, again), "change-sheet.txt");
  EXPECT_THAT(text, HasSubstr("No stay has to be made or set otherwise."));
  EXPECT_THAT(text, Not(HasSubstr("because")));
}

TEST(ChangeSheet, MakesNothingWithoutAVersionBefore) {
  const Compilation boat = example("pellimoor");
  EXPECT_TRUE(ChangeSheet().generate({*boat.checked}).files.empty());
}

TEST(ChangeSheet, IsADraftWhereTheNewRigIsOne) {
  const Compilation was = example("pellimoor");
  EXPECT_THAT(file(sheet(was, example("pellimoor", {"hmpe-9.break-load=80 kN"})), "change-sheet.txt"),
              Not(HasSubstr("DRAFT")));
  const Compilation longer = example("grisolde", {"step-packing=25 mm"});
  EXPECT_THAT(file(sheet(example("grisolde"), longer), "change-sheet.txt"), HasSubstr("DRAFT"));
}

} // namespace
} // namespace sheerpole::change_sheet_test
