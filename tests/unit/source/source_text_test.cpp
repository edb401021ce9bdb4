#include "source/source_text.hpp"

#include <gtest/gtest.h>

namespace sheerpole::source_text_test {
namespace {

TEST(SourceText, CountsLinesAndColumnsFromOne) {
  const SourceText text({}, "a.rig", "ab\ncd\n");
  EXPECT_EQ(text.line_count(), 3u); // the empty one behind the last line end counts
  EXPECT_EQ(text.position(0).line, 1u);
  EXPECT_EQ(text.position(0).column, 1u);
  EXPECT_EQ(text.position(4).line, 2u);
  EXPECT_EQ(text.position(4).column, 2u);
  EXPECT_EQ(text.position(6).line, 3u);
  EXPECT_EQ(text.position(6).column, 1u);
}

/// ± is two bytes, ⅜ is three, and each is one column in an editor.
TEST(SourceText, ColumnsAreCodePoints) {
  const std::string line = "a ± ⅜ b";
  const SourceText text({}, "a.rig", line);
  EXPECT_EQ(text.position(static_cast<std::uint32_t>(line.size() - 1)).column, 7u);
}

TEST(SourceText, LinesComeWithoutTheirEnd) {
  const SourceText text({}, "a.rig", "one\r\ntwo\nthree");
  EXPECT_EQ(text.line(1), "one");
  EXPECT_EQ(text.line(2), "two");
  EXPECT_EQ(text.line(3), "three");
  EXPECT_EQ(text.line(0), "");
  EXPECT_EQ(text.line(4), "");
  EXPECT_EQ(text.line_start(2), 5u);
}

TEST(SourceText, SpansBeyondTheEndAreCutOff) {
  const SourceText text({}, "a.rig", "abc");
  EXPECT_EQ(text.text({{}, 1, 2}), "b");
  EXPECT_EQ(text.text({{}, 2, 99}), "c");
  EXPECT_EQ(text.text({{}, 50, 99}), "");
  EXPECT_EQ(text.text({{}, 2, 1}), "");
}

TEST(SourceText, AnEmptyFileHasOneEmptyLine) {
  const SourceText text({}, "a.rig", "");
  EXPECT_EQ(text.line_count(), 1u);
  EXPECT_EQ(text.position(0).line, 1u);
  EXPECT_EQ(text.line(1), "");
}

} // namespace
} // namespace sheerpole::source_text_test
