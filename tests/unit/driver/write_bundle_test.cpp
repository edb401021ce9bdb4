#include "driver/write_bundle.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <unistd.h>

namespace sheerpole::write_bundle_test {
namespace {

class WriteBundle : public testing::Test {
protected:
  void SetUp() override {
    folder = std::filesystem::temp_directory_path() / ("sheerpole-write-" + std::to_string(getpid()));
    std::filesystem::remove_all(folder);
  }
  void TearDown() override { std::filesystem::remove_all(folder); }

  std::string content(const std::string& name) const {
    std::ifstream stream(folder / name, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
  }
  std::size_t files() const {
    if (!std::filesystem::exists(folder))
      return 0;
    return static_cast<std::size_t>(
        std::distance(std::filesystem::directory_iterator(folder), std::filesystem::directory_iterator()));
  }

  std::filesystem::path folder;
};

TEST_F(WriteBundle, WritesEveryFileByItsName) {
  const auto written = write_bundle({{{"a.txt", "one\n"}, {"b.csv", "x,y\r\n"}}}, folder.string());
  ASSERT_TRUE(written.ok());
  EXPECT_EQ(written.value().size(), 2u);
  EXPECT_EQ(content("a.txt"), "one\n");
  EXPECT_EQ(content("b.csv"), "x,y\r\n");
  EXPECT_EQ(files(), 2u);
}

TEST_F(WriteBundle, ReplacesWhatWasThere) {
  ASSERT_TRUE(write_bundle({{{"a.txt", "a much longer text"}}}, folder.string()).ok());
  ASSERT_TRUE(write_bundle({{{"a.txt", "short"}}}, folder.string()).ok());
  EXPECT_EQ(content("a.txt"), "short");
}

TEST_F(WriteBundle, NeverLeavesTheFolder) {
  for (const std::string name :
       {"../a.txt", "/etc/a.txt", "x/../../a.txt", "", ".", "x/", "..", "a\\b.txt"}) {
    const auto written = write_bundle({{{"good.txt", "good"}, {name, "bad"}}}, folder.string());
    ASSERT_FALSE(written.ok()) << name;
    EXPECT_EQ(written.error().kind, WriteFailure::Kind::bad_name) << name;
    EXPECT_EQ(written.error().what, name);
    EXPECT_EQ(files(), 0u) << name;
  }
}

TEST_F(WriteBundle, RefusesTwoFilesOfOneName) {
  const auto written = write_bundle({{{"a.txt", "one"}, {"a.txt", "two"}}}, folder.string());
  ASSERT_FALSE(written.ok());
  EXPECT_EQ(written.error().kind, WriteFailure::Kind::same_name);
  EXPECT_EQ(files(), 0u);
}

TEST_F(WriteBundle, AllOrNothing) {
  ASSERT_TRUE(write_bundle({{{"a.txt", "old"}}}, folder.string()).ok());
  // A folder stands where the second file should go.
  std::filesystem::create_directories(folder / "b.txt" / "inside");
  const auto written = write_bundle({{{"a.txt", "new"}, {"b.txt", "new"}}}, folder.string());
  ASSERT_FALSE(written.ok());
  EXPECT_EQ(written.error().kind, WriteFailure::Kind::file);
  EXPECT_EQ(content("a.txt"), "old");
  EXPECT_EQ(files(), 2u); // no half-written file is left behind
}

TEST_F(WriteBundle, SaysWhenTheFolderCanNotBeMade) {
  ASSERT_TRUE(write_bundle({{{"a.txt", "old"}}}, folder.string()).ok());
  const auto written = write_bundle({{{"b.txt", "new"}}}, (folder / "a.txt" / "deeper").string());
  ASSERT_FALSE(written.ok());
  EXPECT_EQ(written.error().kind, WriteFailure::Kind::folder);
}

} // namespace
} // namespace sheerpole::write_bundle_test
