#include "plugins/survey-report/survey_report.hpp"

#include "base/byte_text.hpp"
#include "diagnostics/catalogue.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace sheerpole::survey_report_test {
namespace {

using testing::HasSubstr;
using testing::Not;

Compilation example(const std::string& name, std::vector<std::string> settings = {}) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader,
                 {.settings = std::move(settings), .folders = {}});
}

std::string html_of(const CheckedRig& checked) {
  return SurveyReport().generate({checked}).files.front().bytes;
}

class SurveyReports : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, SurveyReports,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow",
                                         "smallest"));

TEST_P(SurveyReports, PagesAreWellSetOnBothSheets) {
  const Compilation boat = example(GetParam());
  ASSERT_TRUE(boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_well_set(SurveyReport()
                        .generate({.checked = *boat.checked, .fleet = {}, .paper = size})
                        .papers.front()
                        .pages);
}

TEST_P(SurveyReports, EveryStayHasASectionAndEveryLinkLeadsToOne) {
  const Compilation boat = example(GetParam());
  ASSERT_TRUE(boat.checked);
  const std::string html = html_of(*boat.checked);
  for (const Stay& stay : boat.rig->stays)
    EXPECT_THAT(html, HasSubstr("<h3 id=\"" + section_of(stay) + "\">")) << stay.name;
  std::size_t links = 0;
  for (std::size_t at = html.find("href=\"#"); at != std::string::npos;
       at = html.find("href=\"#", at + 1)) {
    const std::size_t begin = at + 7;
    const std::string target = html.substr(begin, html.find('"', begin) - begin);
    EXPECT_THAT(html, HasSubstr(" id=\"" + target + "\"")) << target;
    ++links;
  }
  EXPECT_GT(links, boat.rig->stays.size());
}

TEST_P(SurveyReports, EveryFindingStandsInOneClass) {
  const Compilation boat = example(GetParam());
  ASSERT_TRUE(boat.checked);
  Document document;
  add_findings(*boat.checked, document);
  std::size_t rows = 0;
  for (const DocumentBlock& block : document.blocks)
    if (const auto* table = std::get_if<DocumentTable>(&block))
      rows += table->rows.size();
  EXPECT_EQ(rows, boat.checked->findings().size());
}

// A sheet that shows only good news is not believed: what was not checked is there, as often as it is
// counted.
TEST_P(SurveyReports, WhatWasNotCheckedIsListed) {
  const Compilation boat = example(GetParam());
  ASSERT_TRUE(boat.checked);
  Document document;
  add_checks(*boat.checked, document);
  const auto& table = std::get<DocumentTable>(document.blocks[2]);
  EXPECT_EQ(table.rows.size(), count_results(boat.checked->results()).not_checked);
}

// "X(cap-shroud.port) - 609.7" is one word to who reads it.
TEST(SurveyReport, BreaksNoLengthOverTwoLines) {
  const Compilation boat = example("quillwort");
  ASSERT_TRUE(boat.checked);
  const std::string html = html_of(*boat.checked);
  EXPECT_THAT(html, HasSubstr("<span class=\"whole\">X(cap-shroud.port) - 609.7</span>"));
  EXPECT_THAT(html, HasSubstr(".whole { white-space: nowrap;"));
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const PagedFile& paper :
         SurveyReport().generate({.checked = *boat.checked, .fleet = {}, .paper = size}).papers)
      for (const Drawing& page : paper.pages)
        for (const LabelBox& box : set_boxes(page.content)) {
          EXPECT_FALSE(box.text.ends_with(" -")) << box.text;
          EXPECT_NE(box.text, "609.7");
        }
}

TEST(SurveyReport, NamesEachFileWithItsDigest) {
  const Compilation boat = example("pellimoor");
  const std::string html = html_of(*boat.checked);
  const SourceSet& sources = boat.checked->sources();
  ASSERT_GE(sources.size(), 2u);
  for (std::uint32_t i = 0; i < sources.size(); ++i)
    EXPECT_THAT(html, HasSubstr(sha256(sources[SourceId{i}].bytes())));
}

// The sum is that of the file as it lies on the disk, with its byte order mark.
TEST(SurveyReport, TakesTheDigestOfTheFileAndNotOfWhatIsReadOfIt) {
  const std::string text = "\xEF\xBB\xBFlanguage 1\nboat \"Demo\" {}\n";
  const Compilation boat = test::compiled(text);
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(html_of(*boat.checked), HasSubstr(sha256(text)));
}

