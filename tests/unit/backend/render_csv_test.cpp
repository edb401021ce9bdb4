#include "backend/table/table.hpp"
#include "unit/backend/csv_reader.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::render_csv_test {
namespace {

// RFC 4180, section 2: rules 1 (CRLF), 3 (header), 6 (quotes round comma, quote and line end) and 7 (quotes
// doubled).
TEST(RenderCsv, FollowsRfc4180) {
  const Table table{.title = "not in it",
                    .columns = {{"aaa"}, {"bbb"}, {"ccc"}},
                    .rows = {{"b\r\nbb", "b\"bb", "c,c"}, {"", "-16.0", "\xC3\xA9 x "}},
                    .notes = {"nor this"}};
  EXPECT_EQ(render_csv(table), "aaa,bbb,ccc\r\n\"b\r\nbb\",\"b\"\"bb\",\"c,c\"\r\n,-16.0,\xC3\xA9 x \r\n");
}

std::string only_cell(const std::string& text) {
  return read_csv(render_csv({.title = "", .columns = {{"a"}}, .rows = {{text}}, .notes = {}})).at(1).at(0);
}

// The signs are those of OWASP, "CSV Injection".
TEST(RenderCsv, KeepsASpreadsheetFromTakingTextForAFormula) {
  for (const std::string text :
       {"=1+1",        "=",         "+1+1",         "-1+1",    "@SUM(A1)", "\t=1",    "\r=1",
        "\n=1",        "-12 ppm/K", "= pin-to-pin", "-",       "+.",       "-1.2.3",  "--1",
        "+49 30 1234", "\uff1d1+1", "\uff0b1",      "\uff0d1", "\uff20a",  "=a,\"b\""})
    EXPECT_EQ(only_cell(text), "'" + text);
}

TEST(RenderCsv, LeavesNumbersAndOtherTextAsTheyAre) {
  for (const std::string text : {"-12.5", "+1", "-1", "0.0", "-0.1", ".5", "-.5", "12", "", "X + 32.0",
                                 "a=b", "1-1", "'=1", "'", "12 mm"})
    EXPECT_EQ(only_cell(text), text);
}

TEST(RenderCsv, DoesSoInHeadingsToo) {
  const Table table{.title = "", .columns = {{"=a"}, {"b"}}, .rows = {}, .notes = {}};
  EXPECT_EQ(render_csv(table), "'=a,b\r\n");
}

RC_GTEST_PROP(RenderCsv, IsReadBackAsItWas, ()) {
  const auto columns = *rc::gen::inRange<std::size_t>(1, 5);
  const auto cell =
      rc::gen::container<std::string>(rc::gen::elementOf(std::string("ab,\"\r\n -=\xC3\xA9")));
  const auto begins_formula = [](const std::string& text) {
    return !text.empty() && std::string("=-\r\n").find(text[0]) != std::string::npos;
  };
  Table table;
  for (std::size_t i = 0; i < columns; ++i)
    table.columns.push_back({*cell});
  table.rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
      rc::gen::container<std::vector<std::string>>(columns, cell));
  std::vector<std::vector<std::string>> expected{{}};
  for (const Column& column : table.columns)
    expected.front().push_back(column.heading);
  expected.insert(expected.end(), table.rows.begin(), table.rows.end());
  for (std::vector<std::string>& record : expected)
    for (std::string& text : record)
      if (begins_formula(text)) // no digits are made here, so none is a number
        text.insert(0, 1, '\'');
  RC_ASSERT(read_csv(render_csv(table)) == expected);
}

} // namespace
} // namespace sheerpole::render_csv_test
