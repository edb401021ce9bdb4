#include "backend/json/table_json.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <string>
#include <vector>

namespace sheerpole::table_json_test {
namespace {

using Json = nlohmann::ordered_json;

Json one_cell(const Column& column, const std::string& cell) {
  const Table table{.title = "", .columns = {column}, .rows = {{cell}}};
  return Json::parse(render_json(table, {.table = "t", .boat = std::nullopt}))["rows"][0].front();
}

Json with_x(bool unknown, double known) {
  return {{"unknown", unknown}, {"known_mm", known}};
}

// Headings of the tables as they are, and the member of a row that each becomes, by hand.
TEST(TableJson, NamesMembersByTheirHeadingsWithTheUnitAtTheEnd) {
  const Table table{.title = "A table",
                    .columns = {{"stay"},
                                {"pin-to-pin mm", true},
                                {"worst -", true, "mm"},
                                {"worst +", true, "mm"},
                                {"95 % +-", true, "mm"},
                                {"±", true, "kN"},
                                {"no.", true},
                                {"cut ft in", true},
                                {"", true},
                                {"stay"}},
                    .rows = {}};
  const Json json = Json::parse(render_json(table, {.table = "t", .boat = "Tern", .draft = true}));
  std::vector<std::string> names;
  for (const Json& column : json["columns"])
    names.push_back(column["name"]);
  EXPECT_EQ(names, (std::vector<std::string>{"stay", "pin_to_pin_mm", "worst_minus_mm", "worst_plus_mm",
                                             "95_percent_plus_minus_mm", "plus_minus_kn", "no", "cut_ft_in",
                                             "number", "stay_2"}));
  EXPECT_EQ(json["boat"], "Tern");
  EXPECT_EQ(json["draft"], true);
  EXPECT_EQ(json["columns"][1]["unit"], "mm");
  EXPECT_TRUE(json["columns"][6]["unit"].is_null());
  EXPECT_TRUE(json["rows"].empty());
}

TEST(TableJson, WritesALengthThatMayBeXInOneWay) {
  const Column column{"cut mm", true, "", true};
  EXPECT_EQ(one_cell(column, "11641.7"), with_x(false, 11641.7));
  EXPECT_EQ(one_cell(column, "-16.0"), with_x(false, -16.0));
  EXPECT_EQ(one_cell(column, "X"), with_x(true, 0.0));
  EXPECT_EQ(one_cell(column, "X + 861.8"), with_x(true, 861.8));
  EXPECT_EQ(one_cell(column, "X - 4.0"), with_x(true, -4.0));
  EXPECT_EQ(one_cell(column, "X(cap-shroud.port) - 609.7"), with_x(true, -609.7));
  EXPECT_EQ(one_cell(column, "X(forestay)"), with_x(true, 0.0));
  EXPECT_TRUE(one_cell(column, "").is_null());
}

TEST(TableJson, WritesNumbersAsTheyArePrintedAndWordsAsWords) {
  const Column number{"to tighten mm", true};
  EXPECT_EQ(one_cell(number, "+12.3"), 12.3);
  EXPECT_EQ(one_cell(number, "-0.0"), 0.0);
  EXPECT_FALSE(std::signbit(one_cell(number, "-0.0").get<double>()));
  EXPECT_TRUE(one_cell(number, "").is_null());
  EXPECT_EQ(one_cell(number, "slack"), "slack");
  EXPECT_EQ(one_cell(number, "12.3 of 20"), "12.3 of 20");
  EXPECT_EQ(one_cell({"of break", true, "%"}, "4.2 %"), 4.2);
  // Where rows differ in what they are measured in a cell says it itself.
  EXPECT_EQ(one_cell({"now", true}, "3.92 kN"), (Json{{"value", 3.92}, {"unit", "kN"}}));
  EXPECT_EQ(one_cell({"now", true}, "3.92 furlongs"), "3.92 furlongs");
  // What stands to the left is text, whatever it looks like: a name may be 12.
  EXPECT_EQ(one_cell({"stay"}, "12"), "12");
  EXPECT_EQ(one_cell({"cut ft in", true}, "38' 2 5/16\""), "38' 2 5/16\"");
}

} // namespace
} // namespace sheerpole::table_json_test
