#include "diagnostics/render.hpp"
#include "unit/diagnostics/finding_builder.hpp"

#include <gmock/gmock.h>

namespace sheerpole::render_terminal_test {
namespace {

using testing::HasSubstr;
using testing::Not;

Diagnostic missing_unit(const OneFile& file) {
  Diagnostic result = finding(Severity::error, "missing-unit", "`12` has no unit");
  result.why = "a bare number could be millimetres or inches";
  result.primary = Label{file.span("12"), "a length needs one"};
  result.edit = Edit{file.span("12"), "12 mm", "write `12 mm`"};
  return result;
}

TEST(RenderTerminal, ShowsPlaceReasonAndEdit) {
  const OneFile file("toggle t {\n  length: 12\n}\n");
  EXPECT_EQ(render_terminal({missing_unit(file)}, file.sources, false),
            "error at pellimoor.rig:2:11 (missing-unit)\n"
            "  `12` has no unit\n"
            "    2 :   length: 12\n"
            "      :           ^^ a length needs one\n"
            "  why: a bare number could be millimetres or inches\n"
            "  edit: write `12 mm`\n"
            "    2 :   length: 12 mm\n"
            "\n"
            "1 error, 0 warnings, 0 notes\n");
}

TEST(RenderTerminal, ShowsBothPlacesThatDisagree) {
  const OneFile file("let a = 1 m\nlet a = 2 m\n");
  Diagnostic twice = finding(Severity::warning, "stated-twice", "a is stated twice");
  twice.primary = Label{file.span("2 m"), "here 2 m"};
  twice.others.push_back({file.span("1 m"), "here 1 m"});
  EXPECT_EQ(render_terminal({twice}, file.sources, false), "warning at pellimoor.rig:2:9 (stated-twice)\n"
                                                           "  a is stated twice\n"
                                                           "    2 : let a = 2 m\n"
                                                           "      :         ^^^ here 2 m\n"
                                                           "  and at pellimoor.rig:1:9\n"
                                                           "    1 : let a = 1 m\n"
                                                           "      :         --- here 1 m\n"
                                                           "\n"
                                                           "0 errors, 1 warning, 0 notes\n");
}

TEST(RenderTerminal, SaysAFindingWithoutPlace) {
  const OneFile file("");
  EXPECT_EQ(render_terminal({finding(Severity::error, "file-not-found", "there is no file x.rig")},
                            file.sources, false),
            "error (file-not-found)\n"
            "  there is no file x.rig\n"
            "\n"
            "1 error, 0 warnings, 0 notes\n");
}

TEST(RenderTerminal, CountsNothing) {
  EXPECT_EQ(render_terminal({}, OneFile("").sources, false), "0 errors, 0 warnings, 0 notes\n");
}

TEST(RenderTerminal, CountsEachSeverity) {
  const std::vector<Diagnostic> findings{
      finding(Severity::error, "a", ""),   finding(Severity::error, "b", ""),
      finding(Severity::warning, "c", ""), finding(Severity::note, "d", ""),
      finding(Severity::note, "e", ""),    finding(Severity::note, "f", "")};
  EXPECT_THAT(render_terminal(findings, OneFile("").sources, false),
              testing::EndsWith("\n2 errors, 1 warning, 3 notes\n"));
}

TEST(RenderTerminal, NamesTheSubjectOnlyWhenTheMessageDoesNot) {
  const OneFile file("stay a\n");
  Diagnostic silent = finding(Severity::note, "n", "the line runs past its range");
  silent.subject = "runner.port";
  Diagnostic naming = finding(Severity::note, "n", "runner.port runs past its range");
  naming.subject = "runner.port";
  EXPECT_THAT(render_terminal({silent}, file.sources, false), HasSubstr("note (n), about runner.port\n"));
  EXPECT_THAT(render_terminal({naming}, file.sources, false), HasSubstr("note (n)\n"));
}

TEST(RenderTerminal, ExpandsTabsAndPutsTheMarkUnderTheSpot) {
  const OneFile file("\tlength:\t12\n");
  EXPECT_THAT(render_terminal({missing_unit(file)}, file.sources, false),
              HasSubstr("    1 :     length: 12\n"
                        "      :             ^^ a length needs one\n"));
}

TEST(RenderTerminal, PutsTheMarkRightAfterLettersOfSeveralBytesAndColumns) {
  const OneFile accents("# \xC3\xA9\xC3\xA8 12\n");
  EXPECT_THAT(render_terminal({missing_unit(accents)}, accents.sources, false),
              HasSubstr("pellimoor.rig:1:6 (missing-unit)\n  `12` has no unit\n"
                        "    1 : # \xC3\xA9\xC3\xA8 12\n"
                        "      :      ^^ a length"));
  const OneFile wide("# \xE4\xB8\xAD\xE4\xB8\xAD 12\n");
  EXPECT_THAT(render_terminal({missing_unit(wide)}, wide.sources, false),
              HasSubstr("pellimoor.rig:1:6 (missing-unit)\n  `12` has no unit\n"
                        "    1 : # \xE4\xB8\xAD\xE4\xB8\xAD 12\n"
                        "      :        ^^ a length"));
}

TEST(RenderTerminal, CropsALongLineAroundTheSpot) {
  const OneFile file(std::string(300, 'a') + " 12 " + std::string(300, 'b') + "\n");
  const std::string text = render_terminal({missing_unit(file)}, file.sources, false);
  EXPECT_THAT(text, HasSubstr("aaa 12 bbb"));
  std::size_t begin = 0;
  std::string shown;
  while (begin < text.size()) {
    const std::size_t end = text.find('\n', begin);
    const std::string line = text.substr(begin, end - begin);
    EXPECT_LE(line.size(), 100u) << line;
    if (line.find(" 12 b") != std::string::npos)
      shown = line;
    if (line.find('^') != std::string::npos) {
      EXPECT_EQ(line.find('^'), shown.find("12"));
    }
    begin = end + 1;
  }
  EXPECT_THAT(shown, testing::StartsWith("    1 : ...aaa"));
  EXPECT_THAT(shown, testing::EndsWith("bbb..."));
}

TEST(RenderTerminal, MarksAnEmptySpotAndTheEndOfTheFile) {
  const OneFile file("stay a {\n");
  Diagnostic open = finding(Severity::error, "open", "the block does not end");
  open.primary = Label{{SourceId{0}, 8, 8}, "a } is missing"};
  EXPECT_THAT(render_terminal({open}, file.sources, false),
              HasSubstr("    1 : stay a {\n"
                        "      :         ^ a } is missing\n"));
  open.primary = Label{{SourceId{0}, 9, 9}, "here"};
  EXPECT_THAT(render_terminal({open}, file.sources, false), HasSubstr("    2 :\n      : ^ here\n"));
}

TEST(RenderTerminal, ShowsTheFirstLineOfASpotOverSeveral) {
  const OneFile file("stay a {\n  line\n}\n");
  Diagnostic whole = finding(Severity::note, "n", "this stay");
  whole.primary = Label{{SourceId{0}, 0, 17}, "the stay"};
  EXPECT_THAT(render_terminal({whole}, file.sources, false),
              HasSubstr("    1 : stay a {\n"
                        "      : ^^^^^^^^ the stay, to line 3\n"));
}

TEST(RenderTerminal, ShowsEveryLineOfAnEdit) {
  const OneFile file("stack { tang line }\r\nnext\r\n");
  Diagnostic split = finding(Severity::note, "n", "two items in one line");
  split.primary = Label{file.span("tang line"), ""};
  split.edit = Edit{file.span("tang line"), "\n  tang\n  line\n", "one item a line"};
  EXPECT_THAT(render_terminal({split}, file.sources, false), HasSubstr("  edit: one item a line\n"
                                                                       "    1 : stack {\n"
                                                                       "    2 :   tang\n"
                                                                       "    3 :   line\n"
                                                                       "    4 :  }\n"
                                                                       "\n"));
}

TEST(RenderTerminal, WrapsALongReasonUnderItself) {
  Diagnostic long_reason = finding(Severity::note, "n", "m");
  long_reason.why = std::string(60, 'a') + " " + std::string(60, 'b');
  EXPECT_THAT(render_terminal({long_reason}, OneFile("").sources, false),
              HasSubstr("  why: " + std::string(60, 'a') + "\n       " + std::string(60, 'b') + "\n"));
}

TEST(RenderTerminal, LetsNoSignOfTheFileCommandTheScreen) {
  const OneFile file("let a = 12 # \x1B[2J \xE2\x80\xAE turned\n");
  Diagnostic echoing = missing_unit(file);
  echoing.message = "\x1B[2Jgone";
  const std::string text = render_terminal({echoing}, file.sources, false);
  EXPECT_THAT(text, Not(HasSubstr("\x1B")));
  EXPECT_THAT(text, Not(HasSubstr("\xE2\x80\xAE")));
  EXPECT_THAT(text, HasSubstr("  \xEF\xBF\xBD[2Jgone\n"));
}

TEST(RenderTerminal, ColoursNothingButAddsNoWord) {
  const OneFile file("toggle t {\n  length: 12\n}\n");
  std::string coloured = render_terminal({missing_unit(file)}, file.sources, true);
  EXPECT_THAT(coloured, testing::StartsWith("\x1B[1;31merror\x1B[0m at "));
  for (std::size_t at = coloured.find('\x1B'); at != std::string::npos; at = coloured.find('\x1B'))
    coloured.erase(at, coloured.find('m', at) + 1 - at);
  EXPECT_EQ(coloured, render_terminal({missing_unit(file)}, file.sources, false));
}

} // namespace
} // namespace sheerpole::render_terminal_test
