#include "diagnostics/render.hpp"
#include "unit/diagnostics/finding_builder.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace sheerpole::render_json_test {
namespace {

TEST(RenderJson, KeepsAllKeysInOneOrder) {
  const OneFile file("let \xC3\xA9 = 12\nlet b = 13\n");
  Diagnostic one = finding(Severity::error, "missing-unit", "`12` has no unit");
  one.why = "could be inches";
  one.subject = "b";
  one.primary = Label{file.span("12"), "needs one"};
  one.others.push_back({file.span("13"), "also here"});
  one.edit = Edit{file.span("12"), "12 mm", "write 12 mm"};
  EXPECT_EQ(render_json({one}, file.sources), R"({
  "format": "sheerpole-findings",
  "version": 1,
  "findings": [
    {
      "slug": "missing-unit",
      "severity": "error",
      "message": "`12` has no unit",
      "why": "could be inches",
      "subject": "b",
      "waived": null,
      "place": {
        "file": "pellimoor.rig",
        "line": 1,
        "column": 9,
        "end_line": 1,
        "end_column": 11,
        "offset": 9,
        "end_offset": 11
      },
      "label": "needs one",
      "others": [
        {
          "label": "also here",
          "place": {
            "file": "pellimoor.rig",
            "line": 2,
            "column": 9,
            "end_line": 2,
            "end_column": 11,
            "offset": 20,
            "end_offset": 22
          }
        }
      ],
      "edit": {
        "title": "write 12 mm",
        "replacement": "12 mm",
        "certain": false,
        "place": {
          "file": "pellimoor.rig",
          "line": 1,
          "column": 9,
          "end_line": 1,
          "end_column": 11,
          "offset": 9,
          "end_offset": 11
        }
      }
    }
  ],
  "counts": {
    "errors": 1,
    "warnings": 0,
    "notes": 0,
    "waived": 0
  },
  "checks": null
}
)");
}

TEST(RenderJson, SaysOfAnEditThatItIsCertain) {
  const OneFile file("use x.rig\n");
  Diagnostic one = finding(Severity::error, "quotes-missing", "the path has no quotes");
  one.primary = Label{file.span("x.rig"), ""};
  one.edit = Edit{file.span("x.rig"), "\"x.rig\"", "write \"x.rig\"", true};
  EXPECT_EQ(nlohmann::json::parse(render_json({one}, file.sources))["findings"][0]["edit"]["certain"],
            true);
}

TEST(RenderJson, SaysNullWhereThereIsNothing) {
  const auto json = nlohmann::json::parse(
      render_json({finding(Severity::warning, "file-not-found", "there is no file")}, OneFile("").sources));
  EXPECT_TRUE(json["findings"][0]["place"].is_null());
  EXPECT_TRUE(json["findings"][0]["edit"].is_null());
  EXPECT_EQ(json["findings"][0]["others"], nlohmann::json::array());
  EXPECT_EQ(json["counts"]["warnings"], 1);
}

TEST(RenderJson, SurvivesAFileNameThatIsNotUtf8) {
  const OneFile file("let a = 12\n", "rig\xFF.rig");
  Diagnostic one = finding(Severity::note, "n", "m");
  one.primary = Label{file.span("12"), ""};
  const auto json = nlohmann::json::parse(render_json({one}, file.sources));
  EXPECT_EQ(json["findings"][0]["place"]["file"], "rig\xEF\xBF\xBD.rig");
}

} // namespace
} // namespace sheerpole::render_json_test
