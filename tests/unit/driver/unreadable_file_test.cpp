#include "service/compile.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::unreadable_file_test {
namespace {

/// The boat can be read when it is asked for, and nothing else can.
class LockedFiles final : public FileReader {
public:
  explicit LockedFiles(std::string boat) : boat_(std::move(boat)) {}
  Result<std::string, Failure> read(const std::string& path, std::size_t) override {
    if (path == "boat.rig" && !boat_.empty())
      return boat_;
    return Failure::not_readable;
  }

private:
  std::string boat_;
};

TEST(UnreadableFile, IsToldOfTheFileOnTheCommandLine) {
  LockedFiles reader("");
  const Compilation result = compile("boat.rig", reader);
  ASSERT_EQ(result.findings.size(), 1u);
  EXPECT_EQ(result.findings[0].slug, "file-not-readable");
  EXPECT_EQ(result.findings[0].message, "the file boat.rig is there but cannot be read");
  EXPECT_FALSE(result.findings[0].primary);
  EXPECT_TRUE(result.has_errors);
}

TEST(UnreadableFile, IsToldWhereItIsUsed) {
  LockedFiles reader("language 1\nuse \"parts/locked.rig\"\n");
  const Compilation result = compile("boat.rig", reader);
  ASSERT_EQ(result.findings.size(), 1u);
  EXPECT_EQ(result.findings[0].slug, "file-not-readable");
  EXPECT_EQ(result.findings[0].message, "the file parts/locked.rig is there but cannot be read");
  ASSERT_TRUE(result.findings[0].primary);
  EXPECT_EQ(result.findings[0].primary->span, (Span{SourceId{0}, 15, 33}));
  EXPECT_FALSE(result.checked);
}

} // namespace
} // namespace sheerpole::unreadable_file_test
