#include "service/begin/begin_request.hpp"

#include "service/compile.hpp"

#include <gmock/gmock.h>

#include <string>

namespace sheerpole::begin_request_test {
namespace {

using namespace service;
using testing::HasSubstr;
using testing::StartsWith;

const BeginRequest sloop{"masthead-sloop", "wire", "cord", "Second Wind", "millimetres"};

std::string refused(const BeginRequest& request) {
  const auto begun = begin_file(request);
  return begun.ok() ? "a file" : begun.error();
}

TEST(BeginRequest, MakesAFileThatCompilesOfNoLengthAtAll) {
  const auto begun = begin_file(sloop);
  ASSERT_TRUE(begun.ok()) << begun.error();
  EXPECT_EQ(begun.value().file, "second-wind.rig");
  EXPECT_THAT(begun.value().text, StartsWith("language 1\n"));
  EXPECT_THAT(begun.value().text, HasSubstr("boat \"Second Wind\" {"));
  EXPECT_THAT(begun.value().text, Not(HasSubstr("unit:")));
}

TEST(BeginRequest, CallsTheFileByLettersThatEverySystemTakes) {
  const auto called = [](const std::string& boat) {
    BeginRequest request = sloop;
    request.name = boat;
    return begin_file(request).value().file;
  };
  EXPECT_EQ(called("Aunt's Boat  2"), "aunt-s-boat-2.rig");
  EXPECT_EQ(called("../../etc"), "etc.rig");
  EXPECT_EQ(called("\u00d6\u00e9"), "boat.rig");
  EXPECT_EQ(called("Quote \" and \\"), "quote-and.rig");
  EXPECT_EQ(called(std::string(500, 'x')), std::string(60, 'x') + ".rig");
}

TEST(BeginRequest, WorksInInchesByAShopOfTheFile) {
  BeginRequest request = sloop;
  request.unit = "inches";
  const auto begun = begin_file(request);
  ASSERT_TRUE(begun.ok()) << begun.error();
  EXPECT_THAT(begun.value().text, HasSubstr("  unit: inches\n  round-to: 1/16 in\n"));
  OneTextReader reader("boat.rig", begun.value().text);
  const Compilation made = compile("boat.rig", reader);
  EXPECT_TRUE(made.checked);
}

TEST(BeginRequest, TakesTheNumbersThatAreGiven) {
  BeginRequest request = sloop;
  request.numbers["beam"] = "9' 6\"";
  const auto begun = begin_file(request);
  ASSERT_TRUE(begun.ok()) << begun.error();
  EXPECT_THAT(begun.value().text, HasSubstr("let beam = 9' 6\" assumed"));
}

TEST(BeginRequest, SaysWhyThereIsNoFile) {
  const auto with = [](auto change) {
    BeginRequest request = sloop;
    change(request);
    return refused(request);
  };
  EXPECT_THAT(with([](BeginRequest& r) { r.rig = "raft"; }), StartsWith("`rig` is bowsprit-sloop, "));
  EXPECT_EQ(with([](BeginRequest& r) { r.line = "chain"; }), "`line` is wire or rope, not `chain`");
  EXPECT_EQ(with([](BeginRequest& r) { r.measured = ""; }), "`measured` is cord, tape or drawing, not ``");
  EXPECT_EQ(with([](BeginRequest& r) { r.unit = "cubits"; }),
            "`unit` is millimetres or inches, not `cubits`");
  EXPECT_EQ(with([](BeginRequest& r) { r.name = ""; }), "the boat has no name");
  EXPECT_THAT(with([](BeginRequest& r) { r.name = "a\a"; }), HasSubstr("a sign that does not show"));
  EXPECT_EQ(with([](BeginRequest& r) { r.numbers["bowsprit-length"] = "1 m"; }),
            "a masthead-sloop has no place for `bowsprit-length`");
  EXPECT_THAT(with([](BeginRequest& r) { r.numbers["beam"] = "3"; }),
              HasSubstr("`beam` is a length with its unit"));
  EXPECT_THAT(with([](BeginRequest& r) { r.numbers["beam"] = "3 kg"; }), HasSubstr("not `3 kg`"));
}

TEST(BeginRequest, RefusesNumbersThatMakeNoRigHoweverTheyAreMeasured) {
  for (const char* measured : {"cord", "tape", "drawing"}) {
    BeginRequest request = sloop;
    request.measured = measured;
    request.numbers["mast-height"] = "1e11 mm";
    EXPECT_THAT(refused(request), StartsWith("these numbers make no rig: ")) << measured;
  }
}

} // namespace
} // namespace sheerpole::begin_request_test
