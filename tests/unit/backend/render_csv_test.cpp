#include "backend/table/table.hpp"
#include "unit/backend/csv_reader.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole {
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

RC_GTEST_PROP(RenderCsv, IsReadBackAsItWas, ()) {
  const auto columns = *rc::gen::inRange<std::size_t>(1, 5);
  const auto cell =
      rc::gen::container<std::string>(rc::gen::elementOf(std::string("ab,\"\r\n -=\xC3\xA9")));
  Table table;
  for (std::size_t i = 0; i < columns; ++i)
    table.columns.push_back({*cell});
  table.rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
      rc::gen::container<std::vector<std::string>>(columns, cell));
  std::vector<std::vector<std::string>> expected{{}};
  for (const Column& column : table.columns)
    expected.front().push_back(column.heading);
  expected.insert(expected.end(), table.rows.begin(), table.rows.end());
  RC_ASSERT(read_csv(render_csv(table)) == expected);
}

} // namespace
} // namespace sheerpole
