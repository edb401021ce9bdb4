#include "driver/watch/served_folder.hpp"

#include "base/byte_text.hpp"

#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <unistd.h>

namespace sheerpole::served_folder_test {
namespace {

namespace fs = std::filesystem;

TEST(AServedName, IsOneOfARigFileBelowTheFolder) {
  for (const char* name : {"boat.rig", "parts/lines.rig", "a b/n\xc3\xa4he.rig", "x.y.rig"})
    EXPECT_TRUE(is_served_name(name)) << name;
  for (const char* name :
       {"", ".rig", "boat", "boat.txt", "/boat.rig", "../boat.rig", "parts/../boat.rig", "./boat.rig",
        "parts//boat.rig", ".hidden.rig", ".git/boat.rig", "parts\\boat.rig", "parts/.rig", "a\nb.rig"})
    EXPECT_FALSE(is_served_name(name)) << name;
}

class AFolder : public testing::Test {
protected:
  AFolder() {
    std::string name = (fs::temp_directory_path() / "served-XXXXXX").string();
    path = mkdtemp(name.data());
  }
  ~AFolder() override { fs::remove_all(path); }

  void put(const std::string& name, const std::string& text) { std::ofstream(path / name) << text; }
  std::string text(const std::string& name) {
    std::ifstream stream(path / name);
    return {std::istreambuf_iterator<char>(stream), {}};
  }

  fs::path path;
};

TEST_F(AFolder, IsWrittenToAsLongAsTheFileIsTheOneThatWasRead) {
  put("boat.rig", "one");
  const ServedFolder folder(path.string());
  EXPECT_EQ(folder.save("boat.rig", "two", sha256("other")), Saved::changed_meanwhile);
  EXPECT_EQ(folder.save("boat.rig", "two", ""), Saved::changed_meanwhile);
  EXPECT_EQ(text("boat.rig"), "one");
  EXPECT_EQ(folder.save("boat.rig", "two", sha256("one")), Saved::written);
  EXPECT_EQ(text("boat.rig"), "two");
}

TEST_F(AFolder, GetsANewFileWhereNoneIs) {
  fs::create_directory(path / "parts");
  const ServedFolder folder(path.string());
  EXPECT_EQ(folder.save("parts/new.rig", "one", ""), Saved::written);
  EXPECT_EQ(folder.save("parts/new.rig", "two", ""), Saved::changed_meanwhile);
  EXPECT_EQ(folder.save("nowhere/new.rig", "one", ""), Saved::no_such_file);
  EXPECT_EQ(folder.save("gone.rig", "one", sha256("one")), Saved::changed_meanwhile);
  EXPECT_EQ(text("parts/new.rig"), "one");
  EXPECT_EQ(std::distance(fs::directory_iterator(path / "parts"), fs::directory_iterator()), 1);
}

TEST_F(AFolder, IsAnotherWhenAFileIs) {
  put("boat.rig", "one");
  const ServedFolder folder(path.string());
  const std::string before = folder.state();
  EXPECT_EQ(folder.state(), before);
  put("notes.txt", "nobody asks");
  EXPECT_EQ(folder.state(), before);
  put("boat.rig", "longer");
  const std::string changed = folder.state();
  EXPECT_NE(changed, before);
  fs::rename(path / "boat.rig", path / "other.rig");
  EXPECT_NE(folder.state(), changed);
}

TEST_F(AFolder, IsNotLeftByALink) {
  fs::create_directory(path / "inside");
  const std::string outside = (path.string() + "-outside.rig");
  std::ofstream(outside) << "theirs";
  fs::create_symlink(outside, path / "inside/out.rig");
  const ServedFolder folder((path / "inside").string());
  EXPECT_TRUE(folder.read().files.empty());
  ASSERT_EQ(folder.read().left_out.size(), 1U);
  EXPECT_EQ(folder.read().left_out.front().name, "out.rig");
  EXPECT_EQ(folder.save("out.rig", "mine", sha256("theirs")), Saved::no_such_file);
  std::ifstream stream(outside);
  EXPECT_EQ(std::string(std::istreambuf_iterator<char>(stream), {}), "theirs");
  fs::remove(outside);
}

} // namespace
} // namespace sheerpole::served_folder_test
