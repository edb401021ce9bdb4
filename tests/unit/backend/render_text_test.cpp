#include "backend/table/table.hpp"

#include <gtest/gtest.h>

namespace sheerpole::render_text_test {
namespace {

TEST(RenderText, PadsColumnsAndLeavesNoTrailingBlanks) {
  const Table table{.title = "Lengths",
                    .columns = {{"stay"}, {"mm", true}, {"note"}},
                    .rows = {{"cap-shroud.port", "11642.0", ""}, {"forestay", "7.5", "short"}},
                    .notes = {"Rounded to 0.1 mm."}};
  EXPECT_EQ(render_text(table), "Lengths\n"
                                "stay                  mm  note\n"
                                "---------------  -------  -----\n"
                                "cap-shroud.port  11642.0\n"
                                "forestay             7.5  short\n"
                                "Rounded to 0.1 mm.\n");
}

TEST(RenderText, CountsColumnsAndNotBytes) {
  const Table table{
      .title = "", .columns = {{"a"}, {"b"}}, .rows = {{"caf\xC3\xA9", "x"}, {"abcd", "y"}}, .notes = {}};
  EXPECT_EQ(render_text(table), "a     b\n----  -\ncaf\xC3\xA9  x\nabcd  y\n");
}

TEST(RenderText, ShowsHeadingsOfAnEmptyTable) {
  EXPECT_EQ(render_text({.title = "", .columns = {{"stay"}}, .rows = {}, .notes = {}}), "stay\n----\n");
}

} // namespace
} // namespace sheerpole::render_text_test