TEST(SurveyReport, SaysWhatChangedSinceTheVersionBefore) {
  const Compilation before = example("pellimoor");
  const Compilation after = example("pellimoor-turnbuckles");
  const std::string alone = html_of(*after.checked);
  EXPECT_THAT(alone, HasSubstr("No previous version was given"));
  const std::string html = SurveyReport()
                               .generate({.checked = *after.checked,
                                          .fleet = {},
                                          .previous = &*before.checked,
                                          .name = "now.rig",
                                          .previous_name = "before.rig"})
                               .files.front()
                               .bytes;
  EXPECT_THAT(html, HasSubstr("From before.rig to now.rig."));
  EXPECT_THAT(html, HasSubstr("<span class=\"whole\">52 mm</span> too long; can be re-spliced shorter"));
}

// `steeve: steeve` says nothing to who has not the file open.
TEST(SurveyReport, SaysTheNumberThatANameStandsFor) {
  Particular fact;
  fact.name = "steeve";
  fact.text = "steeve";
  fact.value.value = {.si = 0.261799387799, .dimension = Dimension{.angle = 1}};
  EXPECT_EQ(shown_fact(fact), "15 deg (steeve)");
}

TEST(SurveyReport, TellsWhatNobodySawAndWhoLooked) {
  const Compilation boat = test::compiled(R"(language 1
boat "Demo" {
  builder: "a yard"
  owner: "the owner"
}
wire wire-6 {
  construction: "1x19"
  size: "6 mm"
}
stay forestay {
  pin-to-pin: 10 m measured
  line: wire-6
  stack {
    line
  }
}
stay backstay {
  pin-to-pin: 11 m measured
  line: wire-6
  stack {
    line
  }
}
survey looked {
  date: 2026-05-02
  by: "surveyor"
  not-seen: "below deck"
  mast: standing
}
finding of forestay {
  date: 2026-05-02
  by: "surveyor"
  condition: not-accessible
  note: "under a cover"
}
)");
  ASSERT_TRUE(boat.checked) << render_terminal(boat.findings, *boat.sources, false);
  const std::string html = html_of(*boat.checked);
  EXPECT_THAT(html, HasSubstr("<dt>builder</dt>\n<dd>a yard</dd>"));
  EXPECT_THAT(html, HasSubstr("<dt>flag</dt>\n<dd><span class=\"line\">"));
  EXPECT_THAT(html, HasSubstr("<dt>not seen</dt>\n<dd>below deck</dd>"));
  EXPECT_THAT(html, HasSubstr("not accessible on 2026-05-02, surveyor: under a cover"));
  EXPECT_THAT(
      html, testing::ContainsRegex("<th scope=\"row\">forestay, backstay</th><td [^>]*>the whole stay</td>"
                                   "<td [^>]*>no inspection recorded</td>"));
}

TEST(SurveyReport, HoldsStaysWithLongNamesOfManyAlphabets) {
  const Compilation boat = test::compiled(test::forty_pairs());
  ASSERT_TRUE(boat.checked);
  expect_well_set(SurveyReport().generate({*boat.checked}).papers.front().pages);
}

TEST(SurveyReport, ANameOutOfMarkupStaysText) {
  const Compilation compilation = example("smallest");
  Rig rig = compilation.checked->rig();
  rig.boat.title = "</title><script>alert(1)</script>";
  rig.stays.front().title = "=1+1 & <b>";
  const auto checked =
      CheckedRig::make(compilation.sources, std::make_shared<const Rig>(rig), compilation.derived, {});
  const std::string html = html_of(*checked);
  EXPECT_THAT(html, Not(HasSubstr("<script>alert")));
  EXPECT_THAT(html, Not(HasSubstr("<b>")));
  EXPECT_THAT(html, HasSubstr("=1+1 &amp; &lt;b&gt;"));
}

// Every slug that is put in another class is one that exists, once.
TEST(FindingClass, MovesOnlyFindingsThatThereAre) {
  std::set<std::string_view> seen;
  for (const ClassRow& row : class_rows()) {
    const CatalogueEntry* entry = find_entry(row.slug);
    ASSERT_NE(entry, nullptr) << row.slug;
    EXPECT_TRUE(seen.insert(row.slug).second) << row.slug;
    if (row.finding_class != FindingClass::note) {
      EXPECT_EQ(entry->severity, Severity::warning) << row.slug;
    }
  }
}

TEST(FindingClass, FollowsTheSeverityWhereNothingElseIsSaid) {
  Diagnostic finding;
  finding.slug = "jaw-too-wide";
  finding.severity = Severity::warning;
  EXPECT_EQ(class_of(finding), FindingClass::before_sailing);
  finding.severity = Severity::note;
  EXPECT_EQ(class_of(finding), FindingClass::note);
  finding.slug = "marked-renew";
  finding.severity = Severity::warning;
  EXPECT_EQ(class_of(finding), FindingClass::now);
}

} // namespace
} // namespace sheerpole::survey_report_test
