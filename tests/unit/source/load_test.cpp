#include "source/file_reader.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>

namespace sheerpole::load_test {
namespace {

class OneFile final : public FileReader {
public:
  explicit OneFile(std::string bytes) : bytes_(std::move(bytes)) {}
  Result<std::string, Failure> read(const std::string&, std::size_t limit) override {
    if (bytes_.size() > limit)
      return Failure::too_large;
    return bytes_;
  }

private:
  std::string bytes_;
};

std::size_t bad_at(const std::string& bytes) {
  return first_invalid_utf8(bytes);
}
constexpr std::size_t good = std::string_view::npos;

/// The cases of RFC 3629: well-formed sequences of one to four bytes; no overlong forms, no surrogates,
/// nothing beyond U+10FFFF, nothing cut off.
TEST(Utf8, FollowsRfc3629) {
  EXPECT_EQ(bad_at(""), good);
  EXPECT_EQ(bad_at("plain"), good);
  EXPECT_EQ(bad_at("\xC2\xB1 \xE2\x80\xB3 \xF0\x9F\x9B\xA5"), good);
  EXPECT_EQ(bad_at("\xF4\x8F\xBF\xBF"), good); // U+10FFFF
  EXPECT_EQ(bad_at("a\x80"), 1u);              // a continuation byte alone
  EXPECT_EQ(bad_at("ab\xC2"), 2u);             // cut off
  EXPECT_EQ(bad_at("\xC0\xAF"), 0u);           // overlong
  EXPECT_EQ(bad_at("\xE0\x80\xAF"), 0u);       // overlong
  EXPECT_EQ(bad_at("\xF0\x80\x80\xAF"), 0u);   // overlong
  EXPECT_EQ(bad_at("\xED\xA0\x80"), 0u);       // surrogate
  EXPECT_EQ(bad_at("\xF4\x90\x80\x80"), 0u);   // beyond U+10FFFF
  EXPECT_EQ(bad_at("\xFF"), 0u);
  EXPECT_EQ(bad_at("x\xE2\x28\xA1"), 1u);
}

TEST(Load, DropsAByteOrderMark) {
  OneFile reader("\xEF\xBB\xBFlanguage 1\n");
  const auto loaded = load("a.rig", {}, reader);
  ASSERT_TRUE(loaded.ok());
  EXPECT_EQ(loaded.value().bytes(), "language 1\n");
}

TEST(Load, NamesTheLineOfTheFirstBadByte) {
  OneFile reader("language 1\n# gr\xFC\xDF\n");
  const auto loaded = load("a.rig", {}, reader);
  ASSERT_FALSE(loaded.ok());
  EXPECT_EQ(loaded.error().kind, LoadFailure::Kind::not_utf8);
  EXPECT_EQ(loaded.error().line, 2u);
}

TEST(Load, RefusesWhatIsTooLarge) {
  OneFile reader(std::string(largest_source_bytes + 1, '#'));
  const auto loaded = load("a.rig", {}, reader);
  ASSERT_FALSE(loaded.ok());
  EXPECT_EQ(loaded.error().kind, LoadFailure::Kind::too_large);
}

TEST(DiskFileReader, TellsAFolderFromAFileThatIsNotThere) {
  const auto folder =
      std::filesystem::temp_directory_path() / ("sheerpole-load-" + std::to_string(getpid()));
  std::filesystem::create_directories(folder);
  std::ofstream(folder / "a.rig", std::ios::binary) << "language 1\n";
  DiskFileReader reader;
  const auto there = reader.read((folder / "a.rig").string(), 100);
  ASSERT_TRUE(there.ok());
  EXPECT_EQ(there.value(), "language 1\n");
  EXPECT_EQ(reader.read((folder / "b.rig").string(), 100).error(), FileReader::Failure::not_found);
  EXPECT_EQ(reader.read(folder.string(), 100).error(), FileReader::Failure::is_folder);
  EXPECT_EQ(reader.read((folder / "a.rig").string(), 5).error(), FileReader::Failure::too_large);
  std::filesystem::remove_all(folder);
}

} // namespace
} // namespace sheerpole::load_test
