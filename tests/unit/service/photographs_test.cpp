#include "service/compile.hpp"
#include "source/file_reader.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <unistd.h>

// Pictures of the inspection log: what is read, and what nobody may make this program read.

namespace sheerpole::photographs_test {
namespace {

using namespace std::string_literals;

const std::string small_png = "\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR\0\0\0\x02\0\0\0\x03\x08\0\0\0\0"s;

std::string rig_with(const std::string& photo) {
  return "language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
         "stay forestay {\n  pin-to-pin: 11_650 mm measured\n  line: wire-6\n  stack {\n    line\n  }\n}\n"
         "finding of forestay {\n  date: 2026-05-02\n  by: \"owner\"\n  condition: watch\n  photo: " +
         photo + "\n}\n";
}

class Files final : public FileReader {
public:
  std::map<std::string, std::string> files;
  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    const auto found = files.find(path);
    if (found == files.end())
      return Failure::not_found;
    if (found->second.size() > limit)
      return Failure::too_large;
    return found->second;
  }
  std::string real_path(const std::string& path) override {
    return std::filesystem::path(path).lexically_normal().generic_string();
  }
};

struct Read {
  std::size_t pictures = 0;
  std::vector<std::string> faults; ///< messages of the findings about pictures
  Compilation all;
};

Read read(const std::string& photo, Files files = {}) {
  files.files["boat/boat.rig"] = rig_with(photo);
  Read found;
  found.all = compile("boat/boat.rig", files);
  found.pictures = found.all.photographs->size();
  for (const Diagnostic& finding : found.all.findings)
    if (finding.slug == "photo-not-usable")
      found.faults.push_back(finding.message);
  return found;
}

TEST(Photographs, AreReadFromTheFolderOfTheFileThatNamesThem) {
  Files files;
  files.files["boat/aloft/tang.jpg"] = small_png; // its bytes count and not its name
  files.files["boat/plate.png"] = small_png + "more";
  const Read found = read("\"aloft/tang.jpg\", \"plate.png\", \"./plate.png\"", files);
  ASSERT_TRUE(found.all.checked);
  EXPECT_TRUE(found.faults.empty());
  ASSERT_EQ(found.pictures, 2u);
  const std::vector<Photograph>& shown = found.all.checked->photographs();
  EXPECT_EQ(shown[0].name, "aloft/tang.jpg");
  EXPECT_EQ(shown[0].head.kind, PictureKind::png);
  EXPECT_EQ(shown[0].head.height, 3);
  EXPECT_EQ(shown[1].named.size(), 2u); // named twice, read once
  EXPECT_EQ(*shown[1].bytes, small_png + "more");
  ASSERT_EQ(found.all.rig->inspections.size(), 1u);
  EXPECT_EQ(found.all.rig->inspections[0].photos.size(), 3u);
}

TEST(Photographs, WhatCannotBeShownIsAFindingAtItsPlaceAndTheRigGoesOn) {
  Files files;
  files.files["boat/note.jpg"] = "no picture";
  files.files["boat/large.jpg"] = small_png + std::string(largest_photograph_bytes, 'x');
  files.files["secret.png"] = small_png;
  const std::vector<std::pair<std::string, std::string>> cases{
      {"gone.jpg", "there is no such file"},
      {"note.jpg", "no JPEG and no PNG"},
      {"large.jpg", "more than 8 MB"},
      {"../secret.png", "not in the folder of the rig file"},
      {"/etc/passwd", "not in the folder"},
      {"", "not in the folder"},
      {"a/../../secret.png", "not in the folder"},
      {"..", "not in the folder"}};
  for (const auto& [photo, fault] : cases) {
    const Read found = read("\"" + photo + "\"", files);
    ASSERT_TRUE(found.all.checked) << photo;
    EXPECT_EQ(found.pictures, 0u) << photo;
    ASSERT_EQ(found.faults.size(), 1u) << photo;
    EXPECT_NE(found.faults[0].find(fault), std::string::npos) << found.faults[0];
    for (const Diagnostic& finding : found.all.findings)
      if (finding.slug == "photo-not-usable") {
        ASSERT_TRUE(finding.primary);
        EXPECT_EQ((*found.all.sources)[SourceId{0}].text(finding.primary->span), "\"" + photo + "\"");
      }
  }
}

TEST(Photographs, ThereIsAnEndToHowManyAreRead) {
  Files files;
  std::string photos;
  for (std::size_t i = 0; i < most_photographs + 3; ++i) {
    const std::string name = "p" + std::to_string(i) + ".png";
    files.files["boat/" + name] = small_png + name;
    photos += (photos.empty() ? "\"" : ", \"") + name + "\"";
  }
  const Read found = read(photos, files);
  EXPECT_EQ(found.pictures, most_photographs);
  EXPECT_EQ(found.faults.size(), 3u);
  Files heavy;
  photos.clear();
  for (std::size_t i = 0; i < most_photograph_bytes / largest_photograph_bytes + 2; ++i) {
    const std::string name = "p" + std::to_string(i) + ".png";
    heavy.files["boat/" + name] = small_png + name + std::string(largest_photograph_bytes - 64, 'x');
    photos += (photos.empty() ? "\"" : ", \"") + name + "\"";
  }
  const Read too_much = read(photos, heavy);
  EXPECT_LE(too_much.pictures * (largest_photograph_bytes - 64), most_photograph_bytes);
  EXPECT_GE(too_much.faults.size(), 1u);
}

TEST(Photographs, NoLinkLeadsOutOfTheFolder) {
  const std::filesystem::path folder =
      std::filesystem::path(testing::TempDir()) / ("photographs-" + std::to_string(getpid()));
  std::filesystem::create_directories(folder / "boat");
  std::ofstream(folder / "secret.png", std::ios::binary) << small_png;
  std::ofstream(folder / "boat" / "boat.rig") << rig_with("\"link.png\", \"own.png\"");
  std::ofstream(folder / "boat" / "own.png", std::ios::binary) << small_png;
  std::filesystem::create_symlink(folder / "secret.png", folder / "boat" / "link.png");
  DiskFileReader reader;
  const Compilation found = compile((folder / "boat" / "boat.rig").string(), reader);
  std::filesystem::remove_all(folder);
  ASSERT_EQ(found.photographs->size(), 1u);
  EXPECT_EQ(found.photographs->front().name, "own.png");
}

} // namespace
} // namespace sheerpole::photographs_test
