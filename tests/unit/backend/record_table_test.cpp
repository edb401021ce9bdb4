#include "backend/table/rig_tables.hpp"
#include "plugins/survey-report/survey_report.hpp"
#include "service/compile.hpp"
#include "unit/calculate/compiled_rig.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace sheerpole::record_table_test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

const std::string boat = R"(language 1
boat "Tern" {
  builder: "a yard on the firth" maker "brass plate"
  mainsail-foot: 4.05 m drawn
  revision: "C"
}

wire wire-6 {
  construction: "1x19"
  size: "6 mm"
}

tang tang-12 {
  supplier: "chandler"
  note: "polished"
}

terminal eye-62 {
  length: 62 mm measured
  lower: wire-socket (inserted: 50 mm maker)
}

stay forestay {
  pin-to-pin: 11_642 mm measured
  line: wire-6
  stack {
    tang-12
    eye-62
    line
    eye-62
  }
}

reading of forestay {
  method: tape
  runs: 11_642 mm
  note: "no wind"
}

survey spring {
  date: 2026-05-25
  by: "surveyor"
}

layer made {
  date: 2026-05-01
  by: "north shed"
  boat {
    revision: "D"
  }
}

layer fitted {
  note: "after a week"
  boat {
    revision: "E"
  }
}
)";

TEST(RecordTable, HoldsWhatIsForTheRecordWithItsSourceAndPlaceAndNothingElse) {
  const Compilation compiled = test::compiled(boat);
  ASSERT_TRUE(compiled.checked);
  const Table table = record_table(*compiled.checked);
  EXPECT_THAT(table.rows,
              ElementsAre(ElementsAre("the boat", "builder", "a yard on the firth", "maker, brass plate",
                                      "test.rig:3"),
                          ElementsAre("the boat", "mainsail foot", "4.05 m", "drawn", "test.rig:4"),
                          ElementsAre("tang tang-12", "supplier", "chandler", "", "test.rig:14"),
                          ElementsAre("tang tang-12", "note", "polished", "", "test.rig:15"),
                          ElementsAre("survey spring", "date", "2026-05-25", "", "test.rig:41"),
                          ElementsAre("survey spring", "by", "surveyor", "", "test.rig:42"),
                          ElementsAre("layer made", "date", "2026-05-01", "", "test.rig:46"),
                          ElementsAre("layer made", "by", "north shed", "", "test.rig:47"),
                          ElementsAre("layer fitted", "note", "after a week", "", "test.rig:54")));
}

TEST(RecordTable, StandsInTheSurveyReportWhereTheBoatStandsAtTheHead) {
  const Compilation compiled = test::compiled(boat);
  ASSERT_TRUE(compiled.checked);
  const std::string html = SurveyReport().generate({*compiled.checked}).files.front().bytes;
  const std::string section = html.substr(html.find("<h2 id=\"record\">"));
  EXPECT_THAT(section, HasSubstr("tang tang-12"));
  EXPECT_THAT(section, HasSubstr("north shed"));
  EXPECT_THAT(section.substr(0, section.find("<h2 id=\"files\">")), Not(HasSubstr("brass plate")));
  EXPECT_THAT(html, HasSubstr("a yard on the firth (maker, brass plate)"));
  EXPECT_THAT(html, HasSubstr("Report on the rigging of Tern, revision E"));
}

// A note of a reading is a text without a source of its own, and is found among the sources all the same.
TEST(RecordTable, SourcesHoldTheNotesAsWell) {
  const Compilation compiled = test::compiled(boat);
  ASSERT_TRUE(compiled.checked);
  const Table table = sources_table(*compiled.checked);
  std::vector<std::string> numbers;
  for (const std::vector<std::string>& row : table.rows)
    numbers.push_back(row[0] + " = " + row[1]);
  EXPECT_THAT(numbers, Contains("note of reading of forestay = no wind"));
  EXPECT_THAT(numbers, Contains("by of layer made = north shed"));
}

TEST(RecordTable, LayersThatAreLeftOutSayNothingOfThemselves) {
  struct Reader final : FileReader {
    Result<std::string, Failure> read(const std::string&, std::size_t) override { return boat; }
  } reader;
  const Compilation compiled =
      compile("test.rig", reader, {.settings = {}, .folders = {}, .as_of = "made"});
  ASSERT_TRUE(compiled.checked);
  std::vector<std::string> of;
  for (const RecordedFact& fact : recorded_facts(*compiled.checked))
    of.push_back(fact.of);
  EXPECT_THAT(of, Contains("layer made"));
  EXPECT_THAT(of, Not(Contains("layer fitted")));
  EXPECT_THAT(differences_table(*compiled.checked).notes,
              ElementsAre("layer made: date 2026-05-01, by north shed"));
}

} // namespace
} // namespace sheerpole::record_table_test
