#include "driver/writing/write_bundle.hpp"

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
  const auto written = write_bundle({{{"a.txt", "one\n"}, {"b.csv", "x,y\r\n"}}}, folder.string(), {});
  ASSERT_TRUE(written.ok());
  EXPECT_EQ(written.value().size(), 2u);
  EXPECT_EQ(content("a.txt"), "one\n");
  EXPECT_EQ(content("b.csv"), "x,y\r\n");
  EXPECT_EQ(files(), 2u);
}

TEST_F(WriteBundle, ReplacesWhatWasThere) {
  ASSERT_TRUE(write_bundle({{{"a.txt", "a much longer text"}}}, folder.string(), {}).ok());
  ASSERT_TRUE(write_bundle({{{"a.txt", "short"}}}, folder.string(), {}).ok());
  EXPECT_EQ(content("a.txt"), "short");
}

TEST_F(WriteBundle, NeverLeavesTheFolder) {
  for (const std::string name :
       {"../a.txt", "/etc/a.txt", "x/../../a.txt", "", ".", "x/", "..", "a\\b.txt"}) {
    const auto written = write_bundle({{{"good.txt", "good"}, {name, "bad"}}}, folder.string(), {});
    ASSERT_FALSE(written.ok()) << name;
    EXPECT_EQ(written.error().kind, WriteFailure::Kind::bad_name) << name;
    EXPECT_EQ(written.error().what, name);
    EXPECT_EQ(files(), 0u) << name;
  }
}

TEST_F(WriteBundle, RefusesTwoFilesOfOneName) {
  const auto written = write_bundle({{{"a.txt", "one"}, {"a.txt", "two"}}}, folder.string(), {});
  ASSERT_FALSE(written.ok());
  EXPECT_EQ(written.error().kind, WriteFailure::Kind::same_name);
  EXPECT_EQ(files(), 0u);
}

TEST_F(WriteBundle, AllOrNothing) {
  ASSERT_TRUE(write_bundle({{{"a.txt", "old"}}}, folder.string(), {}).ok());
  // A folder stands where the second file should go.
  std::filesystem::create_directories(folder / "b.txt" / "inside");
  const auto written = write_bundle({{{"a.txt", "new"}, {"b.txt", "new"}}}, folder.string(), {});
  ASSERT_FALSE(written.ok());
  EXPECT_EQ(written.error().kind, WriteFailure::Kind::not_a_file);
  EXPECT_EQ(content("a.txt"), "old");
  EXPECT_EQ(files(), 2u); // no half-written file is left behind
}

TEST_F(WriteBundle, SaysWhenTheFolderCanNotBeMade) {
  ASSERT_TRUE(write_bundle({{{"a.txt", "old"}}}, folder.string(), {}).ok());
  const auto written = write_bundle({{{"b.txt", "new"}}}, (folder / "a.txt" / "deeper").string(), {});
  ASSERT_FALSE(written.ok());
  EXPECT_EQ(written.error().kind, WriteFailure::Kind::folder);
}

TEST_F(WriteBundle, NeverWritesOverAFileThatWasRead) {
  ASSERT_TRUE(write_bundle({{{"stock.rig", "stated"}, {"a.txt", "old"}}}, folder.string(), {}).ok());
  const std::string read = (folder / "stock.rig").string();
  const std::filesystem::path second = folder / "second-name.rig";
  std::filesystem::create_hard_link(read, second);
  const std::filesystem::path link = folder / "link.rig";
  std::filesystem::create_symlink("stock.rig", link);
  for (const std::string name : {"stock.rig", "second-name.rig", "link.rig"}) {
    const auto written = write_bundle({{{"a.txt", "new"}, {name, "made"}}}, folder.string(), {read});
    ASSERT_FALSE(written.ok()) << name;
    EXPECT_EQ(written.error().kind, WriteFailure::Kind::was_read) << name;
    EXPECT_EQ(content("stock.rig"), "stated") << name;
    EXPECT_EQ(content("a.txt"), "old") << name;
  }
}

TEST_F(WriteBundle, FollowsNoLinkOutOfTheFolder) {
  const std::filesystem::path elsewhere = folder.string() + "-elsewhere";
  std::filesystem::create_directories(folder);
  std::filesystem::create_directories(elsewhere);
  std::filesystem::create_directory_symlink(elsewhere, folder / "sheets");
  const auto written = write_bundle({{{"sheets/a.txt", "new"}}}, folder.string(), {});
  ASSERT_FALSE(written.ok());
  EXPECT_EQ(written.error().kind, WriteFailure::Kind::link);
  EXPECT_TRUE(std::filesystem::is_empty(elsewhere));
  // A link that lies where a temporary file goes is taken away and not written through.
  std::ofstream(elsewhere / "kept.txt") << "kept";
  std::filesystem::create_symlink(elsewhere / "kept.txt", folder / ".sheerpole-new-a.txt");
  ASSERT_TRUE(write_bundle({{{"a.txt", "new"}}}, folder.string(), {}).ok());
  EXPECT_EQ(content("a.txt"), "new");
  EXPECT_EQ(content("../" + elsewhere.filename().string() + "/kept.txt"), "kept");
  std::filesystem::remove_all(elsewhere);
}

TEST_F(WriteBundle, PutsRightWhatAKilledBuildLeft) {
  ASSERT_TRUE(write_bundle({{{"a.txt", "old"}, {"b.txt", "old"}}}, folder.string(), {}).ok());
  // As it lies there when a build was killed between two names.
  std::filesystem::rename(folder / "a.txt", folder / ".sheerpole-old-a.txt");
  std::ofstream(folder / "a.txt") << "half way";
  std::ofstream(folder / ".sheerpole-new-b.txt") << "half";
  std::ofstream(folder / half_way_note) << "note";
  std::filesystem::create_directory(folder / "c.txt");
  const auto refused =
      write_bundle({{{"a.txt", "new"}, {"b.txt", "new"}, {"c.txt", "new"}}}, folder.string(), {});
  ASSERT_FALSE(refused.ok());
  EXPECT_EQ(content("a.txt"), "old");
  ASSERT_TRUE(write_bundle({{{"a.txt", "new"}, {"b.txt", "new"}}}, folder.string(), {}).ok());
  EXPECT_EQ(content("a.txt"), "new");
  EXPECT_EQ(content("b.txt"), "new");
  EXPECT_EQ(files(), 3u); // no note, nothing temporary
}

} // namespace
} // namespace sheerpole::write_bundle_test
