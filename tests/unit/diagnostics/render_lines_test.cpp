#include "diagnostics/render.hpp"
#include "unit/diagnostics/finding_builder.hpp"

#include <gtest/gtest.h>

namespace sheerpole::render_lines_test {
namespace {

TEST(RenderLines, GivesEachFindingOneLine) {
  const OneFile file("let \xC3\xA9 = 12\n");
  Diagnostic first = finding(Severity::error, "missing-unit", "`12` has\nno unit");
  first.primary = Label{file.span("12"), "needs one"};
  first.why = "not shown here";
  const Diagnostic second = finding(Severity::note, "no-stays", "this rig has no stays");
  EXPECT_EQ(render_lines({first, second}, file.sources),
            "pellimoor.rig:1:9: error: `12` has no unit [missing-unit]\n"
            "note: this rig has no stays [no-stays]\n");
}

TEST(RenderLines, NamesAnEditThatIsCertainAndNoOther) {
  const OneFile file("let a = 12;\n");
  Diagnostic one = finding(Severity::error, "semicolon", "a line needs no ;");
  one.primary = Label{file.span(";"), ""};
  one.edit = Edit{file.span(";"), "", "leave the\n; out", true};
  EXPECT_EQ(render_lines({one}, file.sources),
            "pellimoor.rig:1:11: error: a line needs no ; [semicolon] (mend: leave the ; out)\n");
  one.edit->certain = false;
  EXPECT_EQ(render_lines({one}, file.sources),
            "pellimoor.rig:1:11: error: a line needs no ; [semicolon]\n");
}

TEST(RenderLines, GivesNothingForNothing) {
  EXPECT_EQ(render_lines({}, OneFile("").sources), "");
}

} // namespace
} // namespace sheerpole::render_lines_test
