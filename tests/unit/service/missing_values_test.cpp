// What the tune asks for, put in with a blank: the file then asks for the value in its place, and once it
// is written there the boat stands as before.

#include "calculate/tune/tuned_rig.hpp"
#include "service/compile.hpp"
#include "service/texts.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <string>
#include <utility>

namespace sheerpole::missing_values_test {
namespace {

std::string case_a() {
  std::ifstream file(std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-a.rig", std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

Compilation compiled(const std::string& text) {
  service::Texts texts;
  texts.put("boat.rig", text);
  return compile("boat.rig", texts);
}

std::string without(std::string text, const std::string& line) {
  const std::size_t at = text.find(line);
  EXPECT_NE(at, std::string::npos) << line;
  return text.erase(at, line.size());
}

const Edit* edit_of(const Compilation& boat, const std::string& property) {
  for (const Diagnostic& finding : boat.findings)
    if (finding.slug == "tune-input-missing" && finding.edit &&
        finding.edit->replacement.find(property) != std::string::npos)
      return &*finding.edit;
  return nullptr;
}

/// Of a mast, of a spreader of which each side is named, of a line in one place for two stays, of a word.
TEST(MissingValues, StandBlankWhereTheyBelong) {
  const std::pair<std::string, std::string> stated[] = {
      {"axial-stiffness", "112000 kN"},
      {"bending-stiffness-across", "175 kNm2"},
      {"hold", "pinned"},
      {"droop", "hinged"},
      {"stiffness", "4140 kN"},
      {"seized", "slack"},
  };
  for (const auto& [property, value] : stated) {
    SCOPED_TRACE(property);
    const std::string text = without(case_a(), "  " + property + ": " + value + "\n");
    const Compilation lacking = compiled(text);
    const Edit* edit = edit_of(lacking, property + ": ");
    ASSERT_NE(edit, nullptr);
    EXPECT_FALSE(edit->certain);
    std::string blank = text;
    blank.replace(edit->span.begin, edit->span.end - edit->span.begin, edit->replacement);
    const Compilation asks = compiled(blank);
    ASSERT_EQ(asks.findings.size(), 1u);
    EXPECT_EQ(asks.findings.front().slug, "missing-value");
    const std::size_t at = blank.find(property + ": \n", edit->span.begin);
    ASSERT_NE(at, std::string::npos);
    std::string filled = blank;
    filled.insert(at + property.size() + 2, value);
    const Compilation whole = compiled(filled);
    ASSERT_TRUE(whole.derived);
    EXPECT_TRUE(tuned_rig(*whole.rig, *whole.derived).stands());
  }
}

/// Two things that one declaration lacks are two findings, each with its own edit; and a block in one line
/// takes it as well.
TEST(MissingValues, EachFindingHasItsOwn) {
  std::string text = without(case_a(), "  axial-stiffness: 112000 kN\n");
  text = without(std::move(text), "  bending-stiffness: 315 kNm2\n");
  const Compilation lacking = compiled(text);
  EXPECT_NE(edit_of(lacking, "  axial-stiffness: "), nullptr);
  EXPECT_NE(edit_of(lacking, "  bending-stiffness: "), nullptr);
  std::string one_line = case_a();
  const std::string block = "wire line-3 \"1x19 wire 6 mm\" {\n  construction: \"1x19\"\n  size: \"6 mm\"\n"
                            "  stiffness: 2330 kN\n}\n";
  const std::size_t at = one_line.find(block);
  ASSERT_NE(at, std::string::npos);
  one_line.replace(at, block.size(), "wire line-3 \"1x19 wire 6 mm\" from line-1 { size: \"6 mm\" }\n");
  one_line = without(std::move(one_line), "  stiffness: 4140 kN\n");
  const Compilation short_block = compiled(one_line);
  const Edit* edit = edit_of(short_block, "stiffness: ");
  ASSERT_NE(edit, nullptr);
  one_line.replace(edit->span.begin, edit->span.end - edit->span.begin, edit->replacement);
  const Compilation asks = compiled(one_line);
  ASSERT_FALSE(asks.findings.empty());
  EXPECT_EQ(asks.findings.front().slug, "missing-value");
}

} // namespace
} // namespace sheerpole::missing_values_test
