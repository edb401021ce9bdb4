#include "backend/json/json.hpp"
#include "plugins/findings/findings.hpp"
#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::findings_test {
namespace {

TEST(FindingsBackEnd, WritesThemWithoutColour) {
  SampleRig sample;
  Diagnostic note;
  note.severity = Severity::note;
  note.slug = "no-toggle";
  note.message = "cap-shroud.port has no toggle at its lower end";
  note.primary = Label{Span{SourceId{0}, 16, 26}, "this stay"};
  sample.findings = {note};
  const OutputBundle bundle = Findings().generate({sample.checked()});
  ASSERT_EQ(bundle.files.size(), 3u);
  EXPECT_EQ(bundle.files[0].name, "findings.txt");
  EXPECT_EQ(bundle.files[0].bytes, "note at pellimoor.rig:2:6 (no-toggle)\n"
                                   "  cap-shroud.port has no toggle at its lower end\n"
                                   "    2 : stay cap-shroud {\n"
                                   "      :      ^^^^^^^^^^ this stay\n"
                                   "\n"
                                   "0 errors, 0 warnings, 1 note\n"
                                   "checks: 0 pass, 0 findings, 0 not checked, 0 waived\n");
  EXPECT_EQ(bundle.files[1].name, "findings.json");
  const Json json = Json::parse(bundle.files[1].bytes);
  EXPECT_EQ(json["findings"][0]["slug"], "no-toggle");
  EXPECT_EQ(json["counts"]["notes"], 1);
  EXPECT_EQ(bundle.files[2].name, "findings.sarif");
  const Json log = Json::parse(bundle.files[2].bytes);
  EXPECT_EQ(log["runs"][0]["results"][0]["ruleId"], "no-toggle");
  EXPECT_EQ(log["runs"][0]["results"][0]["locations"][0]["physicalLocation"]["region"]["startColumn"], 6);
}

TEST(FindingsBackEnd, SaysThatThereAreNone) {
  EXPECT_EQ(Findings().generate({SampleRig().checked()}).files.at(0).bytes,
            "0 errors, 0 warnings, 0 notes\nchecks: 0 pass, 0 findings, 0 not checked, 0 waived\n");
}

} // namespace
} // namespace sheerpole::findings_test
